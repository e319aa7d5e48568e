package org.footwell.physics;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** A cone as a rigid piston in a large baffle: what it radiates into half space, far from it. */
public final class Piston {

  public static final Source HALF_SPACE =
      Source.of(
          "L. L. Beranek, Acoustics (1954): rigid piston in an infinite baffle, far field, ka well"
              + " below 1");

  /** Diameter in mm of the circle of a cone area in cm². */
  public static final Formula.Of1 EFFECTIVE_DIAMETER =
      Formula.of("effective_diameter_mm", "10·√(4·sd/π)", "mm", Source.DEFINITION)
          .with("sd", sd -> 10 * Math.sqrt(4 * sd / Math.PI));

  /** Circumference over wavelength, from Hz, cone area in cm² and c in m/s. */
  public static final Formula.Of3 KA =
      Formula.of("ka", "2·π·f/c·√(sd/(π·10⁴))", "", Source.DEFINITION)
          .with("f", "sd", "c", (f, sd, c) -> 2 * Math.PI * f / c * radius(sd));

  /** Frequency in Hz at which a cone area in cm² reaches a given ka. */
  public static final Formula.Of3 FREQUENCY_OF_KA =
      Formula.of("frequency_hz", "ka·c/(2·π·√(sd/(π·10⁴)))", "Hz", Source.DEFINITION)
          .with("ka", "sd", "c", (ka, sd, c) -> ka * c / (2 * Math.PI * radius(sd)));

  /**
   * Level in dB SPL, RMS of a sine, at 1 m in half space from frequency in Hz, cone area in cm²,
   * one-way peak displacement in mm and air density in kg/m³. Does not hold where ka exceeds 1.
   */
  public static final Formula.Of4 LEVEL_OF_DISPLACEMENT =
      Formula.of(
              "level_db_spl", "20·lg(ρ·(2·π·f)²·sd·x·10⁻⁷/(2·π·√2)/20 µPa)", "dB SPL", HALF_SPACE)
          .with(
              "f",
              "sd",
              "x",
              "ρ",
              (f, sd, x, rho) ->
                  Decibels.ofAmplitude(pressure(f, sd, x, rho) / Decibels.SPL_REFERENCE_PA));

  /** One-way peak displacement in mm for a level: the inverse of {@link #LEVEL_OF_DISPLACEMENT}. */
  public static final Formula.Of4 DISPLACEMENT_OF_LEVEL =
      Formula.of(
              "displacement_mm", "20 µPa·10^(L/20)·2·π·√2/(ρ·(2·π·f)²·sd·10⁻⁷)", "mm", HALF_SPACE)
          .with(
              "f",
              "sd",
              "L",
              "ρ",
              (f, sd, level, rho) ->
                  Decibels.SPL_REFERENCE_PA
                      * Decibels.toAmplitude(level)
                      / pressure(f, sd, 1, rho));

  /**
   * Frequency in Hz at which a cone area in cm² with a one-way peak displacement in mm gives a level:
   * above it less displacement does, below it the level is out of reach.
   */
  public static final Formula.Of4 FREQUENCY_OF_DISPLACEMENT =
      Formula.of("frequency_hz", "√(20 µPa·10^(L/20)·2·π·√2/(ρ·sd·x·10⁻⁷))/(2·π)", "Hz", HALF_SPACE)
          .with(
              "sd",
              "x",
              "L",
              "ρ",
              (sd, x, level, rho) ->
                  Math.sqrt(
                      Decibels.SPL_REFERENCE_PA
                          * Decibels.toAmplitude(level)
                          / pressure(1, sd, x, rho)));

  private Piston() {}

  private static double radius(double sdCm2) {
    return Math.sqrt(sdCm2 / 1e4 / Math.PI);
  }

  /**
   * Pressure in Pa at 1 m for a volume acceleration of 1 m³/s² in half space, ρ/(2·π·r), from the
   * density in kg/m³: far from the piston, where ka is well below 1.
   */
  public static double pressureAtOneMetre(double rho) {
    return rho / (2 * Math.PI);
  }

  /** RMS in Pa at 1 m: the volume acceleration of a sine is ω²·sd·x/√2. */
  private static double pressure(double f, double sdCm2, double peakMm, double rho) {
    double w = 2 * Math.PI * f;
    double acceleration = w * w * (sdCm2 / 1e4) * (peakMm / 1000) / Math.sqrt(2);
    return pressureAtOneMetre(rho) * acceleration;
  }
}
