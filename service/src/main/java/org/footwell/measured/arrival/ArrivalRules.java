package org.footwell.measured.arrival;

import static org.footwell.calculation.CoreFault.REQUIRED;
import static org.footwell.measured.arrival.ArrivalFault.BAND_ABOVE_HALF_RATE;
import static org.footwell.measured.arrival.ArrivalFault.BAND_TOO_NARROW;
import static org.footwell.measured.arrival.ArrivalFault.LOOPBACK_NOT_EXPECTED;

import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.measured.arrival.ArrivalTimesRequest.Band;
import org.footwell.measured.arrival.ArrivalTimesRequest.RecordedChannel;
import org.footwell.measured.arrival.ArrivalTimesRequest.Take;
import org.footwell.measured.arrival.ArrivalTimesRequest.TimeReference;
import org.footwell.measured.response.TakeRules;

/** The rules between the fields of a request; every breach is refused, all at once. */
final class ArrivalRules {

  /** A band narrower than this leaves nothing to judge an arrival by. */
  private static final double NARROWEST = 1.25;

  private final ArrivalTimesRequest q;
  private final Run run;

  private ArrivalRules(ArrivalTimesRequest q, Run run) {
    this.q = q;
    this.run = run;
  }

  /** Ends the run if anything is amiss. */
  static void require(ArrivalTimesRequest q, Run run) {
    ArrivalRules rules = new ArrivalRules(q, run);
    TakeRules takes = new TakeRules(q, run);
    takes.complete();
    takes.sweep();
    takes.pairs(q.pairs());
    rules.recordings(takes);
    rules.channels();
    run.requireNoFaults();
  }

  private void recordings(TakeRules rules) {
    for (int i = 0; i < q.recordings().size(); i++) {
      Take take = q.recordings().get(i);
      String at = "/recordings/" + i;
      rules.recording(take.recording(), at + "/recording");
      if (q.timeReference() != TimeReference.LOOPBACK) {
        if (take.loopback() != null) {
          run.refuse(LOOPBACK_NOT_EXPECTED).at(at + "/loopback");
        }
      } else if (take.loopback() == null) {
        run.refuse(REQUIRED)
            .at(at + "/loopback")
            .allowed(Allowed.givenWhere("time_reference", TimeReference.LOOPBACK));
      } else {
        rules.recording(take.loopback(), at + "/loopback");
      }
    }
    rules.halfRate();
    if (rules.rateHz() != null) {
      bandsWithin(rules.rateHz() / 2);
    }
  }

  private void bandsWithin(double halfRate) {
    for (int i = 0; i < q.channels().size(); i++) {
      Band band = q.channels().get(i).band();
      if (band != null && band.highHz() > TakeRules.USABLE * halfRate) {
        run.refuse(BAND_ABOVE_HALF_RATE)
            .at("/channels/" + i + "/band/high_hz")
            .given(band.highHz())
            .allowed(Allowed.atMost(TakeRules.USABLE * halfRate, "Hz"));
      }
    }
  }

  private void channels() {
    for (int i = 0; i < q.channels().size(); i++) {
      RecordedChannel channel = q.channels().get(i);
      String at = "/channels/" + i;
      Band band = channel.band();
      if (band != null && band.highHz() < NARROWEST * band.lowHz()) {
        run.refuse(BAND_TOO_NARROW)
            .at(at + "/band/high_hz")
            .given(band.highHz())
            .allowed(Allowed.atLeast(NARROWEST * band.lowHz(), "Hz"));
      }
    }
  }
}
