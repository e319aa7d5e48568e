package org.footwell.measured.arrival;

import java.util.List;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class ArrivalOutsideChecks extends OutsideChecks {

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("arrival-times", "arrival, samples at 48 kHz", "scipy-arrivals.csv")
            .printed("delay_samples")
            .computed(row -> take(row).arrivalMs() * MadeUpRoom.RATE_HZ / 1000)
            .within(2),
        OutsideCheck.of("arrival-times", "polarity", "scipy-arrivals.csv")
            .printed("polarity")
            .computed(row -> take(row).polarity())
            .within(0));
  }

  private static ArrivalTimesResult.Take take(Row row) {
    String[] texts = row.text("response").split(" ", -1);
    float[] samples = new float[texts.length];
    for (int n = 0; n < samples.length; n++) {
      samples[n] = Float.parseFloat(texts[n]);
    }
    return Session.plain().take("a", "m", samples).result().recordings().get(0);
  }
}
