package org.footwell.factory.sum;

import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.factory.sum.SignalSumRequest.Output;

/** A sum is of something. */
@Check.Of(value = "outputs.*.connected", says = "At least one output is connected.")
final class OutputInSum implements Check<SignalSumRequest> {

  @Override
  public void check(SignalSumRequest q, Refusing to) {
    if (q.outputs().stream().noneMatch(Output::connected)) {
      to.refuse(SignalSumFault.NO_OUTPUT_IN_SUM).at("/outputs");
    }
  }
}
