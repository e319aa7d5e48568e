package org.footwell.measured.response;

import static org.footwell.measured.response.MeasurementFault.SWEEP_ABOVE_HALF_RATE;
import static org.footwell.measured.response.MeasurementFault.SWEEP_CUT_OFF;

import java.util.Objects;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.recording.Recording;
import org.footwell.recording.RecordingRules;

/** The rules for recordings and the sweep they were made with; every breach is refused. */
public final class TakeRules {

  /** Share of half the sample rate that recordings reach with an honest phase. */
  public static final double USABLE = 0.84;

  /** What must follow a sweep at least, so that the sound has time to arrive, s. */
  private static final double LEAST_TAIL_S = 0.02;

  private final RecordedKind kind;
  private final PlayedSweep sweep;
  private final Refusing to;
  private final RecordingRules recordings;
  private Double rateHz;

  public TakeRules(RecordedSet set, Refusing to) {
    this.kind = set.kind();
    this.sweep = set.sweep();
    this.to = to;
    this.recordings = new RecordingRules(to);
  }

  /** Sample rate of recordings that are all of one, Hz; null where none is read yet. */
  public static Double rateHz(RecordedSet set) {
    return set.recordings().stream()
        .map(take -> take.recording().rateHz())
        .filter(Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  /** Sample rate of the recordings found good so far, Hz; null if there is none. */
  public Double rateHz() {
    return rateHz;
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
        to.refuse(SWEEP_CUT_OFF).at(at).given(given + " s").allowed(Allowed.atLeast(needed, "s"));
      }
    }
  }

  /** The sweep ends at half the sample rate at the latest. */
  public void halfRate() {
    if (rateHz != null && sweep != null && sweep.toHz() > rateHz / 2) {
      to.refuse(SWEEP_ABOVE_HALF_RATE)
          .at("/sweep/to_hz")
          .given(sweep.toHz() + " Hz")
          .allowed(Allowed.only(rateHz / 2 + " Hz"));
    }
  }
}
