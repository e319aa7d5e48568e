package org.footwell.factory.sum;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.recording.Recording;
import org.footwell.recording.RecordingRules;

/** What was recorded of outputs can be used, one with the other. */
@Check.Of(
    value = "outputs.*.impulse_response",
    says = "Recordings have one sample rate, are neither silent nor clipped, and of a fair length.")
final class SoundResponses implements Check<SignalSumRequest> {

  @Override
  public void check(SignalSumRequest q, Refusing to) {
    RecordingRules rules = new RecordingRules(to);
    for (int i = 0; i < q.outputs().size(); i++) {
      Recording recorded = q.outputs().get(i).impulseResponse();
      if (recorded != null) {
        rules.check(recorded, "/outputs/" + i + "/impulse_response");
      }
    }
  }
}
