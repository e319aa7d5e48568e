package org.footwell.measured.response;

import static org.footwell.calculation.CoreFault.DANGLING_REFERENCE;
import static org.footwell.calculation.CoreFault.DUPLICATE;
import static org.footwell.calculation.CoreFault.REQUIRED;
import static org.footwell.measured.response.MeasurementFault.SWEEP_ABOVE_HALF_RATE;
import static org.footwell.measured.response.MeasurementFault.SWEEP_CUT_OFF;
import static org.footwell.measured.response.MeasurementFault.SWEEP_NOT_EXPECTED;
import static org.footwell.measured.response.MeasurementFault.SWEEP_REVERSED;
import static org.footwell.measured.response.MeasurementFault.TAKE_MISSING;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.footwell.calculation.Names;
import org.footwell.calculation.Run;
import org.footwell.recording.Recording;
import org.footwell.recording.RecordingRules;

/**
 * The rules for a set of recordings, one for every channel and microphone position, and for the
 * sweep they were made with; every breach is refused. The fields are those that requests share:
 * {@code channels}, {@code microphones}, {@code recordings}, {@code sweep}.
 */
public final class TakeRules {

  /** Share of half the sample rate that recordings reach with an honest phase. */
  public static final double USABLE = 0.84;

  /** What must follow a sweep at least, so that the sound has time to arrive, s. */
  private static final double LEAST_TAIL_S = 0.02;

  private final RecordedKind kind;
  private final PlayedSweep sweep;
  private final Run run;
  private final RecordingRules recordings;
  private Double rateHz;

  public TakeRules(RecordedKind kind, PlayedSweep sweep, Run run) {
    this.kind = kind;
    this.sweep = sweep;
    this.run = run;
    this.recordings = new RecordingRules(run);
  }

  /** Sample rate of the recordings found good so far, Hz; null if there is none. */
  public Double rateHz() {
    return rateHz;
  }

  /** Everything about a request whose takes hold nothing but a recording. */
  public void check(
      List<String> channels, List<MicrophonePosition> microphones, List<? extends Taken> takes) {
    complete(channels, microphones, takes);
    sweep();
    for (int i = 0; i < takes.size(); i++) {
      recording(takes.get(i).recording(), "/recordings/" + i + "/recording");
    }
    halfRate();
  }

  /** Ids once each, and every channel recorded once at every position. */
  public void complete(
      List<String> channels, List<MicrophonePosition> microphones, List<? extends Taken> takes) {
    List<String> positions = microphones.stream().map(MicrophonePosition::id).toList();
    Set<String> channelIds = unique("/channels/", channels);
    Set<String> positionIds = unique("/microphones/", positions);
    Set<List<String>> seen = new HashSet<>();
    for (int i = 0; i < takes.size(); i++) {
      Taken take = takes.get(i);
      String at = "/recordings/" + i;
      known(take.channel(), channelIds, at + "/channel", "channels");
      known(take.microphone(), positionIds, at + "/microphone", "microphones");
      if (!seen.add(List.of(take.channel(), take.microphone()))) {
        run.refuse(DUPLICATE).at(at).given(take.channel() + " at " + take.microphone());
      }
    }
    for (String channel : channels) {
      for (String position : positions) {
        if (!seen.contains(List.of(channel, position))) {
          run.refuse(TAKE_MISSING).at("/recordings").given(channel + " at " + position);
        }
      }
    }
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

  /** Refuses an id that is not in a list of the request. */
  public void known(String id, Set<String> ids, String at, String list) {
    if (!ids.contains(id)) {
      run.refuse(DANGLING_REFERENCE)
          .at(at)
          .given(id)
          .allowed(list)
          .with("nearest", Names.didYouMean(id, ids));
    }
  }

  /** Pairs, the field {@code pairs}: of two different channels, each once. */
  public void pairs(List<LeftAndRight> pairs, List<String> channels) {
    Set<String> ids = new HashSet<>(channels);
    Set<Set<String>> seen = new HashSet<>();
    for (int i = 0; i < pairs.size(); i++) {
      LeftAndRight pair = pairs.get(i);
      String at = "/pairs/" + i;
      known(pair.left(), ids, at + "/left", "channels");
      known(pair.right(), ids, at + "/right", "channels");
      if (pair.left().equals(pair.right())) {
        run.refuse(PairFault.PAIR_OF_ONE).at(at).given(pair.left());
      } else if (!seen.add(Set.of(pair.left(), pair.right()))) {
        run.refuse(DUPLICATE).at(at).given(pair.left() + " and " + pair.right());
      }
    }
  }

  /** The sweep belongs to its kind and rises. */
  public void sweep() {
    if (kind == RecordedKind.IMPULSE_RESPONSE) {
      if (sweep != null) {
        run.refuse(SWEEP_NOT_EXPECTED).at("/sweep");
      }
    } else if (sweep == null) {
      run.refuse(REQUIRED).at("/sweep").allowed("given with kind sweep");
    } else if (sweep.fromHz() >= sweep.toHz()) {
      run.refuse(SWEEP_REVERSED)
          .at("/sweep/to_hz")
          .given(sweep.toHz())
          .allowed("more than " + sweep.fromHz() + " Hz");
    }
  }

  /** One recording by itself, against those before, and against the length of the sweep. */
  public void recording(Recording recording, String at) {
    if (!recordings.check(recording, at)) {
      return;
    }
    rateHz = rateHz == null ? recording.rateHz() : rateHz;
    if (kind == RecordedKind.SWEEP && sweep != null) {
      double needed = sweep.leadInS() + sweep.durationS() + LEAST_TAIL_S;
      double given = recording.samples().size() / recording.rateHz();
      if (given < needed) {
        run.refuse(SWEEP_CUT_OFF).at(at).given(given + " s").allowed("at least " + needed + " s");
      }
    }
  }

  /** The sweep ends at half the sample rate at the latest. */
  public void halfRate() {
    if (rateHz != null && sweep != null && sweep.toHz() > rateHz / 2) {
      run.refuse(SWEEP_ABOVE_HALF_RATE)
          .at("/sweep/to_hz")
          .given(sweep.toHz() + " Hz")
          .allowed(rateHz / 2 + " Hz");
    }
  }
}
