package org.footwell.calculation.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lengths, areas and volumes with their unit, as people write and read them. Within the service all are metric; what is
 * given in inches is converted where it comes in, and what is shown in inches where it goes out, exactly.
 */
public final class Quantity {

  /** 3.5 in, 3 1/2 in, 1/2 in. */
  private static final Pattern WRITTEN =
      Pattern.compile(
          "(?:(?<decimal>-?\\d{1,9}(?:\\.\\d{1,12})?)"
              + "|(?<sign>-?)(?:(?<whole>\\d{1,5})[ -])?(?<part>\\d{1,3})/(?<of>[1-9]\\d{0,2}))"
              + " ?(?<unit>[^\\d\\s]\\S{0,5})");

  /**
   * What a unit stands for.
   *
   * @param dimension 1 of a length, 2 of an area, 3 of a volume
   * @param metres so many metres, square metres or cubic metres
   */
  public record Worth(int dimension, BigDecimal metres) {}

  private Quantity() {}

  /** Every way to write a unit, for those who read quantities elsewhere; a gauge is a unit of which there is one. */
  public static SortedMap<String, Worth> units() {
    SortedMap<String, Worth> units = new TreeMap<>();
    for (Unit unit : Unit.values()) {
      Worth worth = new Worth(unit.dimension(), unit.toMetres(BigDecimal.ONE));
      unit.written().forEach(text -> units.put(text, worth));
    }
    int area = Unit.MM2.dimension();
    WireGauge.written().forEach((text, metres) -> units.put(text, new Worth(area, metres)));
    return units;
  }

  /** Whether a path leads to a length, an area or a volume, which may be given with its unit. */
  public static boolean mayHaveUnit(String path) {
    return unitOf(path).isPresent();
  }

  private static Optional<Unit> unitOf(String path) {
    return Measure.ofPath(path).flatMap(Unit::of);
  }

  /**
   * What a text with a unit is in the unit of a field.
   *
   * @param path of the field, whose name ends in its unit
   * @return null where the text is none of the kind
   */
  public static Double read(String path, String text) {
    Unit wanted = unitOf(path).orElse(null);
    if (wanted == null) {
      return null;
    }
    BigDecimal metres = wanted.isArea() ? WireGauge.squareMetres(text) : null;
    if (metres == null) {
      metres = metres(wanted, text);
    }
    return metres == null ? null : (Double) wanted.ofMetres(metres).doubleValue();
  }

  private static BigDecimal metres(Unit wanted, String text) {
    Matcher written = WRITTEN.matcher(text);
    if (!written.matches()) {
      return null;
    }
    return Unit.written(written.group("unit"))
        .filter(wanted::isLike)
        .map(unit -> unit.toMetres(number(written)))
        .orElse(null);
  }

  private static BigDecimal number(Matcher written) {
    if (written.group("decimal") != null) {
      return new BigDecimal(written.group("decimal"));
    }
    String whole = written.group("whole");
    BigDecimal number =
        new BigDecimal(written.group("part"))
            .divide(new BigDecimal(written.group("of")), MathContext.DECIMAL128)
            .add(new BigDecimal(whole == null ? "0" : whole));
    return written.group("sign").isEmpty() ? number : number.negate();
  }

  /** The same quantity in another unit of its kind. */
  public static double converted(Measure from, double value, Measure to) {
    return from == to ? value : exactly(from, BigDecimal.valueOf(value), to).doubleValue();
  }

  /** The same with more digits than a double has. */
  static BigDecimal exactly(Measure from, BigDecimal value, Measure to) {
    return Unit.of(to).orElseThrow().ofMetres(Unit.of(from).orElseThrow().toMetres(value));
  }
}
