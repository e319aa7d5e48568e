package org.footwell.acoustic.driver.sheet;

import static org.footwell.physics.ThieleSmall.SMALL_DRIVER;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.physics.Decibels;

/**
 * The identities of {@link org.footwell.physics.ThieleSmall} solved for their other figures. All
 * inputs are above 0; units as in the names of the fields.
 */
public final class DriverLaws {

  public static final double REFERENCE_V = 2.83;

  /** Resonance in Hz from moving mass in g and compliance in mm/N. */
  public static final Formula.Of2 RESONANCE =
      Formula.of("fs_hz", "1000/(2·π·√(mms·cms))", "Hz", SMALL_DRIVER)
          .with("mms", "cms", (mms, cms) -> 1000 / (2 * Math.PI * Math.sqrt(mms * cms)));

  /** One of qms and qes from qts and the other; not finite or negative unless qts is smaller. */
  public static final Formula.Of2 ELECTRICAL_FROM_TOTAL =
      Formula.of("qes", "qts·qms/(qms − qts)", "", SMALL_DRIVER)
          .with("qts", "qms", DriverLaws::otherQ);

  public static final Formula.Of2 MECHANICAL_FROM_TOTAL =
      Formula.of("qms", "qts·qes/(qes − qts)", "", SMALL_DRIVER)
          .with("qts", "qes", DriverLaws::otherQ);

  public static final Formula.Of4 COMPLIANCE_FROM_VOLUME =
      Formula.of("cms_mm_per_n", "vas/(ρ·c²·(sd/10⁴)²)", "mm/N", SMALL_DRIVER)
          .with("ρ", "c", "sd", "vas", (rho, c, sd, vas) -> vas / (rho * c * c * sd * sd * 1e-8));

  public static final Formula.Of4 AREA_FROM_VOLUME =
      Formula.of("sd_cm2", "10⁴·√(vas/(ρ·c²·cms))", "cm²", SMALL_DRIVER)
          .with(
              "ρ",
              "c",
              "vas",
              "cms",
              (rho, c, vas, cms) -> 1e4 * Math.sqrt(vas / (rho * c * c * cms)));

  public static final Formula.Of4 FORCE_FACTOR =
      Formula.of("bl_tm", "√(2·π·fs·mms·re/(1000·qes))", "T·m", SMALL_DRIVER)
          .with(
              "fs",
              "mms",
              "re",
              "qes",
              (fs, mms, re, qes) -> Math.sqrt(2 * Math.PI * fs * mms * re / (1000 * qes)));

  public static final Formula.Of4 RESISTANCE =
      Formula.of("re_ohm", "1000·qes·bl²/(2·π·fs·mms)", "ohm", SMALL_DRIVER)
          .with(
              "qes",
              "bl",
              "fs",
              "mms",
              (qes, bl, fs, mms) -> 1000 * qes * bl * bl / (2 * Math.PI * fs * mms));

  public static final Formula.Of4 MASS_FROM_ELECTRICAL_Q =
      Formula.of("mms_g", "1000·qes·bl²/(2·π·fs·re)", "g", SMALL_DRIVER)
          .with(
              "qes",
              "bl",
              "fs",
              "re",
              (qes, bl, fs, re) -> 1000 * qes * bl * bl / (2 * Math.PI * fs * re));

  public static final Formula.Of4 RESONANCE_FROM_ELECTRICAL_Q =
      Formula.of("fs_hz", "1000·qes·bl²/(2·π·mms·re)", "Hz", SMALL_DRIVER)
          .with(
              "qes",
              "bl",
              "mms",
              "re",
              (qes, bl, mms, re) -> 1000 * qes * bl * bl / (2 * Math.PI * mms * re));

  public static final Formula.Of3 MECHANICAL_RESISTANCE =
      Formula.of("rms_kg_per_s", "2·π·fs·mms/(1000·qms)", "kg/s", SMALL_DRIVER)
          .with("fs", "mms", "qms", (fs, mms, qms) -> 2 * Math.PI * fs * mms / (1000 * qms));

  public static final Formula.Of3 MASS_FROM_MECHANICAL_Q =
      Formula.of("mms_g", "1000·qms·rms/(2·π·fs)", "g", SMALL_DRIVER)
          .with("qms", "rms", "fs", (qms, rms, fs) -> 1000 * qms * rms / (2 * Math.PI * fs));

  public static final Formula.Of3 RESONANCE_FROM_MECHANICAL_Q =
      Formula.of("fs_hz", "1000·qms·rms/(2·π·mms)", "Hz", SMALL_DRIVER)
          .with("qms", "rms", "mms", (qms, rms, mms) -> 1000 * qms * rms / (2 * Math.PI * mms));

  /** Volume acceleration in m³/s² per newton and T·m of one ampere, from cm², T·m and g. */
  public static final Formula.Of3 VOLUME_ACCELERATION =
      Formula.of("volume_acceleration_m3_per_s2", "sd·bl/(10·mms)", "m³/s² per A", SMALL_DRIVER)
          .with("sd", "bl", "mms", (sd, bl, mms) -> sd * bl / (10 * mms));

  /** The reference efficiency without fs, vas and qes. */
  public static final Formula.Of4 EFFICIENCY_OF_ACCELERATION =
      Formula.of("reference_efficiency", "ρ/(2·π·c)·a²/re", "", SMALL_DRIVER)
          .with("ρ", "c", "a", "re", (rho, c, a, re) -> rho / (2 * Math.PI * c) * a * a / re);

  /** From 1 W into re to 1 W into the rated impedance: the same voltage, more power in re. */
  public static final Formula.Of3 ONE_WATT_LEVEL =
      Formula.of("one_watt_level_db_spl", "L + 10·lg(rated/re)", "dB SPL", Source.DEFINITION)
          .with("L", "rated", "re", (l, rated, re) -> l + Decibels.ofPower(rated / re));

  public static final Formula.Of2 VOLTAGE_LEVEL =
      Formula.of(
              "two_point_eight_three_volt_level_db_spl",
              "L + 10·lg(2.83²/re)",
              "dB SPL",
              Source.DEFINITION)
          .with("L", "re", (l, re) -> l + Decibels.ofPower(REFERENCE_V * REFERENCE_V / re));

  public static final Formula.Of2 EFFICIENCY_BANDWIDTH =
      Formula.of("efficiency_bandwidth_hz", "fs/qes", "Hz", Source.COMMON_PRACTICE)
          .with("fs", "qes", (fs, qes) -> fs / qes);

  /** Volume in cm³ that the cone displaces from rest to its largest linear displacement. */
  public static final Formula.Of2 DISPLACEMENT =
      Formula.of("displacement_cm3", "sd·xmax/10", "cm³", Source.DEFINITION)
          .with("sd", "xmax", (sd, xmax) -> sd * xmax / 10);

  /** A rule of thumb: the effective diameter is 0.82 of the nominal one, within a tenth. */
  public static final Formula.Of1 AREA_FROM_NOMINAL =
      Formula.of("sd_cm2", "π/4·(0.82·nominal/10)²", "cm²", Source.COMMON_PRACTICE)
          .with("nominal", nominal -> Math.PI / 4 * 0.082 * 0.082 * nominal * nominal);

  private DriverLaws() {}

  private static double otherQ(double total, double one) {
    return total * one / (one - total);
  }
}
