package org.footwell.factory.sum;

import java.util.stream.Stream;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.factory.sum.SignalSumRequest.Output;

/** Each output is described in one way. */
@Check.Of(
    value = {
      "outputs.*.id",
      "outputs.*.high_pass",
      "outputs.*.low_pass",
      "outputs.*.impulse_response",
      "sections.*.channel",
      "points.*.channel"
    },
    says = "An output has filters and sections, or points, or an impulse_response.")
final class OneResponseEach implements Check<SignalSumRequest> {

  @Override
  public void check(SignalSumRequest q, Refusing to) {
    for (int i = 0; i < q.outputs().size(); i++) {
      Output output = q.outputs().get(i);
      boolean filtered =
          output.highPass() != null
              || output.lowPass() != null
              || q.sections().stream().anyMatch(one -> one.channel().equals(output.id()));
      boolean pointed = q.points().stream().anyMatch(one -> one.channel().equals(output.id()));
      boolean recorded = output.impulseResponse() != null;
      if (Stream.of(filtered, pointed, recorded).filter(way -> way).count() > 1) {
        to.refuse(SignalSumFault.RESPONSE_GIVEN_TWICE).at("/outputs/" + i).given(output.id());
      }
    }
  }
}
