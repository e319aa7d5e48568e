package org.footwell.web.request;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.Card;
import org.footwell.calculation.View;
import org.footwell.calculation.text.Phrase;

/** The formats the answers of a calculation can be given in: the usual ones and its views. */
public final class Formats<Q extends Record, R extends Record> {

  private final List<Format> all =
      new ArrayList<>(List.of(Format.JSON, Format.TEXT, Format.CSV, Format.XML));
  private final Map<Format, View<Q, R>> views = new LinkedHashMap<>();

  Formats(Card<Q, R> card) {
    for (View<Q, R> view : card.views()) {
      Format format = new Format(view.format(), view.mediaType());
      all.add(format);
      views.put(format, view);
    }
  }

  List<String> names() {
    return all.stream().map(Format::name).toList();
  }

  /** The view of the calculation behind a format, or null for the usual ones. */
  public View<Q, R> view(Format format) {
    return views.get(format);
  }

  /**
   * The format wanted: the query decides, then the Accept header, then JSON.
   *
   * @param inQuery one of {@link #names}, or null
   * @throws ProblemException if the Accept header allows none of them
   */
  public Format wanted(String inQuery, String accept) {
    return wanted(all, inQuery, accept);
  }

  /** The same of some formats. */
  public static Format wanted(List<Format> all, String inQuery, String accept) {
    return inQuery == null
        ? accepted(all, accept)
        : all.stream().filter(format -> format.name().equals(inQuery)).findFirst().orElseThrow();
  }

  /**
   * The format that an Accept header likes best; the first where it likes any.
   *
   * @throws ProblemException if it allows none of them
   */
  public static Format accepted(List<Format> all, String accept) {
    if (accept == null || accept.equals("*/*")) {
      return all.get(0);
    }
    Format best = null;
    double bestQuality = 0;
    for (String range : accept.split(",", -1)) {
      String[] parts = range.strip().split("\\s*;\\s*", -1);
      double quality = quality(parts);
      Format format = matching(all, parts[0]);
      if (format != null && quality > bestQuality) {
        best = format;
        bestQuality = quality;
      }
    }
    if (best == null) {
      throw ProblemException.of(
          ProblemType.NOT_ACCEPTABLE,
          Phrase.of(ProblemWords.NONE_ACCEPTED)
              .own("types", all.stream().map(Format::mediaType).toList()));
    }
    return best;
  }

  private static Format matching(List<Format> all, String range) {
    if (range.equals("*/*")) {
      return all.get(0);
    }
    return all.stream().filter(format -> format.isIn(range)).findFirst().orElse(null);
  }

  /** How much a range of such a header is liked. */
  static double quality(String[] parts) {
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
