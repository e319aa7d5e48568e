package org.footwell.factory.rolloff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.factory.rolloff.BassRolloffRequest.DriverLevel;
import org.footwell.factory.rolloff.BassRolloffRequest.Headroom;
import org.footwell.parts.DriverBuilder;

class BassRolloffProperties {

  @Property(tries = 50)
  void volumeAloneIsNoLoss(@ForAll @DoubleRange(min = -40, max = 40) double louder) {
    NoiseTable table = new NoiseTable().cut(0, 3);
    for (double band : NoiseTable.BANDS) {
      table.level(1, band, -50 + louder - (band <= 100 ? 3 : 0));
    }
    assertEquals(0, table.result().largestLossDb(), 1e-9);
  }

  @Property(tries = 50)
  void gainsRestoreTheReferenceExactly(@ForAll @DoubleRange(min = 1.01, max = 20) double loss) {
    NoiseTable table = new NoiseTable().cut(10, 0).cut(20, loss);
    table.result().bands().stream()
        .filter(band -> band.volumeStep() == 20)
        .forEach(
            band -> assertEquals(band.frequencyHz() < 101 ? loss : 0, band.allowedGainDb(), 1e-9));
  }

  @Property(tries = 50)
  void noGainPassesHeadroomOrDisplacement(
      @ForAll @DoubleRange(min = 0, max = 20) double headroom,
      @ForAll @DoubleRange(min = 0.5, max = 20) double xmax) {
    NoiseTable table = new NoiseTable().cut(10, 0).cut(20, 5).cut(30, 12);
    table
        .draft
        .headroom(new Headroom(20, headroom))
        .driver(DriverBuilder.builder().sdCm2(300.0).xmaxMm(xmax).build())
        .driverLevel(new DriverLevel(10, 50.0, 70.0, null));
    double ceiling = -35 + headroom;
    for (var band : table.result().bands()) {
      double level = band.volumeStep() - 50 - (band.frequencyHz() < 101 ? band.lossDb() : 0);
      assertTrue(
          band.allowedGainDb() <= 1e-9
              || level + band.allowedGainDb() <= ceiling + 1e-9
              || band.frequencyHz() > 101);
    }
    for (var step : table.result().steps()) {
      assertTrue(step.allowedGainDb() <= 1e-9 || step.displacementMm() <= xmax * (1 + 1e-9));
      assertTrue(step.allowedGainDb() <= step.shelfGainDb() + 1e-9);
    }
  }
}
