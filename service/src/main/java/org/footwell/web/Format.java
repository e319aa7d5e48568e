package org.footwell.web;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The formats an answer can be given in. */
enum Format {
  JSON("application/json"),
  TEXT("text/plain;charset=utf-8"),
  CSV("text/csv;charset=utf-8"),
  XML("application/xml");

  private final String contentType;

  Format(String contentType) {
    this.contentType = contentType;
  }

  String contentType() {
    return contentType;
  }

  private String mediaType() {
    int semicolon = contentType.indexOf(';');
    return semicolon < 0 ? contentType : contentType.substring(0, semicolon);
  }

  static List<String> names() {
    return Arrays.stream(values()).map(f -> f.name().toLowerCase(Locale.ROOT)).toList();
  }

  /**
   * The format wanted: the query decides, then the Accept header, then {@code standard}.
   *
   * @throws ProblemException if the Accept header allows none of them
   */
  static Format wanted(String inQuery, String accept, Format standard) {
    if (inQuery != null) {
      return valueOf(inQuery.toUpperCase(Locale.ROOT));
    }
    if (accept == null || accept.equals("*/*")) {
      return standard;
    }
    Format best = null;
    double bestQuality = 0;
    for (String range : accept.split(",", -1)) {
      String[] parts = range.strip().split("\\s*;\\s*", -1);
      double quality = quality(parts);
      Format format = matching(parts[0], standard);
      if (format != null && quality > bestQuality) {
        best = format;
        bestQuality = quality;
      }
    }
    if (best == null) {
      throw ProblemException.of(
          ProblemType.NOT_ACCEPTABLE,
          "Accept allows none of application/json, text/plain, text/csv, application/xml.");
    }
    return best;
  }

  private static Format matching(String range, Format standard) {
    if (range.equals("*/*")) {
      return standard;
    }
    for (Format format : values()) {
      String mediaType = format.mediaType();
      boolean whole = range.equalsIgnoreCase(mediaType);
      boolean family = range.equals(mediaType.substring(0, mediaType.indexOf('/')) + "/*");
      if (whole || family) {
        return format;
      }
    }
    return null;
  }

  private static double quality(String[] parts) {
    for (String part : parts) {
      if (part.startsWith("q=")) {
        try {
          return Double.parseDouble(part.substring(2));
        } catch (NumberFormatException notANumber) {
          return 0;
        }
      }
    }
    return 1;
  }
}
