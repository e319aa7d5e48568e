package org.footwell.acoustic.level;

import org.footwell.calculation.Run;
import org.footwell.calculation.text.Span;
import org.footwell.physics.NoiseDose;

/** Noise exposure by the recommendation of NIOSH: 85 dBA for 8 h, 3 dB exchange rate. */
public final class Exposure {

  private Exposure() {}

  /**
   * Judges a level for hearing.
   *
   * @param levelDba A-weighted level, dBA, or null when it is not known
   * @param level unweighted level, dB SPL: only tells whether it is worth asking for the other
   * @param peakDbc C-weighted peak level, dBC, or null when it is not known
   * @param peak unweighted peak level, dB SPL: never below the C-weighted one
   * @return hours a day allowed, or null when there is no A-weighted level
   */
  public static Double judge(Double levelDba, double level, Double peakDbc, double peak, Run run) {
    judgePeak(peakDbc, peak, run);
    if (levelDba == null) {
      if (level > NoiseDose.NIOSH_EIGHT_HOUR_DBA) {
        run.find(LevelFinding.EXPOSURE_UNKNOWN);
      }
      return null;
    }
    double hours = run.apply(NoiseDose.NIOSH_ALLOWED_H, levelDba);
    if (levelDba >= NoiseDose.CEILING_DBA) {
      run.find(LevelFinding.EXPOSURE_CEILING).value(levelDba).limit(NoiseDose.CEILING_DBA);
    } else if (levelDba > NoiseDose.NIOSH_EIGHT_HOUR_DBA) {
      run.find(LevelFinding.EXPOSURE_LIMITED)
          .value(levelDba)
          .limit(NoiseDose.NIOSH_EIGHT_HOUR_DBA)
          .with("time", Span.of(hours));
    }
    return hours;
  }

  private static void judgePeak(Double peakDbc, double peak, Run run) {
    if (peakDbc == null && peak > NoiseDose.PEAK_LIMIT_DBC) {
      run.find(LevelFinding.PEAK_NOT_WEIGHTED).value(peak).limit(NoiseDose.PEAK_LIMIT_DBC);
    } else if (peakDbc != null && peakDbc > NoiseDose.PEAK_LIMIT_DBC) {
      run.find(LevelFinding.PEAK_ABOVE_CEILING).value(peakDbc).limit(NoiseDose.PEAK_LIMIT_DBC);
    }
  }
}
