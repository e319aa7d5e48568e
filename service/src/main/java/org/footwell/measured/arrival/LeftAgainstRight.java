package org.footwell.measured.arrival;

import static org.footwell.measured.arrival.ArrivalFinding.PAIR_AGAINST_EACH_OTHER;
import static org.footwell.measured.arrival.ArrivalFinding.PAIR_UNSURE;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.measured.arrival.ArrivalTimesRequest.RecordedChannel;
import org.footwell.measured.arrival.ListeningPosition.Heard;
import org.footwell.measured.response.LeftAndRight;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.signal.GatedSpectrum;

/** Whether left and right play with each other, for each pair; remarks on those that do not. */
final class LeftAgainstRight {

  /** From this likeness on the sign is told; measured, see the method page. */
  private static final double SURE = 0.8;

  /** What is looked at around the strongest sample: three periods of 20 Hz before, a decay after, s. */
  private static final double BEFORE_S = 0.15;

  private static final double AFTER_S = 0.3;

  private final ArrivalTimesRequest q;
  private final Responses responses;
  private final List<Heard> heard;
  private final Run run;
  private final double highHz;

  private LeftAgainstRight(
      ArrivalTimesRequest q, Responses responses, List<Heard> heard, double speed, Run run) {
    this.q = q;
    this.responses = responses;
    this.heard = heard;
    this.run = run;
    this.highHz = Likeness.highestHz(speed, q.cabinLengthM(), run);
  }

  /** One result a pair; recordings and what was heard in them are in the same order. */
  static List<ArrivalTimesResult.Pair> of(
      ArrivalTimesRequest q, Responses responses, List<Heard> heard, double speed, Run run) {
    LeftAgainstRight all = new LeftAgainstRight(q, responses, heard, speed, run);
    List<ArrivalTimesResult.Pair> results = new ArrayList<>();
    for (int i = 0; i < q.pairs().size(); i++) {
      results.add(all.pair(i));
    }
    return results;
  }

  private ArrivalTimesResult.Pair pair(int index) {
    run.checkDeadline();
    LeftAndRight pair = q.pairs().get(index);
    Likeness likeness = new Likeness(responses.range(), responses.rateHz(), highHz);
    for (MicrophonePosition microphone : q.microphones()) {
      likeness.add(
          low(pair.left(), microphone), low(pair.right(), microphone), microphone.weight());
    }
    double value = likeness.value(run);
    double size = Math.abs(value) * likeness.clear();
    int polarity = value < 0 ? -1 : 1;
    if (size < SURE || polarity < 0) {
      run.find(size < SURE ? PAIR_UNSURE : PAIR_AGAINST_EACH_OTHER)
          .at("/pairs/" + index)
          .value(size)
          .limit(SURE)
          .own("left", pair.left())
          .own("right", pair.right())
          .with("to", highHz);
    }
    return new ArrivalTimesResult.Pair(
        pair.left(), pair.right(), polarity, size, likeness.lowHz(), highHz);
  }

  private Likeness.Low low(String id, MicrophonePosition microphone) {
    Heard one = ListeningPosition.heard(id, microphone.id(), heard);
    RecordedChannel channel =
        q.channels().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
    double[] response = responses.of(one.recording());
    double rate = responses.rateHz();
    GatedSpectrum gated =
        GatedSpectrum.of(response, rate, GatedSpectrum.strongest(response), BEFORE_S, AFTER_S);
    double start = one.arrival().timeS() - one.arrivalMs() / 1000;
    double since = gated.startSample() / rate - start - channel.chainDelayMs() / 1000;
    return new Likeness.Low(gated, since);
  }
}
