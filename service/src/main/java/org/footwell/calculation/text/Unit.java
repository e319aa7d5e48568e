package org.footwell.calculation.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Units of length, area and volume, each exactly in metres, square metres or cubic metres. An inch is 25.4 mm
 * and a foot 304.8 mm (international yard and pound agreement of 1959; NIST Special Publication 811, appendix
 * B).
 */
enum Unit {
  MM(1, "0.001", "mm"),
  CM(1, "0.01", "cm"),
  M(1, "1", "m"),
  IN(1, "0.0254", "in inch inches \" ″"),
  FT(1, "0.3048", "ft foot feet ' ′"),
  MM2(2, "0.000001", "mm² mm2"),
  CM2(2, "0.0001", "cm² cm2"),
  M2(2, "1", "m² m2"),
  IN2(2, "0.00064516", "in² in2"),
  FT2(2, "0.09290304", "ft² ft2"),
  CM3(3, "0.000001", "cm³ cm3"),
  L(3, "0.001", "l"),
  M3(3, "1", "m³ m3"),
  IN3(3, "0.000016387064", "in³ in3"),
  FT3(3, "0.028316846592", "ft³ ft3");

  private final int dimension;
  private final BigDecimal inMetres;
  private final String written;

  Unit(int dimension, String inMetres, String written) {
    this.dimension = dimension;
    this.inMetres = new BigDecimal(inMetres);
    this.written = written;
  }

  /** The unit that is written so. */
  static Optional<Unit> written(String text) {
    return Arrays.stream(values()).filter(unit -> unit.written().contains(text)).findFirst();
  }

  /** The unit of a measure, where it is a length, an area or a volume. */
  static Optional<Unit> of(Measure measure) {
    return Arrays.stream(values()).filter(unit -> unit.name().equals(measure.name())).findFirst();
  }

  /** The ways it is written, the usual one first. */
  List<String> written() {
    return List.of(written.split(" "));
  }

  /** 1 of a length, 2 of an area, 3 of a volume. */
  int dimension() {
    return dimension;
  }

  /** Whether both are lengths, both areas or both volumes. */
  boolean isLike(Unit other) {
    return dimension == other.dimension;
  }

  boolean isArea() {
    return dimension == MM2.dimension;
  }

  /** So many of these in metres, square metres or cubic metres. */
  BigDecimal toMetres(BigDecimal number) {
    return number.multiply(inMetres);
  }

  /** The same the other way round. */
  BigDecimal ofMetres(BigDecimal metres) {
    return metres.divide(inMetres, MathContext.DECIMAL128);
  }
}
