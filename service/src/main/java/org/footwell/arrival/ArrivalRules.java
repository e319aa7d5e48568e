package org.footwell.arrival;

import static org.footwell.arrival.ArrivalFault.BAND_ABOVE_HALF_RATE;
import static org.footwell.arrival.ArrivalFault.BAND_TOO_NARROW;
import static org.footwell.arrival.ArrivalFault.FILTER_ORDER_ODD;
import static org.footwell.arrival.ArrivalFault.LOOPBACK_NOT_EXPECTED;
import static org.footwell.arrival.ArrivalFault.SWEEP_ABOVE_HALF_RATE;
import static org.footwell.arrival.ArrivalFault.SWEEP_CUT_OFF;
import static org.footwell.arrival.ArrivalFault.SWEEP_NOT_EXPECTED;
import static org.footwell.arrival.ArrivalFault.SWEEP_REVERSED;
import static org.footwell.arrival.ArrivalFault.TAKE_MISSING;
import static org.footwell.calculation.CoreFault.DANGLING_REFERENCE;
import static org.footwell.calculation.CoreFault.DUPLICATE;
import static org.footwell.calculation.CoreFault.REQUIRED;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.arrival.ArrivalTimesRequest.Band;
import org.footwell.arrival.ArrivalTimesRequest.Channel;
import org.footwell.arrival.ArrivalTimesRequest.Kind;
import org.footwell.arrival.ArrivalTimesRequest.Microphone;
import org.footwell.arrival.ArrivalTimesRequest.Take;
import org.footwell.arrival.ArrivalTimesRequest.TimeReference;
import org.footwell.calculation.Names;
import org.footwell.calculation.Run;
import org.footwell.parts.Filter;
import org.footwell.recording.Recording;
import org.footwell.recording.RecordingRules;

/** The rules between the fields of a request; every breach is refused, all at once. */
final class ArrivalRules {

  /** A band narrower than this leaves nothing to judge an arrival by. */
  private static final double NARROWEST = 1.25;

  /** Share of half the sample rate that recordings reach with an honest phase. */
  static final double USABLE = 0.84;

  /** What must follow a sweep at least, so that the sound has time to arrive, s. */
  private static final double LEAST_TAIL_S = 0.02;

  private final ArrivalTimesRequest q;
  private final Run run;

  private ArrivalRules(ArrivalTimesRequest q, Run run) {
    this.q = q;
    this.run = run;
  }

  /** Ends the run if anything is amiss. */
  static void require(ArrivalTimesRequest q, Run run) {
    ArrivalRules rules = new ArrivalRules(q, run);
    Set<String> channels =
        rules.unique("/channels/", q.channels().stream().map(Channel::id).toList());
    Set<String> microphones =
        rules.unique("/microphones/", q.microphones().stream().map(Microphone::id).toList());
    rules.takes(channels, microphones);
    rules.sweep();
    rules.recordings();
    rules.channels();
    rules.processor();
    run.requireNoFaults();
  }

