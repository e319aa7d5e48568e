package org.footwell.measured.balance;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.measured.response.JudgedChannel;
import org.footwell.measured.response.TakeRules;
import org.footwell.parts.FrequencyFault;
import org.footwell.physics.ThirdOctaves;

/** Bands are judged where something was recorded. */
@Check.Of(
    value = {
      "recordings.*.recording",
      "from_hz",
      "to_hz",
      "channels.*.from_hz",
      "channels.*.to_hz"
    },
    says =
        "A third octave has its middle between from_hz and to_hz and below 0.84 times half the sample"
            + " rate, and one of them is in the band of each channel.")
final class JudgedBands implements Check<LevelAndBalanceRequest> {

  @Override
  public void check(LevelAndBalanceRequest q, Refusing to) {
    if (q.fromHz() > q.toHz()) {
      return; // told by the rule
    }
    double[] frequencies = frequencies(q);
    if (frequencies.length == 0) {
      to.refuse(FrequencyFault.RANGE_WITHOUT_POINTS)
          .at("/from_hz")
          .given(Allowed.range(q.fromHz(), q.toHz(), "Hz"))
          .allowed(Phrase.of(BalanceWords.WIDER_BELOW).own("limit", Double.toString(highest(q))));
    } else {
      bands(q, frequencies, to);
    }
  }

  /** The third octaves in Hz. */
  static double[] frequencies(LevelAndBalanceRequest q) {
    double highest = highest(q);
    return ThirdOctaves.between(q.fromHz(), q.toHz()).filter(f -> f <= highest).toArray();
  }

  private static double highest(LevelAndBalanceRequest q) {
    Double rateHz = TakeRules.rateHz(q);
    return rateHz == null ? q.toHz() : TakeRules.USABLE * rateHz / 2;
  }

  private static void bands(LevelAndBalanceRequest q, double[] frequencies, Refusing to) {
    for (int i = 0; i < q.channels().size(); i++) {
      JudgedChannel channel = q.channels().get(i);
      String at = "/channels/" + i;
      if (channel.fromHz() == null) {
        continue;
      }
      if (BandLevels.within(channel, frequencies) == null) {
        to.refuse(BalanceFault.CHANNEL_BAND_EMPTY)
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
