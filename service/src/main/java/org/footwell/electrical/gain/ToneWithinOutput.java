package org.footwell.electrical.gain;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;

/** What full output is reached with before full scale, a test tone does not pass. */
@Check.Of(
    value = {"test_tone_dbfs", "overlap_db"},
    says = "test_tone_dbfs is at most as far below full scale as overlap_db says.")
final class ToneWithinOutput implements Check<GainChainRequest> {

  @Override
  public void check(GainChainRequest q, Refusing to) {
    if (q.testToneDbfs() > -q.overlapDb() + GainRules.TOLERANCE_DB) {
      to.refuse(GainFault.TONE_ABOVE_FULL_OUTPUT)
          .at("/test_tone_dbfs")
          .given(q.testToneDbfs())
          .allowed(Allowed.atMost(-q.overlapDb(), "dBFS"));
    }
  }
}