  private Set<String> unique(String list, List<String> ids) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < ids.size(); i++) {
      if (!seen.add(ids.get(i))) {
        run.refuse(DUPLICATE).at(list + i + "/id").given(ids.get(i));
      }
    }
    return seen;
  }

  private void takes(Set<String> channels, Set<String> microphones) {
    Set<List<String>> seen = new HashSet<>();
    for (int i = 0; i < q.recordings().size(); i++) {
      Take take = q.recordings().get(i);
      String at = "/recordings/" + i;
      known(take.channel(), channels, at + "/channel", "channels");
      known(take.microphone(), microphones, at + "/microphone", "microphones");
      if (!seen.add(List.of(take.channel(), take.microphone()))) {
        run.refuse(DUPLICATE).at(at).given(take.channel() + " at " + take.microphone());
      }
    }
    for (Channel channel : q.channels()) {
      for (Microphone microphone : q.microphones()) {
        if (!seen.contains(List.of(channel.id(), microphone.id()))) {
          run.refuse(TAKE_MISSING).at("/recordings").given(channel.id() + " at " + microphone.id());
        }
      }
    }
  }

  private void known(String id, Set<String> ids, String at, String list) {
    if (!ids.contains(id)) {
      run.refuse(DANGLING_REFERENCE)
          .at(at)
          .given(id)
          .allowed(list)
          .with("nearest", Names.didYouMean(id, ids));
    }
  }

  private void sweep() {
    if (q.kind() == Kind.IMPULSE_RESPONSE) {
      if (q.sweep() != null) {
        run.refuse(SWEEP_NOT_EXPECTED).at("/sweep");
      }
    } else if (q.sweep() == null) {
      run.refuse(REQUIRED).at("/sweep").allowed("given with kind sweep");
    } else if (q.sweep().fromHz() >= q.sweep().toHz()) {
      run.refuse(SWEEP_REVERSED)
          .at("/sweep/to_hz")
          .given(q.sweep().toHz())
          .allowed("more than " + q.sweep().fromHz() + " Hz");
    }
  }

  private void recordings() {
    RecordingRules rules = new RecordingRules(run);
    List<Recording> sound = new ArrayList<>();
    for (int i = 0; i < q.recordings().size(); i++) {
      Take take = q.recordings().get(i);
      String at = "/recordings/" + i;
      check(rules, take.recording(), at + "/recording", sound);
      if (q.timeReference() != TimeReference.LOOPBACK) {
        if (take.loopback() != null) {
          run.refuse(LOOPBACK_NOT_EXPECTED).at(at + "/loopback");
        }
      } else if (take.loopback() == null) {
        run.refuse(REQUIRED).at(at + "/loopback").allowed("given with time_reference loopback");
      } else {
        check(rules, take.loopback(), at + "/loopback", sound);
      }
    }
    if (!sound.isEmpty()) {
      halfRate(sound.get(0).rateHz() / 2);
    }
  }

  private void check(RecordingRules rules, Recording recording, String at, List<Recording> sound) {
    if (!rules.check(recording, at)) {
      return;
    }
    sound.add(recording);
    if (q.kind() == Kind.SWEEP && q.sweep() != null) {
      double needed = q.sweep().leadInS() + q.sweep().durationS() + LEAST_TAIL_S;
      double given = recording.samples().size() / recording.rateHz();
      if (given < needed) {
        run.refuse(SWEEP_CUT_OFF).at(at).given(given + " s").allowed("at least " + needed + " s");
      }
    }
  }

  private void halfRate(double halfRate) {
    if (q.sweep() != null && q.sweep().toHz() > halfRate) {
      run.refuse(SWEEP_ABOVE_HALF_RATE)
          .at("/sweep/to_hz")
          .given(q.sweep().toHz() + " Hz")
          .allowed(halfRate + " Hz");
    }
    for (int i = 0; i < q.channels().size(); i++) {
      Band band = q.channels().get(i).band();
      if (band != null && band.highHz() > USABLE * halfRate) {
        run.refuse(BAND_ABOVE_HALF_RATE)
            .at("/channels/" + i + "/band/high_hz")
            .given(band.highHz())
            .allowed("at most " + USABLE * halfRate + " Hz");
      }
    }
  }

  private void channels() {
    for (int i = 0; i < q.channels().size(); i++) {
      Channel channel = q.channels().get(i);
      String at = "/channels/" + i;
      Band band = channel.band();
      if (band != null && band.highHz() < NARROWEST * band.lowHz()) {
        run.refuse(BAND_TOO_NARROW)
            .at(at + "/band/high_hz")
            .given(band.highHz())
            .allowed("at least " + NARROWEST * band.lowHz() + " Hz");
      }
      possible(channel.highPass(), at + "/high_pass");
      possible(channel.lowPass(), at + "/low_pass");
    }
  }

  private void possible(Filter filter, String at) {
    if (filter != null && !filter.possible()) {
      run.refuse(FILTER_ORDER_ODD).at(at + "/order").given(filter.order()).allowed("2, 4, 6 or 8");
    }
  }

  private void processor() {
    if (q.processor() != null) {
      Map<String, Double> either = new HashMap<>();
      either.put("rate_hz", q.processor().rateHz());
      either.put("step_ms", q.processor().stepMs());
      run.exactlyOneOf("/processor", either);
    }
  }
}
