package org.footwell.measured.response;

import static org.footwell.calculation.CoreFault.DUPLICATE;
import static org.footwell.calculation.CoreFault.REQUIRED;
import static org.footwell.measured.response.MeasurementFault.SWEEP_ABOVE_HALF_RATE;
import static org.footwell.measured.response.MeasurementFault.SWEEP_CUT_OFF;
import static org.footwell.measured.response.MeasurementFault.SWEEP_NOT_EXPECTED;
import static org.footwell.measured.response.MeasurementFault.TAKE_MISSING;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Given;
import org.footwell.recording.Recording;
import org.footwell.recording.RecordingRules;

/**
 * The rules for a set of recordings and the sweep they were made with that depend on what they hold;
 * what depends on names alone is declared on {@link RecordedSet}. Every breach is refused.
 */
public final class TakeRules {

  /** Share of half the sample rate that recordings reach with an honest phase. */
  public static final double USABLE = 0.84;

  /** What must follow a sweep at least, so that the sound has time to arrive, s. */
  private static final double LEAST_TAIL_S = 0.02;

  private final RecordedSet set;
  private final RecordedKind kind;
  private final PlayedSweep sweep;
  private final Run run;
  private final RecordingRules recordings;
  private Double rateHz;

  public TakeRules(RecordedSet set, Run run) {
    this.set = set;
    this.kind = set.kind();
    this.sweep = set.sweep();
    this.run = run;
    this.recordings = new RecordingRules(run);
  }

  /** Sample rate of the recordings found good so far, Hz; null if there is none. */
  public Double rateHz() {
    return rateHz;
  }

  /** Everything about a request whose takes hold nothing but a recording. */
  public void check() {
    complete();
    sweep();
    for (int i = 0; i < set.recordings().size(); i++) {
      recording(set.recordings().get(i).recording(), "/recordings/" + i + "/recording");
    }
    halfRate();
  }

  /** Every channel is recorded at every position. */
  public void complete() {
    Set<List<String>> there =
        set.recordings().stream()
            .map(take -> List.of(take.channel(), take.microphone()))
            .collect(Collectors.toSet());
    for (RecordedSet.Identified channel : set.channels()) {
      for (MicrophonePosition position : set.microphones()) {
        if (!there.contains(List.of(channel.id(), position.id()))) {
          run.refuse(TAKE_MISSING).at("/recordings").given(Given.at(channel.id(), position.id()));
        }
      }
    }
  }

  /** Pairs are of two different channels, each once, whichever comes first. */
  public void pairs(List<LeftAndRight> pairs) {
    Set<Set<String>> seen = new HashSet<>();
    for (int i = 0; i < pairs.size(); i++) {
      LeftAndRight pair = pairs.get(i);
      String at = "/pairs/" + i;
      if (pair.left().equals(pair.right())) {
        run.refuse(PairFault.PAIR_OF_ONE).at(at).given(pair.left());
      } else if (!seen.add(Set.of(pair.left(), pair.right()))) {
        run.refuse(DUPLICATE).at(at).given(Given.both(pair.left(), pair.right()));
      }
    }
  }

  /** The sweep belongs to its kind. */
  public void sweep() {
    if (kind == RecordedKind.IMPULSE_RESPONSE) {
      if (sweep != null) {
        run.refuse(SWEEP_NOT_EXPECTED).at("/sweep");
      }
    } else if (sweep == null) {
      run.refuse(REQUIRED).at("/sweep").allowed(Allowed.givenWhere("kind", RecordedKind.SWEEP));
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
        run.refuse(SWEEP_CUT_OFF).at(at).given(given + " s").allowed(Allowed.atLeast(needed, "s"));
      }
    }
  }

  /** The sweep ends at half the sample rate at the latest. */
  public void halfRate() {
    if (rateHz != null && sweep != null && sweep.toHz() > rateHz / 2) {
      run.refuse(SWEEP_ABOVE_HALF_RATE)
          .at("/sweep/to_hz")
          .given(sweep.toHz() + " Hz")
          .allowed(Allowed.only(rateHz / 2 + " Hz"));
    }
  }
}
