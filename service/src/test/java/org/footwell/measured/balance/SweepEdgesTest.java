package org.footwell.measured.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.measured.balance.LevelAndBalanceResult.Band;
import org.footwell.measured.response.MadeUpResponse;
import org.footwell.signal.ExponentialSweep;
import org.junit.jupiter.api.Test;

/** A flat response reads flat in every third octave that counts, up to the ends of the sweep. */
class SweepEdgesTest {

  private static BalanceSession flat(double fromHz, double toHz, Double bandFrom, Double bandTo) {
    double[] played = new ExponentialSweep(fromHz, toHz, 0.5).signal(48_000);
    BalanceSession session = new BalanceSession().microphone("m", null);
    session.playing(fromHz, toHz, 0.5);
    session.draft.fromHz(20.0).toHz(20_000.0);
    MadeUpResponse click = MadeUpResponse.click(24_000, 2400, 0.5);
    return session.channel("a", bandFrom, bandTo, click.playing(played));
  }

  @Test
  void bandsInTheFadeAreLeftOutAndNamed() {
    for (Double[] stated : new Double[][] {{null, null}, {20.0, 20_000.0}}) {
      BalanceSession session = flat(20, 20_000, stated[0], stated[1]);
      List<Band> counted = session.result().bands().stream().filter(Band::judged).toList();
      for (Band band : counted) {
        assertEquals(-6.02, band.levelDb(), 0.1, band.frequencyHz() + " Hz");
      }
      assertEquals(31.6, counted.get(0).frequencyHz(), 0.1);
      assertEquals(12_589, counted.get(counted.size() - 1).frequencyHz(), 1);
      assertTrue(session.codes().contains("band-beyond-sweep"));
    }
  }

  @Test
  void aBandWithinTheSweepIsNotRemarkedOn() {
    assertFalse(
        Answers.codes(flat(20, 20_000, 40.0, 10_000.0).answer()).contains("band-beyond-sweep"));
  }

  @Test
  void aSweepThatTellsNothingOfAChannelIsRefused() {
    assertEquals(
        List.of("/channels/0 channel-beyond-sweep"), flat(1000, 20_000, 31.5, 100.0).faults());
  }
}
