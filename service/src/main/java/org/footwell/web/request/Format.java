package org.footwell.web.request;

import java.util.Set;
import org.footwell.calculation.text.Reader;

/**
 * A form an answer can be given in.
 *
 * @param name what {@code format=} calls it
 * @param contentType what it is sent as
 */
public record Format(String name, String contentType) {

  public static final Format JSON = new Format("json", "application/json");
  public static final Format TEXT = new Format("text", "text/plain;charset=utf-8");
  public static final Format CSV = new Format("csv", "text/csv;charset=utf-8");
  public static final Format LINES = new Format("ndjson", "application/x-ndjson");
  static final Format XML = new Format("xml", "application/xml");

  private static final Set<String> PAGES = Set.of("text/plain", "text/html", "application/pdf");

  public String mediaType() {
    int semicolon = contentType.indexOf(';');
    return semicolon < 0 ? contentType : contentType.substring(0, semicolon);
  }

  /** How findings are said in it: people read them beside tables, which call parts by their ids in plain text only. */
  Reader.Wording wording() {
    if (!PAGES.contains(mediaType())) {
      return Reader.Wording.SENTENCES;
    }
    return equals(TEXT) ? Reader.Wording.BESIDE_TABLES : Reader.Wording.ON_SHEETS;
  }

  /** Whether a range of an Accept header, such as {@code text/*}, takes it. */
  boolean isIn(String range) {
    String mediaType = mediaType();
    return range.equalsIgnoreCase(mediaType)
        || range.equals(mediaType.substring(0, mediaType.indexOf('/')) + "/*");
  }
}
