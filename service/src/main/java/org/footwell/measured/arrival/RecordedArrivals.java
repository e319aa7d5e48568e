package org.footwell.measured.arrival;

import static org.footwell.calculation.CoreFault.REQUIRED;
import static org.footwell.measured.arrival.ArrivalFault.BAND_ABOVE_HALF_RATE;
import static org.footwell.measured.arrival.ArrivalFault.LOOPBACK_NOT_EXPECTED;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.measured.arrival.ArrivalTimesRequest.Band;
import org.footwell.measured.arrival.ArrivalTimesRequest.Take;
import org.footwell.measured.arrival.ArrivalTimesRequest.TimeReference;
import org.footwell.measured.response.TakeRules;

/** What was recorded can be used, loopbacks too, and has the bands in it. */
@Check.Of(
    value = {"kind", "sweep", "time_reference", "recordings.*", "channels.*.band"},
    says =
        "Recordings and loopbacks have one sample rate, are neither silent nor clipped, and hold the"
            + " whole sweep; loopback stands in each where time_reference says so, else in none; sweep"
            + " and bands end below what the rate allows.")
final class RecordedArrivals implements Check<ArrivalTimesRequest> {

  @Override
  public void check(ArrivalTimesRequest q, Refusing to) {
    TakeRules rules = new TakeRules(q, to);
    for (int i = 0; i < q.recordings().size(); i++) {
      Take take = q.recordings().get(i);
      String at = "/recordings/" + i;
      rules.recording(take.recording(), at + "/recording");
      if (q.timeReference() != TimeReference.LOOPBACK) {
        if (take.loopback() != null) {
          to.refuse(LOOPBACK_NOT_EXPECTED).at(at + "/loopback");
        }
      } else if (take.loopback() == null) {
        to.refuse(REQUIRED)
            .at(at + "/loopback")
            .allowed(Allowed.givenWhere("time_reference", TimeReference.LOOPBACK));
      } else {
        rules.recording(take.loopback(), at + "/loopback");
      }
    }
    rules.halfRate();
    if (rules.rateHz() != null) {
      bandsWithin(q, rules.rateHz() / 2, to);
    }
  }

  private static void bandsWithin(ArrivalTimesRequest q, double halfRate, Refusing to) {
    for (int i = 0; i < q.channels().size(); i++) {
      Band band = q.channels().get(i).band();
      if (band != null && band.highHz() > TakeRules.USABLE * halfRate) {
        to.refuse(BAND_ABOVE_HALF_RATE)
            .at("/channels/" + i + "/band/high_hz")
            .given(band.highHz())
            .allowed(Allowed.atMost(TakeRules.USABLE * halfRate, "Hz"));
      }
    }
  }
}
