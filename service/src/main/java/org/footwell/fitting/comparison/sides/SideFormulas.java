package org.footwell.fitting.comparison.sides;

import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.physics.Decibels;

/** The arithmetic of two parts, and of levels that add. */
public final class SideFormulas {

  public static final Source SUPERPOSITION =
      Source.of("Superposition of unrelated sounds: powers add");

  /** Level per watt, dB SPL, from the level at 2.83 V and the difference of the bases in dB. */
  static final Formula.Of2 ONE_WATT_LEVEL =
      Formula.of("one_watt_level_db_spl", "S − D", "dB SPL", DEFINITION)
          .with("S", "D", (s, d) -> s - d);

  /** Level at 2.83 V, dB SPL, from the level per watt and the difference of the bases in dB. */
  static final Formula.Of2 VOLTAGE_LEVEL =
      Formula.of("two_point_eight_three_volt_level_db_spl", "S + D", "dB SPL", DEFINITION)
          .with("S", "D", Double::sum);

  /** Level in dB SPL at the continuous power in W (above 0). */
  static final Formula.Of2 THERMAL_LEVEL =
      Formula.of("thermal_level_db_spl", "S + 10·lg(P/1 W)", "dB SPL", DEFINITION)
          .with("S", "P", SideFormulas::levelAt);

  /** Level in dB SPL at the amplifier's clean power in W (above 0). */
  static final Formula.Of2 AMPLIFIER_LEVEL =
      Formula.of("amplifier_level_db_spl", "S + 10·lg(P/1 W)", "dB SPL", DEFINITION)
          .with("S", "P", SideFormulas::levelAt);

  /** Something of one driver, for all drivers of the position. */
  static final Formula.Of2 OF_ALL =
      Formula.of("of_all_drivers", "N·x", "as x", DEFINITION).with("N", "x", (n, x) -> n * x);

  /** Air moved from rest to one side, cm³, from the cone area in cm² and one-way travel in mm. */
  static final Formula.Of2 DISPLACEMENT =
      Formula.of("displacement_cm3", "area·x/10", "cm³", DEFINITION)
          .with("area", "x", (area, x) -> area * x / 10);

  /** One power over another, both above 0, dB. */
  public static final Formula.Of2 POWER_CHANGE =
      Formula.of("power_change_db", "10·lg(P/P0)", "dB", DEFINITION)
          .with("P", "P0", (p, p0) -> Decibels.ofPower(p / p0));

  /** After less before. */
  public static final Formula.Of2 CHANGE =
      Formula.of("change", "after − before", "as before", DEFINITION)
          .with("after", "before", (after, before) -> after - before);

  /** Power for an equal level as a multiple, from the change of level at equal power in dB. */
  static final Formula.Of1 POWER_RATIO =
      Formula.of("power_ratio_for_factory_level", "10^(−D/10)", "", DEFINITION)
          .with("D", d -> Decibels.toPower(-d));

  /** Octaves from one frequency down to another, both above 0. */
  public static final Formula.Of2 OCTAVES_DOWN =
      Formula.of("lower_reach_octaves", "log2(before/after)", "octaves", DEFINITION)
          .with("before", "after", (before, after) -> Math.log(before / after) / Math.log(2));

  /** Level of N equal sources with unrelated phases, dB SPL. */
  public static final Formula.Of2 OF_SEVERAL =
      Formula.of("level_db_spl", "L + 10·lg(N)", "dB SPL", SUPERPOSITION)
          .with("L", "N", SideFormulas::levelAt);

  /** Level of two unrelated sources, dB SPL. */
  public static final Formula.Of2 TOGETHER =
      Formula.of("level_db_spl", "10·lg(10^(L1/10) + 10^(L2/10))", "dB SPL", SUPERPOSITION)
          .with(
              "L1",
              "L2",
              (l1, l2) -> Decibels.ofPower(Decibels.toPower(l1) + Decibels.toPower(l2)));

  private SideFormulas() {}

  private static double levelAt(double level, double times) {
    return level + Decibels.ofPower(times);
  }
}
