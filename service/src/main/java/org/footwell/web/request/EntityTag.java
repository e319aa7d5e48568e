package org.footwell.web.request;

import java.util.Locale;
import java.util.zip.CRC32C;

/** Strong, quoted entity tags with the version in them, so that a new version gives new tags; so does another coding. */
final class EntityTag {

  private EntityTag() {}

  static String of(String version, byte[] bytes, Coding coding) {
    CRC32C checksum = new CRC32C();
    checksum.update(bytes);
    String ending = coding == Coding.IDENTITY ? "" : "-" + coding.name().toLowerCase(Locale.ROOT);
    return "\"%s-%x-%x%s\"".formatted(version, bytes.length, checksum.getValue(), ending);
  }

  /** Whether an If-None-Match header, which may be null, lists the tag. */
  static boolean matches(String ifNoneMatch, String tag) {
    if (ifNoneMatch == null) {
      return false;
    }
    for (String candidate : ifNoneMatch.split(",", -1)) {
      String known = candidate.strip();
      if (known.equals("*") || known.equals(tag) || known.equals("W/" + tag)) {
        return true;
      }
    }
    return false;
  }
}
