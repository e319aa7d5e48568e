package org.footwell.acoustic.driver;

import java.util.List;
import java.util.Map;

/** A fault that catalogues have, how it is planted, and what must be said about it. */
public enum PlantedFault {
  QTS_WRONG("qts", 0.8, "qts-off", "qts-contradicted"),
  QTS_ABOVE_QES("qts", 2.2, "qts-impossible"),
  FS_WRONG("fs_hz", 1.3, "fs-off", "fs-contradicted"),
  VAS_WRONG("vas_l", 1.6, "vas-off", "vas-contradicted"),
  QES_WRONG("qes", 1.4, "qes-off", "qes-contradicted"),
  QMS_WRONG("qms", 1.6, "qms-off", "qms-contradicted"),
  RE_WRONG("re_ohm", 1.4, "qes-off", "qes-contradicted"),
  BL_WRONG("bl_tm", 1.3, "qes-off", "qes-contradicted"),
  MMS_WRONG("mms_g", 1.6, "qes-off", "qes-contradicted"),
  CMS_WRONG("cms_mm_per_n", 1.8, "vas-off", "vas-contradicted"),
  SD_WRONG("sd_cm2", 1.4, "vas-off", "vas-contradicted"),
  RMS_WRONG("rms_kg_per_s", 1.6, "qms-off", "qms-contradicted"),
  MMS_IN_KG("mms_g", 1e-3, "unit-slip"),
  SD_IN_M2("sd_cm2", 1e-4, "unit-slip"),
  SD_IN_MM2("sd_cm2", 100, "unit-slip"),
  VAS_IN_M3("vas_l", 1e-3, "unit-slip"),
  VAS_IN_CUBIC_FEET("vas_l", 1 / 28.3168, "unit-slip"),
  CMS_IN_UM_PER_N("cms_mm_per_n", 1000, "unit-slip"),
  CMS_IN_M_PER_N("cms_mm_per_n", 1e-3, "unit-slip"),
  FS_IN_KHZ("fs_hz", 1e-3, "unit-slip"),
  LE_IN_H("le_mh", 1e-3, "unit-slip"),
  LE_IN_UH("le_mh", 1000, "unit-slip"),
  XMAX_IN_M("xmax_mm", 1e-3, "unit-slip"),
  NOMINAL_IN_INCHES("nominal_mm", 1 / 25.4, "unit-slip"),
  DEPTH_IN_M("mounting_depth_mm", 1e-3, "unit-slip"),
  MASS_IN_KG("mass_g", 1e-3, "unit-slip"),
  BL_POINT_MISPLACED("bl_tm", 0.1, "unit-slip"),
  XMAX_ABSURD("xmax_mm", 100, "implausible", "absurd"),
  PEAK_INFLATED("peak_power_w", 4, "peak-inflated"),
  PEAK_BELOW_CONTINUOUS("peak_power_w", 0.25, "peak-below-continuous"),
  CUTOUT_TOO_LARGE("cutout_mm", 1.3, "cutout-too-large"),
  SENSITIVITY_INFLATED(
      "sensitivity.level_db_spl", 0, "sensitivity-off", "sensitivity-contradicted"),
  SENSITIVITY_FAR_INFLATED(
      "sensitivity.level_db_spl", 0, "sensitivity-contradicted", "sensitivity-off"),
  QES_AND_QTS_SLIPPED("qes", 10, "qes-and-qts-wrong"),
  QES_AND_QMS_EXCHANGED("qes", 0, "qes-and-qms-exchanged"),
  SENSITIVITY_OTHER_BASIS("sensitivity.basis", 0, "sensitivity-off", "sensitivity-contradicted"),
  RE_OF_ONE_COIL("re_ohm", 0, "re-low-for-rated", "re-contradicts-rated"),
  RATED_DOUBLED("rated_ohm", 0, "re-low-for-rated", "re-contradicts-rated"),
  RATED_HALVED("rated_ohm", 0, "re-contradicts-rated");

  private final String column;
  private final double factor;

  /** With spaces between them. */
  private final String codes;

  PlantedFault(String column, double factor, String... codes) {
    this.column = column;
    this.factor = factor;
    this.codes = String.join(" ", codes);
  }

  /** The column that is wrong. */
  public String column() {
    return column;
  }

  /** Codes of which at least one must be found. */
  public List<String> codes() {
    return List.of(codes.split(" "));
  }

  /** Faults of the driver as a whole, before its level is reckoned; returns the basis to print. */
  boolean prepare(Map<String, Double> exact, boolean perVolt) {
    switch (this) {
      case RE_OF_ONE_COIL -> {
        exact.compute("re_ohm", (name, re) -> re / 2);
        exact.compute("bl_tm", (name, bl) -> bl / Math.sqrt(2));
      }
      case QES_AND_QMS_EXCHANGED -> {
        // Far enough apart in tweeters too: equal ones could be exchanged without any harm.
        double factor = Math.max(1, 4 * exact.get("qes") / exact.get("qms"));
        exact.compute("qms", (name, q) -> q * factor);
        exact.compute("rms_kg_per_s", (name, rms) -> rms / factor);
        exact.put("qts", 1 / (1 / exact.get("qes") + 1 / exact.get("qms")));
      }
      case RATED_DOUBLED -> exact.compute("rated_ohm", (name, ohm) -> 2 * ohm);
      case RATED_HALVED -> exact.compute("rated_ohm", (name, ohm) -> ohm / 2);
      case SENSITIVITY_OTHER_BASIS -> {
        double scale = 2 / exact.get("rated_ohm");
        exact.put("rated_ohm", 2.0);
        exact.compute("re_ohm", (name, re) -> re * scale);
        exact.compute("bl_tm", (name, bl) -> bl * Math.sqrt(scale));
        return true;
      }
      default -> {
        return perVolt;
      }
    }
    return perVolt;
  }

  /** Spoils a printed record. */
  void plant(Map<String, String> cells) {
    if (this == QES_AND_QTS_SLIPPED) {
      cells.compute(
          "qts", (name, q) -> CatalogueSample.threeDigits(factor * Double.parseDouble(q)));
    }
    if (factor != 0) {
      double wrong = Double.parseDouble(cells.get(column)) * factor;
      cells.put(
          column,
          factor < 2.5 && factor > 0.2
              ? CatalogueSample.printed(column, wrong)
              : CatalogueSample.threeDigits(wrong));
    } else if (this == QES_AND_QMS_EXCHANGED) {
      cells.put("qes", cells.put("qms", cells.get("qes")));
    } else if (this == SENSITIVITY_OTHER_BASIS) {
      cells.put(column, "one_watt");
    } else if (this == SENSITIVITY_INFLATED || this == SENSITIVITY_FAR_INFLATED) {
      double by = this == SENSITIVITY_INFLATED ? 6 : 10;
      cells.compute(
          column, (name, level) -> CatalogueSample.printed(name, Double.parseDouble(level) + by));
    }
    if (this == SENSITIVITY_FAR_INFLATED) {
      List.of("cms_mm_per_n", "mms_g", "bl_tm", "rms_kg_per_s").forEach(cells::remove);
    }
  }
}
