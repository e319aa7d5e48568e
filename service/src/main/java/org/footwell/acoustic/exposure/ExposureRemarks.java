package org.footwell.acoustic.exposure;

import static org.footwell.acoustic.exposure.ExposureFinding.ACTION_LEVEL_REACHED;
import static org.footwell.acoustic.exposure.ExposureFinding.BASS_HEAVY;
import static org.footwell.acoustic.exposure.ExposureFinding.C_BELOW_A;
import static org.footwell.acoustic.exposure.ExposureFinding.DOSE_ABOVE_RECOMMENDATION;
import static org.footwell.acoustic.exposure.ExposureFinding.DOSE_ABOVE_RULE;
import static org.footwell.acoustic.exposure.ExposureFinding.LEVEL_ABOVE_CEILING;
import static org.footwell.acoustic.exposure.ExposureFinding.LEVEL_ABOVE_TABLE;
import static org.footwell.acoustic.exposure.ExposureFinding.PEAK_ABOVE_LIMIT;
import static org.footwell.acoustic.exposure.ExposureFinding.PEAK_BELOW_LEVEL;
import static org.footwell.acoustic.exposure.ExposureFinding.PERIOD_NOT_COUNTED;

import org.footwell.acoustic.exposure.SoundExposureRequest.Period;
import org.footwell.acoustic.exposure.SoundExposureResult.Line;
import org.footwell.calculation.Run;
import org.footwell.physics.FrequencyWeighting;
import org.footwell.physics.NoiseDose;

/** What there is to say about periods and doses. */
final class ExposureRemarks {

  /** Where the table of permissible levels of 29 CFR 1910.95 ends, dBA. */
  private static final double TABLE_END_DBA = 115;

  /** C less A from which on bass prevails, dB; common practice, no source. */
  private static final double BASS_HEAVY_DB = 15;

  /** Dose at which 29 CFR 1910.95 (c) asks for a hearing conservation programme, %. */
  private static final double ACTION_PERCENT = 50;

  private static final double ALL_PERCENT = 100;

  private ExposureRemarks() {}

  static void onPeriod(int index, Period period, Line line, Run run) {
    String at = "/periods/" + index;
    double level = line.levelDba();
    if (level >= NoiseDose.CEILING_DBA) {
      run.find(LEVEL_ABOVE_CEILING).at(at).value(level).limit(NoiseDose.CEILING_DBA);
    } else if (level > TABLE_END_DBA) {
      run.find(LEVEL_ABOVE_TABLE).at(at).value(level).limit(TABLE_END_DBA);
    } else if (level < NoiseDose.COUNTED_DBA) {
      run.find(PERIOD_NOT_COUNTED).at(at).value(level).limit(NoiseDose.COUNTED_DBA);
    }
    if (period.peakLevelDbc() != null && period.peakLevelDbc() > NoiseDose.PEAK_LIMIT_DBC) {
      run.find(PEAK_ABOVE_LIMIT)
          .at(at + "/peak_level_dbc")
          .value(period.peakLevelDbc())
          .limit(NoiseDose.PEAK_LIMIT_DBC);
    }
    if (line.cMinusADb() != null && line.cMinusADb() > BASS_HEAVY_DB) {
      run.find(BASS_HEAVY).at(at).value(line.cMinusADb()).limit(BASS_HEAVY_DB);
    }
    contradictions(at, period, line, run);
  }

  /** Levels that no one sound can have together. */
  private static void contradictions(String at, Period period, Line line, Run run) {
    double most = FrequencyWeighting.MOST_A_OVER_C_DB;
    if (period.levelDbc() != null && -line.cMinusADb() > most) {
      run.find(C_BELOW_A).at(at + "/level_dbc").value(-line.cMinusADb()).limit(most);
    }
    // Even a sine peaks 3 dB above its own level, more than A can be above C.
    boolean knowsC = line.levelDbc() != null;
    double level = knowsC ? line.levelDbc() : line.levelDba();
    if (period.peakLevelDbc() != null && period.peakLevelDbc() < level) {
      run.find(PEAK_BELOW_LEVEL)
          .at(at + "/peak_level_dbc")
          .value(period.peakLevelDbc())
          .limit(level)
          .with("weighting", knowsC ? ExposureWords.DBC : ExposureWords.DBA);
    }
  }

  static void onDay(double nioshPercent, double cfrPercent, double permissiblePercent, Run run) {
    if (nioshPercent > ALL_PERCENT) {
      run.find(DOSE_ABOVE_RECOMMENDATION).at("/periods").value(nioshPercent).limit(ALL_PERCENT);
    }
    if (permissiblePercent > ALL_PERCENT) {
      run.find(DOSE_ABOVE_RULE).at("/periods").value(permissiblePercent).limit(ALL_PERCENT);
    }
    if (cfrPercent >= ACTION_PERCENT) {
      run.find(ACTION_LEVEL_REACHED).at("/periods").value(cfrPercent).limit(ACTION_PERCENT);
    }
  }
}
