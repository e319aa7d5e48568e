package org.footwell.arrival;

import java.util.List;
import org.footwell.arrival.ArrivalTimesRequest.Channel;
import org.footwell.arrival.ArrivalTimesRequest.TimeReference;
import org.footwell.arrival.ListeningPosition.Heard;
import org.footwell.calculation.Run;
import org.footwell.physics.Air;

/** Whether recordings can be of the sweep that is stated; if not, polarity is not told from them. */
final class SweepPlausibility {

  /** One and a half times the longest cabin of a van, m; common practice, no source. */
  private static final double FURTHEST_M = 9;

  private SweepPlausibility() {}

  /** Whether the sweep can be the one stated. */
  static boolean asStated(ArrivalTimesRequest q, List<Heard> heard, Responses responses, Run run) {
    SweepFocus focus = responses.focus(q);
    boolean wrong = focus != null && focus.otherLength();
    if (wrong) {
      run.find(ArrivalFinding.SWEEP_LENGTH_WRONG)
          .at("/sweep/duration_s")
          .value(q.sweep().durationS() + focus.longerS())
          .limit(q.sweep().durationS());
    }
    if (q.sweep() != null && q.timeReference() != TimeReference.NONE) {
      double most = 1000 * FURTHEST_M / Air.SPEED_OF_SOUND.at(q.temperatureC());
      double spread = spreadMs(q, heard);
      if (spread > most) {
        wrong = true;
        run.find(ArrivalFinding.ARRIVALS_IMPLAUSIBLE).at("/sweep").value(spread).limit(most);
      }
    }
    return !wrong;
  }

  /** Of what is left when the delays that channels are stated to have are taken off. */
  private static double spreadMs(ArrivalTimesRequest q, List<Heard> heard) {
    double earliest = Double.POSITIVE_INFINITY;
    double latest = Double.NEGATIVE_INFINITY;
    for (Channel channel : q.channels()) {
      for (Heard one : heard) {
        if (one.take().channel().equals(channel.id())) {
          double flight = one.arrivalMs() - channel.chainDelayMs();
          earliest = Math.min(earliest, flight);
          latest = Math.max(latest, flight);
        }
      }
    }
    return latest - earliest;
  }
}
