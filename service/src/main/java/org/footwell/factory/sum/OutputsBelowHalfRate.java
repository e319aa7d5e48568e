package org.footwell.factory.sum;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.factory.sum.SignalSumRequest.Output;
import org.footwell.parts.Filter;
import org.footwell.signal.SampleRate;

/** Digital filters have no frequencies above half their sample rate. */
@Check.Of(
    value = {
      "rate_hz",
      "outputs.*.high_pass.frequency_hz",
      "outputs.*.low_pass.frequency_hz",
      "sections.*.frequency_hz",
      "frequencies"
    },
    says = "Every frequency is below half of rate_hz.")
final class OutputsBelowHalfRate implements Check<SignalSumRequest> {

  @Override
  public void check(SignalSumRequest q, Refusing to) {
    SampleRate rate = new SampleRate(q.rateHz(), to);
    for (int i = 0; i < q.outputs().size(); i++) {
      Output output = q.outputs().get(i);
      rate.refuses("/outputs/" + i + "/high_pass/frequency_hz", Filter.cornerHz(output.highPass()));
      rate.refuses("/outputs/" + i + "/low_pass/frequency_hz", Filter.cornerHz(output.lowPass()));
    }
    for (int i = 0; i < q.sections().size(); i++) {
      rate.refuses("/sections/" + i + "/frequency_hz", q.sections().get(i).frequencyHz());
    }
    double[] points = q.frequencies().points();
    for (int i = 0; i < points.length; i++) {
      String field = q.frequencies().listHz() == null ? "/to_hz" : "/list_hz/" + i;
      if (rate.refuses("/frequencies" + field, points[i])) {
        break;
      }
    }
  }
}
