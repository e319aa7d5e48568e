package org.footwell.level;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.calculation.Texts;

/** Noise exposure by the recommendation of NIOSH: 85 dBA for 8 h, 3 dB exchange rate. */
public final class Exposure {

  static final Source NIOSH =
      Source.of(
          "NIOSH Publication 98-126, Criteria for a Recommended Standard: Occupational Noise"
              + " Exposure (1998), section 1.1 and Table 1-1");

  /** Level allowed for eight hours a day, dBA. */
  static final double EIGHT_HOUR_DBA = 85;

  /** Ceiling that no exposure may pass, dBA. */
  static final double CEILING_DBA = 140;

  /** Hours a day allowed at a level in dBA, 80 to 140; the table breaks off there. */
  static final Formula.Of1 ALLOWED_H =
      Formula.of("exposure_allowed_h", "8/2^((L − 85)/3)", "h", NIOSH)
          .with("L", level -> 8 / Math.pow(2, (level - EIGHT_HOUR_DBA) / 3));

  private Exposure() {}

  /**
   * Judges a level for hearing.
   *
   * @param levelDba A-weighted level, dBA, or null when it is not known
   * @param level unweighted level, dB SPL: only tells whether it is worth asking for the other
   * @param peak unweighted peak level, dB SPL
   * @return hours a day allowed, or null when there is no A-weighted level
   */
  public static Double judge(Double levelDba, double level, double peak, Run run) {
    if (peak > CEILING_DBA) {
      run.find(LevelFinding.PEAK_ABOVE_CEILING).value(peak).limit(CEILING_DBA);
    }
    if (levelDba == null) {
      if (level > EIGHT_HOUR_DBA) {
        run.find(LevelFinding.EXPOSURE_UNKNOWN);
      }
      return null;
    }
    double hours = run.apply(ALLOWED_H, levelDba);
    if (levelDba >= CEILING_DBA) {
      run.find(LevelFinding.EXPOSURE_CEILING).value(levelDba).limit(CEILING_DBA);
    } else if (levelDba > EIGHT_HOUR_DBA) {
      run.find(LevelFinding.EXPOSURE_LIMITED)
          .value(levelDba)
          .limit(EIGHT_HOUR_DBA)
          .with("time", inWords(hours));
    }
    return hours;
  }

  /** A time below a day in the unit a person would use. */
  private static String inWords(double hours) {
    if (hours >= 1) {
      return Texts.forPeople(hours) + " hours";
    }
    return hours * 60 >= 1
        ? Texts.forPeople(hours * 60) + " minutes"
        : Texts.forPeople(hours * 3600) + " seconds";
  }
}
