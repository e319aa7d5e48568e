package org.footwell.measured.balance;

import static org.footwell.measured.balance.BalanceFinding.BAND_BEYOND_SWEEP;
import static org.footwell.measured.balance.BalanceFinding.BAND_NEAR_NOISE;
import static org.footwell.measured.balance.BalanceFinding.GATE_TOO_SHORT_FOR_BASS;
import static org.footwell.measured.balance.BalanceFinding.ONE_POSITION_ONLY;
import static org.footwell.measured.balance.BalanceFinding.PAIR_UNEVEN;
import static org.footwell.measured.balance.BalanceFinding.PAIR_UNEVEN_IN_BANDS;
import static org.footwell.measured.balance.BalanceFinding.PAIR_WITHOUT_COMMON_BAND;
import static org.footwell.measured.balance.BalanceFinding.PLAYING_BAND_FOUND;
import static org.footwell.measured.balance.BalanceFinding.TRIM_LARGE;

import java.util.List;
import org.footwell.calculation.Run;

/** What is remarked on. Thresholds are common practice without a source. */
final class BalanceRemarks {

  private static final double LARGE_TRIM_DB = 6;

  /** Noise 10 dB below adds 0.4 dB. */
  private static final double NEAR_NOISE_DB = 10;

  /** About the smallest difference of level that is heard. */
  private static final double UNEVEN_DB = 1;

  private static final double UNEVEN_BAND_DB = 3;

  private final LevelAndBalanceRequest q;
  private final Run run;

  BalanceRemarks(LevelAndBalanceRequest q, Run run) {
    this.q = q;
    this.run = run;
  }

  void on(List<BandLevels> all, double[] trims, String quietest) {
    for (int c = 0; c < trims.length; c++) {
      BandLevels one = all.get(c);
      String at = "/channels/" + c;
      if (-trims[c] > LARGE_TRIM_DB) {
        run.find(TRIM_LARGE)
            .at(at)
            .value(-trims[c])
            .limit(LARGE_TRIM_DB)
            .own("name", one.id())
            .own("quietest", quietest);
      }
      noise(one, at);
      reach(one, at);
    }
    if (q.microphones().size() == 1) {
      run.find(ONE_POSITION_ONLY).at("/microphones");
    }
  }

  private void noise(BandLevels one, String at) {
    int worst = one.band().first();
    for (int i = worst; i <= one.band().last(); i++) {
      worst = one.heard().aboveNoiseDb(i) < one.heard().aboveNoiseDb(worst) ? i : worst;
    }
    double least = one.heard().aboveNoiseDb(worst);
    if (least < NEAR_NOISE_DB) {
      run.find(BAND_NEAR_NOISE)
          .at(at)
          .value(least)
          .limit(NEAR_NOISE_DB)
          .own("name", one.id())
          .with("frequency", one.frequencies()[worst]);
    }
  }

  private void reach(BandLevels one, String at) {
    if (one.fromHz() < one.gateLimitHz()) {
      run.find(GATE_TOO_SHORT_FOR_BASS)
          .at("/gate")
          .value(1000 * one.heard().lengthS())
          .limit(one.gateLimitHz())
          .own("name", one.id())
          .with("frequency", one.fromHz());
    }
    if (!one.plays().equals(one.band())) {
      run.find(BAND_BEYOND_SWEEP)
          .at(at)
          .value(one.fromHz())
          .limit(one.toHz())
          .own("name", one.id())
          .with("from", one.frequencies()[one.plays().first()])
          .with("to", one.frequencies()[one.plays().last()]);
    }
    if (one.asked().fromHz() == null) {
      run.find(PLAYING_BAND_FOUND)
          .at(at)
          .value(one.fromHz())
          .limit(one.toHz())
          .own("name", one.id());
    }
  }

  void onPair(int index, LevelAndBalanceResult.Pair pair) {
    String at = "/pairs/" + index;
    if (pair.differenceDb() == null) {
      run.find(PAIR_WITHOUT_COMMON_BAND).at(at).own("left", pair.left()).own("right", pair.right());
      return;
    }
    if (Math.abs(pair.differenceDb()) > UNEVEN_DB) {
      run.find(PAIR_UNEVEN)
          .at(at)
          .value(Math.abs(pair.differenceDb()))
          .limit(UNEVEN_DB)
          .own("louder", pair.differenceDb() > 0 ? pair.left() : pair.right())
          .own("softer", pair.differenceDb() > 0 ? pair.right() : pair.left());
    }
    if (Math.abs(pair.largestDifferenceDb()) > UNEVEN_BAND_DB) {
      run.find(PAIR_UNEVEN_IN_BANDS)
          .at(at)
          .value(pair.largestDifferenceDb())
          .limit(UNEVEN_BAND_DB)
          .own("left", pair.left())
          .own("right", pair.right())
          .with("frequency", pair.largestDifferenceHz());
    }
  }
}
