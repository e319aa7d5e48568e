package org.footwell.measured.arrival;

import java.util.Comparator;
import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.measured.arrival.ArrivalTimesRequest.RecordedChannel;
import org.footwell.measured.arrival.ArrivalTimesRequest.Take;
import org.footwell.measured.arrival.ArrivalTimesRequest.TimeReference;
import org.footwell.measured.arrival.ListeningPosition.Heard;
import org.footwell.physics.Air;

/** Whether recordings can be of the sweep that is stated; if not, polarity is not told from them. */
final class SweepPlausibility {

  /** One and a half times the longest cabin of a van, m; common practice, no source. */
  private static final double FURTHEST_M = 9;

  /** So much more sound before the start than after is no distortion, dB; measured. */
  static final double TOO_MUCH_BEFORE_DB = 3;

  /** Difference of clocks that limits are stated for. */
  private static final double CLOCKS_APART = 100e-6;

  private final ArrivalTimesRequest q;
  private final List<Heard> all;
  private final Run run;
  private SweepFocus focus;
  private boolean wrong;

  SweepPlausibility(ArrivalTimesRequest q, List<Heard> all, Responses responses, Run run) {
    this.q = q;
    this.all = all;
    this.run = run;
    if (q.sweep() != null) {
      List<Take> first = q.channels().stream().map(this::first).toList();
      focus = responses.focus(first, q.sweep());
      length();
      start(first, responses);
      spread();
    }
  }

  /** Whether the sweep can be the one stated. */
  boolean asStated() {
    return !wrong;
  }

  /** What was heard, without polarity where the sweep was not the one stated. */
  List<Heard> heard() {
    return wrong ? all.stream().map(Heard::withoutPolarity).toList() : all;
  }

  /** How much longer than stated the sweep was, ms; null where that cannot be told. */
  Double longerMs() {
    return focus == null ? null : (Double) (1000 * focus.longerS());
  }

  /** How far that may be off, ms. */
  Double uncertaintyMs() {
    return focus == null ? null : (Double) (1000 * focus.uncertaintyS());
  }

  private Take first(RecordedChannel channel) {
    return q.recordings().stream()
        .filter(take -> take.channel().equals(channel.id()))
        .findFirst()
        .orElseThrow();
  }

  /** A wrong length counts where it moves frequencies further apart than arrivals may be off. */
  private void length() {
    double duration = q.sweep().durationS();
    if (focus == null) {
      if (q.channels().size() > 1 && q.timeReference() != TimeReference.NONE) {
        run.find(ArrivalFinding.SWEEP_LENGTH_NOT_TOLD)
            .at("/sweep/duration_s")
            .value(1000 * apartS(CLOCKS_APART * duration))
            .limit(duration);
      }
      return;
    }
    double apartMs = 1000 * apartS(focus.longerS());
    double surestMs = all.stream().mapToDouble(Heard::uncertaintyMs).min().orElseThrow();
    if (focus.otherLength() && apartMs > surestMs) {
      wrong = true;
      run.find(ArrivalFinding.SWEEP_LENGTH_WRONG)
          .at("/sweep/duration_s")
          .value(duration + focus.longerS())
          .limit(duration)
          .with("uncertainty", 1000 * focus.uncertaintyS())
          .with("ppm", 1e6 * Math.abs(focus.longerS()) / duration)
          .with("apart", apartMs);
    }
  }

  /** How far apart a wrong length moves the frequencies by which arrivals were judged, s. */
  private double apartS(double longerS) {
    double low = all.stream().mapToDouble(one -> one.arrival().band().lowHz()).min().orElseThrow();
    double high =
        all.stream().mapToDouble(one -> one.arrival().band().highHz()).max().orElseThrow();
    return SweepFocus.apartS(longerS, low, high, q.sweep().logRatio());
  }

  private void start(List<Take> first, Responses responses) {
    record Before(String channel, double db) {}

    Before most =
        first.stream()
            .map(take -> new Before(take.channel(), responses.beforeStartDb(take.recording())))
            .max(Comparator.comparingDouble(Before::db))
            .orElseThrow();
    if (most.db() > TOO_MUCH_BEFORE_DB) {
      wrong = true;
      run.find(ArrivalFinding.SOUND_BEFORE_SWEEP)
          .at("/sweep")
          .value(most.db())
          .limit(TOO_MUCH_BEFORE_DB)
          .own("name", most.channel());
    }
  }

  /** Of what is left when the delays that channels are stated to have are taken off. */
  private void spread() {
    if (q.timeReference() == TimeReference.NONE) {
      return;
    }
    double earliest = Double.POSITIVE_INFINITY;
    double latest = Double.NEGATIVE_INFINITY;
    for (RecordedChannel channel : q.channels()) {
      for (Heard one : all) {
        if (one.channel().equals(channel.id())) {
          double flight = one.arrivalMs() - channel.chainDelayMs();
          earliest = Math.min(earliest, flight);
          latest = Math.max(latest, flight);
        }
      }
    }
    double most = 1000 * FURTHEST_M / Air.SPEED_OF_SOUND.at(q.temperatureC());
    if (latest - earliest > most) {
      wrong = true;
      run.find(ArrivalFinding.ARRIVALS_IMPLAUSIBLE)
          .at("/sweep")
          .value(latest - earliest)
          .limit(most);
    }
  }
}
