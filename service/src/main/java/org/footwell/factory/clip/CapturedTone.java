package org.footwell.factory.clip;

import static org.footwell.factory.clip.ClipFault.TONE_ABOVE_HALF_RATE;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.recording.RecordingRules;

/** Captures can be used, and have the tone in them. */
@Check.Of(
    value = {"captures.*.recording", "tone_hz"},
    says =
        "Captures have one sample rate, are neither silent nor clipped; tone_hz is below half of it.")
final class CapturedTone implements Check<ClipPointRequest> {

  @Override
  public void check(ClipPointRequest q, Refusing to) {
    if (q.captures() == null) {
      return;
    }
    RecordingRules rules = new RecordingRules(to);
    for (int i = 0; i < q.captures().size(); i++) {
      String at = "/captures/" + i + "/recording";
      boolean usable = rules.check(q.captures().get(i).recording(), at);
      if (usable && i == 0 && q.toneHz() != null) {
        double half = q.captures().get(i).recording().rateHz() / 2;
        if (q.toneHz() >= half) {
          to.refuse(TONE_ABOVE_HALF_RATE)
              .at("/tone_hz")
              .given(q.toneHz())
              .allowed(Allowed.below(half, "Hz"));
        }
      }
    }
  }
}
