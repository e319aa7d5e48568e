package org.footwell.web;

/**
 * A form an answer can be given in.
 *
 * @param name what {@code format=} calls it
 * @param contentType what it is sent as
 */
record Format(String name, String contentType) {

  static final Format JSON = new Format("json", "application/json");
  static final Format TEXT = new Format("text", "text/plain;charset=utf-8");
  static final Format CSV = new Format("csv", "text/csv;charset=utf-8");
  static final Format LINES = new Format("ndjson", "application/x-ndjson");
  static final Format XML = new Format("xml", "application/xml");

  String mediaType() {
    int semicolon = contentType.indexOf(';');
    return semicolon < 0 ? contentType : contentType.substring(0, semicolon);
  }

  /** Whether a range of an Accept header, such as {@code text/*}, takes it. */
  boolean isIn(String range) {
    String mediaType = mediaType();
    return range.equalsIgnoreCase(mediaType)
        || range.equals(mediaType.substring(0, mediaType.indexOf('/')) + "/*");
  }
}
