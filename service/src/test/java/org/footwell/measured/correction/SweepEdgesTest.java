package org.footwell.measured.correction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.footwell.measured.response.MadeUpResponse;
import org.footwell.signal.ExponentialSweep;
import org.junit.jupiter.api.Test;

/** The fade at the ends of a sweep is not taken for a fault of the loudspeaker. */
class SweepEdgesTest {

  @Test
  void aFlatResponseIsNotBoostedAtTheEndsOfTheSweep() {
    for (Double[] stated : new Double[][] {{null, null}, {20.0, 20_000.0}}) {
      double[] played = new ExponentialSweep(20, 20_000, 0.5).signal(48_000);
      CorrectionSession session = CorrectionSession.at(1);
      session.playing(20.0, 20_000.0, 0.5);
      MadeUpResponse click = MadeUpResponse.click(24_000, 2400, 0.5);
      session.channel("a", stated[0], stated[1], click.playing(played));
      session.draft.filters(CorrectionSession.limits(6, 12));
      ResponseCorrectionResult result = session.result();
      result.sections().forEach(one -> assertEquals(0, one.gainDb(), 0.2, one::toString));
      assertEquals(0, result.channels().get(0).errorBeforeDb(), 0.05);
      // What nobody asked for is only noted.
      String code = stated[0] == null ? "found-range-beyond-sweep" : "range-beyond-sweep";
      assertTrue(session.codes().contains(code));
    }
  }
}
