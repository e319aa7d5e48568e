package org.footwell.measured.balance;

import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.measured.response.JudgedChannel;
import org.footwell.measured.response.TakeRules;
import org.footwell.parts.FrequencyFault;
import org.footwell.physics.ThirdOctaves;

/** The rules between the fields of a request; every breach is refused, all at once. */
final class BalanceRules {

  private final LevelAndBalanceRequest q;
  private final Run run;

  private BalanceRules(LevelAndBalanceRequest q, Run run) {
    this.q = q;
    this.run = run;
  }

  /** The third octaves in Hz; ends the run if anything is amiss. */
  static double[] require(LevelAndBalanceRequest q, Run run) {
    BalanceRules rules = new BalanceRules(q, run);
    TakeRules takes = new TakeRules(q, run);
    takes.check();
    takes.pairs(q.pairs());
    double[] frequencies = rules.frequencies(takes.rateHz());
    if (frequencies.length > 0) {
      rules.bands(frequencies);
    }
    run.requireNoFaults();
    return frequencies;
  }

  private double[] frequencies(Double rateHz) {
    double highest = rateHz == null ? q.toHz() : TakeRules.USABLE * rateHz / 2;
    double[] inRange =
        ThirdOctaves.between(q.fromHz(), q.toHz()).filter(f -> f <= highest).toArray();
    if (inRange.length == 0) {
      run.refuse(FrequencyFault.RANGE_WITHOUT_POINTS)
          .at("/from_hz")
          .given(Allowed.range(q.fromHz(), q.toHz(), "Hz"))
          .allowed(Phrase.of(BalanceWords.WIDER_BELOW).own("limit", Double.toString(highest)));
    }
    return inRange;
  }

  private void bands(double[] frequencies) {
    for (int i = 0; i < q.channels().size(); i++) {
      JudgedChannel channel = q.channels().get(i);
      String at = "/channels/" + i;
      if (channel.fromHz() == null) {
        continue;
      }
      if (BandLevels.within(channel, frequencies) == null) {
        run.refuse(BalanceFault.CHANNEL_BAND_EMPTY)
            .at(at)
            .given(Allowed.range(channel.fromHz(), channel.toHz(), "Hz"))
            .allowed(
                Phrase.of(BalanceWords.HOLDING_MID_BAND)
                    .own("from", Double.toString(frequencies[0]))
                    .own("to", Double.toString(frequencies[frequencies.length - 1])));
      }
    }
  }
}
