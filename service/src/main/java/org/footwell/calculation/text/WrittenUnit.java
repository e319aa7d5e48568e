package org.footwell.calculation.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The unit behind a placeholder of a sentence: what a number in it is converted from for those who want inches,
 * and rounded by where it is read beside tables.
 *
 * @param words as it is written, with the blank before it; empty where there is none
 * @param measure null where there is none
 */
record WrittenUnit(String words, Measure measure) {

  private static final WrittenUnit NONE = new WrittenUnit("", null);

  /** What follows a unit that is only a part of another, such as the mm of mm² and the m of m/s. */
  private static final String GOES_ON = "²³/·";

  /** By what stands behind a number, the longest first. */
  private static final List<WrittenUnit> KNOWN = known();

  private static List<WrittenUnit> known() {
    Map<String, Measure> written = new HashMap<>(Map.of("litre", Measure.L, "Liter", Measure.L));
    written.putAll(Map.of("ohm", Measure.OHM, "Ohm", Measure.OHM));
    Measure.ofQuantities().forEach(measure -> written.put(measure.symbol(), measure));
    List<WrittenUnit> known = new ArrayList<>();
    written.forEach((words, measure) -> known.add(new WrittenUnit(" " + words, measure)));
    known.sort(Comparator.comparingInt(unit -> -unit.words.length()));
    return List.copyOf(known);
  }

  /** The unit that stands at a place of a text. */
  static WrittenUnit at(String text, int place) {
    return KNOWN.stream()
        .filter(unit -> text.startsWith(unit.words, place))
        .filter(unit -> ends(text, place + unit.words.length()))
        .findFirst()
        .orElse(NONE);
  }

  /** The unit of the quantity that a path leads to, of which a sentence does not know. */
  static WrittenUnit of(String path) {
    return Measure.ofPath(path)
        .map(measure -> new WrittenUnit(" " + measure.symbol(), measure))
        .orElse(NONE);
  }

  private static boolean ends(String text, int place) {
    return place == text.length() || !goesOn(text.charAt(place));
  }

  private static boolean goesOn(char next) {
    return Character.isLetterOrDigit(next) || GOES_ON.indexOf(next) >= 0;
  }

  /**
   * Adds a number and its unit as someone reads them.
   *
   * @param against what the sentence holds the number against, from which it must be told; or null
   */
  void add(double number, Double against, Reader reader, StringBuilder sentence) {
    WrittenUnit shown = in(reader.units());
    Double other = against == null ? null : Quantity.converted(measure, against, shown.measure);
    double figure = Quantity.converted(measure, number, shown.measure);
    sentence.append(shown.said(figure, other, reader)).append(shown.words);
  }

  /** What measures in it are shown in. */
  private WrittenUnit in(Reader.Units units) {
    Measure shown = measure == null ? null : units.of(measure);
    return shown == measure ? this : new WrittenUnit(" " + shown.symbol(), shown);
  }

  private String said(double figure, Double against, Reader reader) {
    if (measure != null && reader.wording().isBesideTables()) {
      BigDecimal rounded = measure.rounded(figure);
      if (tells(rounded, figure, against)) {
        return Texts.inWords(rounded.toPlainString(), reader.language());
      }
    }
    int digits = against == null ? Texts.DIGITS : Texts.digits(figure, against);
    return Texts.forPeople((Object) figure, digits, reader.language());
  }

  /** Whether a rounded figure still tells something from nothing, and from what it is held against. */
  private boolean tells(BigDecimal rounded, double figure, Double against) {
    return (rounded.signum() != 0 || figure == 0)
        && (against == null || rounded.compareTo(measure.rounded(against)) != 0);
  }
}
