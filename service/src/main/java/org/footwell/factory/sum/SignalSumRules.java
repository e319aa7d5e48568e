package org.footwell.factory.sum;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.factory.sum.SignalSumRequest.Output;
import org.footwell.factory.sum.SignalSumRequest.ResponsePoint;
import org.footwell.parts.Filter;
import org.footwell.recording.RecordingRules;
import org.footwell.signal.SampleRate;

/** What a request must keep to beyond its declared rules; every breach is refused, all at once. */
final class SignalSumRules {

  private static final int FEWEST_POINTS = 8;

  private final SignalSumRequest q;
  private final Run run;
  private final SampleRate rate;

  private SignalSumRules(SignalSumRequest q, Run run) {
    this.q = q;
    this.run = run;
    this.rate = new SampleRate(q.rateHz(), run);
  }

  /**
   * Ends the run if anything is amiss.
   *
   * @return the points of the curves, Hz
   */
  static double[] require(SignalSumRequest q, Run run) {
    SignalSumRules rules = new SignalSumRules(q, run);
    rules.outputs();
    rules.sections();
    rules.points();
    double[] points = q.frequencies().points("/frequencies", run);
    for (int i = 0; i < points.length; i++) {
      String field = q.frequencies().listHz() == null ? "/to_hz" : "/list_hz/" + i;
      if (rules.rate.refuses("/frequencies" + field, points[i])) {
        break;
      }
    }
    run.requireNoFaults();
    return points;
  }

  private void outputs() {
    RecordingRules recordings = new RecordingRules(run);
    for (int i = 0; i < q.outputs().size(); i++) {
      Output output = q.outputs().get(i);
      String at = "/outputs/" + i;
      filter(at + "/high_pass", output.highPass());
      filter(at + "/low_pass", output.lowPass());
      if (output.impulseResponse() != null) {
        recordings.check(output.impulseResponse(), at + "/impulse_response");
      }
      boolean described =
          output.highPass() != null
              || output.lowPass() != null
              || q.sections().stream().anyMatch(one -> one.channel().equals(output.id()));
      boolean pointed = q.points().stream().anyMatch(one -> one.channel().equals(output.id()));
      int ways = (described ? 1 : 0) + (pointed ? 1 : 0);
      if (ways + (output.impulseResponse() != null ? 1 : 0) > 1) {
        run.refuse(SignalSumFault.RESPONSE_GIVEN_TWICE).at(at).given(output.id());
      }
    }
    if (q.outputs().stream().noneMatch(Output::connected)) {
      run.refuse(SignalSumFault.NO_OUTPUT_IN_SUM).at("/outputs");
    }
  }

  private void filter(String at, Filter filter) {
    if (filter == null) {
      return;
    }
    Filter.require(filter, at, run);
    rate.refuses(at + "/frequency_hz", filter.frequencyHz());
  }

  private void sections() {
    for (int i = 0; i < q.sections().size(); i++) {
      String at = "/sections/" + i;
      rate.refuses(at + "/frequency_hz", q.sections().get(i).frequencyHz());
      q.sections().get(i).require(at, run);
    }
  }

  private void points() {
    Map<String, Double> before = new HashMap<>();
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (int i = 0; i < q.points().size(); i++) {
      ResponsePoint point = q.points().get(i);
      Double last = before.put(point.channel(), point.frequencyHz());
      counts.merge(point.channel(), 1, Integer::sum);
      if (last != null && point.frequencyHz() < last) {
        run.refuse(CoreFault.NOT_ASCENDING)
            .at("/points/" + i + "/frequency_hz")
            .given(point.frequencyHz())
            .allowed(Allowed.above(last, "Hz"));
      }
    }
    counts.forEach(
        (output, count) -> {
          if (count < FEWEST_POINTS) {
            run.refuse(SignalSumFault.TOO_FEW_POINTS)
                .at("/points")
                .given(count)
                .own("name", output)
                .allowed(Allowed.atLeast(FEWEST_POINTS, ""));
          }
        });
  }
}
