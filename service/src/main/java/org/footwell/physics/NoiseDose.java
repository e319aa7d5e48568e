package org.footwell.physics;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/** How much noise a day may have: the recommendation of NIOSH and the federal rule of the USA. */
public final class NoiseDose {

  public static final Source NIOSH =
      Source.of(
          "NIOSH Publication 98-126, Criteria for a Recommended Standard: Occupational Noise"
              + " Exposure (1998), section 1.1 and Table 1-1");
  public static final Source CFR_1910_95 =
      Source.of("29 CFR 1910.95, Occupational noise exposure, Appendix A and Table G-16a");

  public static final Source DIRECTIVE_2003_10 =
      Source.of(
          "Directive 2003/10/EC, minimum health and safety requirements regarding noise, Article 3:"
              + " peak sound pressure, C-weighted");

  /** Level that NIOSH allows for eight hours a day, dBA. */
  public static final double NIOSH_EIGHT_HOUR_DBA = 85;

  /**
   * C-weighted peak that work places may not pass, dBC: 200 Pa. Action is asked for from 137 and 135
   * dBC on.
   */
  public static final double PEAK_LIMIT_DBC = 140;

  /** Ceiling that no exposure may pass, dBA: section 1.1.4 of the publication of NIOSH. */
  public static final double CEILING_DBA = 140;

  /** Level from which on exposure is counted, dBA, by NIOSH and for the federal action level. */
  public static final double COUNTED_DBA = 80;

  /** Hours a day allowed at a level in dBA, 80 to 140; the table breaks off there. */
  public static final Formula.Of1 NIOSH_ALLOWED_H =
      Formula.of("exposure_allowed_h", "8/2^((L − 85)/3)", "h", NIOSH)
          .with("L", level -> 8 / Math.pow(2, (level - NIOSH_EIGHT_HOUR_DBA) / 3));

  /** Reference duration in hours at a level in dBA, 80 to 130. */
  public static final Formula.Of1 CFR_REFERENCE_H =
      Formula.of("reference_duration_h", "8/2^((L − 90)/5)", "h", CFR_1910_95)
          .with("L", level -> 8 / Math.pow(2, (level - 90) / 5));

  /** Part of the day's dose in percent that C hours of T allowed ones use up. */
  public static final Formula.Of2 DOSE_PERCENT =
      Formula.of("dose_percent", "100·C/T", "%", CFR_1910_95).with("C", "T", (c, t) -> 100 * c / t);

  /** Steady level in dBA that gives a dose in percent, above 0, in eight hours. */
  public static final Formula.Of1 NIOSH_TWA =
      Formula.of("twa_dba", "10·lg(D/100) + 85", "dBA", NIOSH)
          .with("D", d -> 10 * Math.log10(d / 100) + NIOSH_EIGHT_HOUR_DBA);

  /** The same by the federal rule. */
  public static final Formula.Of1 CFR_TWA =
      Formula.of("twa_dba", "16.61·lg(D/100) + 90", "dBA", CFR_1910_95)
          .with("D", d -> 16.61 * Math.log10(d / 100) + 90);

  private NoiseDose() {}
}
