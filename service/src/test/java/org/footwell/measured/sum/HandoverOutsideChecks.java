package org.footwell.measured.sum;

import java.util.List;
import org.footwell.measured.response.MadeUpResponse;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class HandoverOutsideChecks extends OutsideChecks {

  private static final int MIDDLE = 24;

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("loudspeaker-sum", "sum loss, dB", "cos-phase-sum.csv")
            .rows(row -> row.number("phase_difference_deg") < 180)
            .printed("change_db")
            .computed(row -> PairSum.LOSS.at(row.number("phase_difference_deg")))
            .within(0.006),
        // 180 and −180 degrees are the same.
        OutsideCheck.of("loudspeaker-sum", "size of the phase, degrees", "scipy-pair-sums.csv")
            .printed(row -> Math.abs(row.number("phase_deg")))
            .computed(row -> Math.abs(result(row).phaseDeg()))
            .within(0.1),
        OutsideCheck.of("loudspeaker-sum", "level of the sum, dB", "scipy-pair-sums.csv")
            .rows(row -> row.number("sum_db") > -50)
            .printed("sum_db")
            .computed(row -> result(row).points().get(MIDDLE).sumDb())
            .within(0.01));
  }

  private static LoudspeakerSumResult result(Row row) {
    SumSession session = new SumSession();
    session.draft.crossoverHz(row.number("corner_hz"));
    MadeUpResponse click = MadeUpResponse.click(12_000, 1500, 1);
    return session
        .position(
            click.through(row.text("low_sections")),
            click.through(row.text("high_sections")).times(row.number("polarity")))
        .result();
  }
}
