package org.footwell.measured.correction;

import java.util.List;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class CorrectionOutsideChecks extends OutsideChecks {

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("response-correction", "error before, dB", "scipy-fitted-filters.csv")
            .printed("before_db")
            .computed(row -> channel(row).errorBeforeDb())
            .within(0.05),
        // The smallest error SciPy finds from many starts; ours starts once.
        OutsideCheck.of("response-correction", "error after, dB", "scipy-fitted-filters.csv")
            .printed("after_db")
            .computed(row -> channel(row).errorAfterDb())
            .within(0.1));
  }

  private static ResponseCorrectionResult.ChannelCorrection channel(Row row) {
    CorrectionSession session = CorrectionSession.at(1);
    session.channel("a", 100.0, 10_000.0, Bells.flat().through(row.text("sections")));
    session
        .draft
        .filters(CorrectionSession.limits((int) row.number("count"), 4))
        .smoothingPerOctave(24);
    return session.result().channels().get(0);
  }
}
