package org.footwell.web.request;

import java.util.zip.CRC32C;

/** Strong, quoted entity tags with the version in them, so that a new version gives new tags. */
public final class EntityTag {

  private EntityTag() {}

  public static String of(String version, byte[] bytes) {
    CRC32C checksum = new CRC32C();
    checksum.update(bytes);
    return "\"%s-%x-%x\"".formatted(version, bytes.length, checksum.getValue());
  }

  /** Whether an If-None-Match header, which may be null, lists the tag. */
  public static boolean matches(String ifNoneMatch, String tag) {
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
