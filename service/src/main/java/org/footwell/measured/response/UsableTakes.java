package org.footwell.measured.response;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;

/** What was recorded can be used, one with the other, and holds the whole sweep. */
@Check.Of(
    value = {"kind", "sweep", "recordings.*.recording"},
    says =
        "Recordings have one sample rate, are neither silent nor clipped, and hold the whole sweep,"
            + " which ends below half of their rate.")
final class UsableTakes implements Check<Measurement> {

  @Override
  public void check(Measurement set, Refusing to) {
    TakeRules takes = new TakeRules(set, to);
    for (int i = 0; i < set.recordings().size(); i++) {
      takes.recording(set.recordings().get(i).recording(), "/recordings/" + i + "/recording");
    }
    takes.halfRate();
  }
}
