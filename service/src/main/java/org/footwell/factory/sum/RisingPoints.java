package org.footwell.factory.sum;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;
import org.footwell.factory.sum.SignalSumRequest.ResponsePoint;

/** A response in points has enough of them, in order. */
@Check.Of(
    value = {"points.*.channel", "points.*.frequency_hz"},
    says = "The points of an output are at least 8, and their frequencies rise.")
final class RisingPoints implements Check<SignalSumRequest> {

  private static final int FEWEST_POINTS = 8;

  @Override
  public void check(SignalSumRequest q, Refusing to) {
    Map<String, Double> before = new HashMap<>();
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (int i = 0; i < q.points().size(); i++) {
      ResponsePoint point = q.points().get(i);
      Double last = before.put(point.channel(), point.frequencyHz());
      counts.merge(point.channel(), 1, Integer::sum);
      if (last != null && point.frequencyHz() < last) {
        to.refuse(CoreFault.NOT_ASCENDING)
            .at("/points/" + i + "/frequency_hz")
            .given(point.frequencyHz())
            .allowed(Allowed.above(last, "Hz"));
      }
    }
    counts.forEach(
        (output, count) -> {
          if (count < FEWEST_POINTS) {
            to.refuse(SignalSumFault.TOO_FEW_POINTS)
                .at("/points")
                .given(count)
                .own("name", output)
                .allowed(Allowed.atLeast(FEWEST_POINTS, ""));
          }
        });
  }
}
