package org.footwell.measured.balance;

import java.util.List;
import org.footwell.measured.response.MadeUpResponse;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class BalanceOutsideChecks extends OutsideChecks {

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        // The bins of a gated response are a little coarse for the lowest bands.
        OutsideCheck.of("level-and-balance", "third-octave level, dB", "scipy-band-levels.csv")
            .printed("level_db")
            .computed(BalanceOutsideChecks::level)
            .within(0.05));
  }

  private static double level(Row row) {
    BalanceSession session = new BalanceSession().microphone("m", null);
    MadeUpResponse response = MadeUpResponse.click(36_000, 4000, 1).through(row.text("sections"));
    session.channel("a", 80.0, 16_000.0, response);
    return session.result().bands().stream()
        .filter(band -> Math.abs(band.frequencyHz() / row.number("frequency_hz") - 1) < 1e-6)
        .findFirst()
        .orElseThrow()
        .levelDb();
  }
}
