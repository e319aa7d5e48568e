package org.footwell.measured.balance;

import static org.footwell.calculation.CoreFault.REQUIRED;

import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.measured.balance.LevelAndBalanceRequest.BalancedChannel;
import org.footwell.measured.response.TakeRules;
import org.footwell.parts.FrequencyFault;
import org.footwell.parts.LevelAt;
import org.footwell.parts.Rising;
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
    TakeRules takes = new TakeRules(q.kind(), q.sweep(), run);
    List<String> ids = q.channels().stream().map(BalancedChannel::id).toList();
    takes.check(ids, q.microphones(), q.recordings());
    q.target().require("/target", run);
    if (q.calibration() != null) {
      List<Double> points = q.calibration().stream().map(LevelAt::frequencyHz).toList();
      Rising.require("/calibration", "/frequency_hz", points, run);
    }
    takes.pairs(q.pairs(), ids);
    double[] frequencies = rules.frequencies(takes.rateHz());
    if (frequencies.length > 0) {
      rules.bands(frequencies);
    }
    run.requireNoFaults();
    return frequencies;
  }

  private double[] frequencies(Double rateHz) {
    if (q.fromHz() > q.toHz()) {
      run.refuse(FrequencyFault.RANGE_REVERSED)
          .at("/to_hz")
          .given(q.toHz())
          .allowed("more than " + q.fromHz());
      return new double[0];
    }
    double highest = rateHz == null ? q.toHz() : TakeRules.USABLE * rateHz / 2;
    double[] inRange =
        ThirdOctaves.between(q.fromHz(), q.toHz()).filter(f -> f <= highest).toArray();
    if (inRange.length == 0) {
      run.refuse(FrequencyFault.RANGE_WITHOUT_POINTS)
          .at("/from_hz")
          .given(q.fromHz() + " to " + q.toHz() + " Hz")
          .allowed("a wider range, below " + highest + " Hz");
    }
    return inRange;
  }

  private void bands(double[] frequencies) {
    for (int i = 0; i < q.channels().size(); i++) {
      BalancedChannel channel = q.channels().get(i);
      String at = "/channels/" + i;
      if (channel.fromHz() == null && channel.toHz() == null) {
        continue;
      }
      if (channel.fromHz() == null || channel.toHz() == null) {
        run.refuse(REQUIRED)
            .at(at + (channel.fromHz() == null ? "/from_hz" : "/to_hz"))
            .allowed("given when the other end of the band is");
        continue;
      }
      if (BandLevels.within(channel, frequencies) == null) {
        run.refuse(BalanceFault.CHANNEL_BAND_EMPTY)
            .at(at)
            .given(channel.fromHz() + " to " + channel.toHz() + " Hz")
            .allowed(
                "rising and hold a mid-band frequency from "
                    + frequencies[0]
                    + " to "
                    + frequencies[frequencies.length - 1]
                    + " Hz");
      }
    }
  }
}
