package org.footwell.factory.sum;

import static org.footwell.factory.sum.SumBench.filter;
import static org.footwell.factory.sum.SumBench.output;

import java.util.List;
import org.footwell.factory.sum.SignalSumResult.SummedPoint;
import org.footwell.parts.CurveFrequenciesBuilder;
import org.footwell.parts.Filter.Kind;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;
import org.footwell.signal.SectionKind;

class SumOutsideChecks extends OutsideChecks {

  private static final String TABLE = "scipy-output-sums.csv";

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("signal-sum", "level of the sum, dB", TABLE)
            .printed("level_db")
            .computed(row -> sum(row).points().get(0).levelDb() + sum(row).sum().medianDb())
            .within(1e-6),
        OutsideCheck.of("signal-sum", "sum of magnitudes, dB", TABLE)
            .printed("in_phase_level_db")
            .computed(
                row -> {
                  SummedPoint point = sum(row).points().get(0);
                  return point.inPhaseLevelDb() + sum(row).sum().medianDb();
                })
            .within(1e-6));
  }

  private static SignalSumResult sum(Row row) {
    Kind kind = Kind.LINKWITZ_RILEY;
    SumBench bench = new SumBench().with(output("low").lowPass(filter(kind, 4, 300)));
    bench.with(
        output("mid")
            .lowPass(filter(kind, 4, 3000))
            .highPass(filter(kind, 4, 300))
            .gainDb(row.number("mid_gain_db"))
            .polarity((int) row.number("mid_polarity")));
    bench.with(output("high").highPass(filter(kind, 4, 3000)).delayMs(row.number("high_delay_ms")));
    double turn = row.number("mid_all_pass_hz");
    if (turn > 0) {
      bench.section("mid", SectionKind.ALL_PASS_1, turn, null, null);
    }
    bench.draft.frequencies(
        CurveFrequenciesBuilder.builder().listHz(List.of(row.number("frequency_hz"))).build());
    return bench.result();
  }
}
