package org.footwell.measured.arrival;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Arithmetic;
import org.footwell.measured.arrival.ArrivalTimesRequest.RecordedChannel;
import org.footwell.measured.arrival.ArrivalTimesRequest.Take;
import org.footwell.measured.response.ImpulseResponses;
import org.footwell.measured.response.PlayedSweep;
import org.footwell.recording.Recording;
import org.footwell.signal.PassBand;

/** What arrives in the recordings of a request. */
final class Responses {

  private final ImpulseResponses responses;
  private final ArrivalFinder finder;

  Responses(ArrivalTimesRequest q, Arithmetic arithmetic) {
    double rateHz = q.recordings().get(0).recording().rateHz();
    responses = new ImpulseResponses(q.sweep(), rateHz, longest(q), arithmetic);
    finder = new ArrivalFinder(rateHz);
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
    return responses.rateHz();
  }

  /** What arrives of a channel; null if nothing stands out. */
  Arrival arrival(Recording recording, RecordedChannel channel) {
    PassBand band =
        channel.band() == null
            ? null
            : new PassBand(channel.band().lowHz(), channel.band().highHz());
    Equalised.Filters filters =
        new Equalised.Filters(channel.highPass(), channel.lowPass(), responses.range());
    return finder.find(responses.of(recording), band, filters);
  }

  /** What arrives of a loopback; null if nothing stands out. */
  Arrival loopback(Recording recording) {
    return finder.find(
        responses.of(recording), null, new Equalised.Filters(null, null, responses.range()));
  }

  /** How long the sweep was, by some recordings and loopbacks; null where they cannot tell. */
  SweepFocus focus(List<Take> takes, PlayedSweep sweep) {
    List<double[]> some = new ArrayList<>();
    for (Take take : takes) {
      if (take.loopback() != null && some.isEmpty()) {
        some.add(responses.of(take.loopback()));
      }
      some.add(responses.of(take.recording()));
    }
    return SweepFocus.of(some, sweep.logRatio(), responses.range(), rateHz());
  }

  /** Of a sweep, how much more sound there is before it can have made it than after, dB. */
  double beforeStartDb(Recording recording) {
    return responses.beforeStartDb(recording);
  }

  /** The impulse response of a recording. */
  double[] of(Recording recording) {
    return responses.of(recording);
  }

  /** The range that responses are limited to; null without a sweep. */
  PassBand range() {
    return responses.range();
  }

  /** From the first sample of a response to the start of what was played, s. */
  double startS() {
    return responses.startS();
  }
}
