package org.footwell.arrival;

import java.util.Arrays;
import org.footwell.arrival.ArrivalTimesRequest.Channel;
import org.footwell.arrival.ArrivalTimesRequest.Kind;
import org.footwell.arrival.ArrivalTimesRequest.Sweep;
import org.footwell.arrival.ArrivalTimesRequest.Take;
import org.footwell.recording.Recording;
import org.footwell.signal.ExponentialSweep;
import org.footwell.signal.PassBand;
import org.footwell.signal.SweepDeconvolution;

/** Impulse responses of a request: as given, or made of its sweeps. */
final class Responses {

  /** No sound takes longer to the listener, chain and reflections included, s. */
  private static final double LONGEST_S = 2;

  private final double rateHz;
  private final double leadInS;
  private final SweepDeconvolution deconvolution;
  private final ArrivalFinder finder;
  private final PassBand range;

  Responses(ArrivalTimesRequest q) {
    rateHz = q.recordings().get(0).recording().rateHz();
    finder = new ArrivalFinder(rateHz);
    if (q.kind() == Kind.SWEEP) {
      Sweep sweep = q.sweep();
      leadInS = sweep.leadInS();
      deconvolution =
          new SweepDeconvolution(
              new ExponentialSweep(sweep.fromHz(), sweep.toHz(), sweep.durationS()),
              rateHz,
              longest(q));
      range = deconvolution.range();
    } else {
      leadInS = 0;
      deconvolution = null;
      range = null;
    }
  }

  private static int longest(ArrivalTimesRequest q) {
    int longest = 0;
    for (Take take : q.recordings()) {
      longest = Math.max(longest, take.recording().samples().size());
      if (take.loopback() != null) {
        longest = Math.max(longest, take.loopback().samples().size());
      }
    }
    return longest;
  }

  double rateHz() {
    return rateHz;
  }

  /** What arrives of a channel; null if nothing stands out. */
  Arrival arrival(Recording recording, Channel channel) {
    PassBand band =
        channel.band() == null
            ? null
            : new PassBand(channel.band().lowHz(), channel.band().highHz());
    Equalised.Filters filters = new Equalised.Filters(channel.highPass(), channel.lowPass(), range);
    return finder.find(response(recording), band, filters);
  }

  /** What arrives of a loopback; null if nothing stands out. */
  Arrival loopback(Recording recording) {
    return finder.find(response(recording), null, new Equalised.Filters(null, null, range));
  }

  /** From the first sample of a response to the start of what was played, s. */
  double startS() {
    return leadInS;
  }

  private double[] response(Recording recording) {
    double[] samples = recording.samples().toDoubles();
    if (deconvolution == null) {
      return samples;
    }
    double[] response = deconvolution.response(samples);
    int most = (int) ((leadInS + LONGEST_S) * rateHz);
    return response.length <= most ? response : Arrays.copyOf(response, most);
  }
}
