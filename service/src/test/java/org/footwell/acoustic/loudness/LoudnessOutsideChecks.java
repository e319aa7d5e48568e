package org.footwell.acoustic.loudness;

import java.util.List;
import org.footwell.Answers;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class LoudnessOutsideChecks extends OutsideChecks {

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        // The editions differ by this much, and no more.
        OutsideCheck.of("equal-loudness", "contour, dB SPL", "iso-226-2003-contours.csv")
            .printed("level_db_spl")
            .computed(row -> band(row, "phon", "phon").listeningLevelDbSpl())
            .within(0.35),
        OutsideCheck.of("equal-loudness", "balance, dB", "iso-226-loudness-control.csv")
            .printed("balance_db")
            .computed(row -> band(row, "tuned_phon", "listening_phon").balanceDb())
            .within(0.2));
  }

  private static EqualLoudnessResult.Band band(Row row, String tuned, String listening) {
    double frequency = row.number("frequency_hz");
    EqualLoudnessRequest request =
        new EqualLoudnessRequest(
            row.number(tuned), row.number(listening), frequency, frequency, 40.0);
    return Answers.of(new EqualLoudness(), request).result().bands().get(0);
  }
}
