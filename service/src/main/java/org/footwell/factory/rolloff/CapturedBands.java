package org.footwell.factory.rolloff;

import static org.footwell.factory.rolloff.RolloffFault.BANDS_ABOVE_HALF_RATE;
import static org.footwell.factory.rolloff.RolloffFault.CAPTURE_SHORTER_THAN_BAND;

import java.util.List;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.recording.Recording;
import org.footwell.recording.RecordingRules;

/** Captures can be used, and hold the bands. */
@Check.Of(
    value = {"captures.*.recording", "lowest_hz", "reference_to_hz"},
    says =
        "Captures have one sample rate, are neither silent nor clipped, and last at least as long as"
            + " the band at lowest_hz needs; that at reference_to_hz ends below half of their rate.")
final class CapturedBands implements Check<BassRolloffRequest> {

  /** With less, a band's level is mostly chance. */
  private static final double LEAST_WIDTH_BY_TIME = 2;

  @Override
  public void check(BassRolloffRequest q, Refusing to) {
    if (q.captures() == null) {
      return;
    }
    List<Double> bands = BandTableReader.capturedBandsHz(q);
    RecordingRules rules = new RecordingRules(to);
    for (int i = 0; i < q.captures().size(); i++) {
      Recording recording = q.captures().get(i).recording();
      String at = "/captures/" + i + "/recording";
      if (rules.check(recording, at) && !bands.isEmpty()) {
        holds(bands, recording, at, to);
      }
    }
  }

  private static void holds(List<Double> bands, Recording recording, String at, Refusing to) {
    double rate = recording.rateHz();
    double upper = BandTable.upperEdgeHz(bands.get(bands.size() - 1));
    if (upper >= rate / 2) {
      to.refuse(BANDS_ABOVE_HALF_RATE)
          .at(at)
          .given(rate + " Hz")
          .allowed(Allowed.only(2 * upper + " Hz"));
    }
    double seconds = BandTable.seconds(recording);
    double needed = LEAST_WIDTH_BY_TIME / (BandTable.RELATIVE_WIDTH * bands.get(0));
    if (seconds < needed) {
      to.refuse(CAPTURE_SHORTER_THAN_BAND)
          .at(at)
          .given(seconds + " s")
          .allowed(Allowed.atLeast(needed, "s"));
    }
  }
}
