package org.footwell.acoustic.crossover;

import org.footwell.acoustic.crossover.CrossoverPlanResult.ProtectionCapacitor;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.parts.PreferredSeries;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Decibels;

/** A capacitor in series with a way whose amplifier has no passive filter behind it. */
public final class SeriesCapacitor {

  public static final Source FIRST_ORDER =
      Source.of("First-order high-pass of a capacitor and a resistor");

  /** Capacitor in uF for a corner in Hz with a resistance in ohm, and the corner for one in uF. */
  public static final Formula.Of2 VALUE =
      Formula.of("capacitor_uf", "10⁶/(2·π·f·R)", "µF", FIRST_ORDER)
          .with("f", "R", (f, r) -> 1e6 / (2 * Math.PI * f * r));

  static final Formula.Of2 CORNER =
      Formula.of("corner_hz", "10⁶/(2·π·C·R)", "Hz", FIRST_ORDER)
          .with("C", "R", (c, r) -> 1e6 / (2 * Math.PI * c * r));

  /** What it takes at f Hz with its corner at f0 Hz, dB. */
  public static final Formula.Of2 LEVEL =
      Formula.of("capacitor_level_db", "−10·lg(1 + (f0/f)²)", "dB", FIRST_ORDER)
          .with("f0", "f", (f0, f) -> -Decibels.ofPower(1 + (f0 / f) * (f0 / f)));

  /** By how much it leads there, degrees. */
  public static final Formula.Of2 PHASE =
      Formula.of("capacitor_phase_deg", "arctan(f0/f)", "degrees", FIRST_ORDER)
          .with("f0", "f", (f0, f) -> Math.toDegrees(Math.atan(f0 / f)));

  private static final Formula.Of2 WANTED_CORNER =
      Formula.of("wanted_corner_hz", "f/ratio", "Hz", Source.COMMON_PRACTICE)
          .with("f", "ratio", (f, ratio) -> f / ratio);

  private static final double BASS_HZ = 50;

  private SeriesCapacitor() {}

  /**
   * The capacitor of a series whose corner lies nearest to where it is wanted.
   *
   * @param id of the way
   * @param f where the way is crossed over, Hz
   * @param wantedRatio of that frequency over the corner
   */
  static ProtectionCapacitor of(
      String id,
      double ratedOhm,
      double f,
      double wantedRatio,
      PreferredSeries series,
      Arithmetic steps) {
    double wanted = steps.apply(VALUE, steps.apply(WANTED_CORNER, f, wantedRatio), ratedOhm);
    double value = series.nearest(wanted);
    double corner = steps.apply(CORNER, value, ratedOhm);
    return CrossoverPlanResultProtectionCapacitorBuilder.builder()
        .id(id)
        .wantedUf(wanted)
        .capacitorUf(value)
        .cornerHz(corner)
        .ratio(f / corner)
        .levelDb(steps.apply(LEVEL, corner, f))
        .phaseDeg(steps.apply(PHASE, corner, f))
        .groupDelayMs(steps.apply(AnalogFilter.FIRST_ORDER_DELAY, corner, f))
        .bassLevelDb(steps.apply(LEVEL, corner, BASS_HZ))
        .build();
  }
}
