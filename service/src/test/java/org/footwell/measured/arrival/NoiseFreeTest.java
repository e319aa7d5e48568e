package org.footwell.measured.arrival;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.footwell.measured.response.MadeUpResponse;
import org.footwell.parts.Filter;
import org.footwell.signal.ExponentialSweep;
import org.junit.jupiter.api.Test;

/** Recordings without any noise: their signal-to-noise ratio has no end, and that is fine. */
class NoiseFreeTest {

  private static final Filter HIGH = new Filter(Filter.Kind.LINKWITZ_RILEY, 4, 80.0, null);

  @Test
  void aResponseInSilenceIsAnsweredAtTheMostTheRatioGoesTo() {
    Random random = new Random(7);
    for (int trial = 0; trial < 60; trial++) {
      int size = new int[] {64, 480, 4800, 24_000}[random.nextInt(4)];
      MadeUpResponse response = MadeUpResponse.click(size, random.nextInt(size / 2), 0.5);
      response = trial % 3 == 0 ? response.reflected(-1, 1 + random.nextInt(size - 1)) : response;
      response = trial % 3 == 1 ? response.through(0.1, 0, -0.1, 1, -1.75, 0.78) : response;
      Session session = Session.plain().take("a", "m", response.samples());
      session.channels.set(0, Session.named("a").highPass(trial % 2 == 0 ? null : HIGH).build());
      assertEquals(1, session.result().channels().size(), "trial " + trial);
    }
    Session session =
        Session.plain().take("a", "m", MadeUpResponse.click(4800, 480, 0.5).samples());
    assertEquals(120, session.result().recordings().get(0).signalToNoiseDb());
  }

  @Test
  void aSweepInSilenceIsAnswered() {
    double[] sweep = new ExponentialSweep(50, 20_000, 0.1).signal(MadeUpRoom.RATE_HZ);
    Session session = Session.plain();
    session.playing(50.0, 20_000.0, 0.1, null);
    session.take("a", "m", MadeUpResponse.click(4800, 160, 0.5).playing(sweep).samples());
    assertEquals(160 / 48.0, session.result().channels().get(0).arrivalMs(), 0.01);
  }
}
