package org.footwell.factory.sum;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Names;
import org.footwell.calculation.Run;
import org.footwell.factory.sum.SignalSumRequest.Output;
import org.footwell.factory.sum.SignalSumRequest.OutputSection;
import org.footwell.factory.sum.SignalSumRequest.ResponsePoint;
import org.footwell.parts.Filter;
import org.footwell.recording.RecordingRules;

/** The rules between the fields of a request; every breach is refused, all at once. */
final class SignalSumRules {

  private static final int FEWEST_POINTS = 8;

  private final SignalSumRequest q;
  private final Run run;
  private final Set<String> ids = new HashSet<>();

  private SignalSumRules(SignalSumRequest q, Run run) {
    this.q = q;
    this.run = run;
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
    rules.voltages();
    double[] points = q.frequencies().points("/frequencies", run);
    for (int i = 0; i < points.length; i++) {
      if (points[i] >= q.rateHz() / 2) {
        String field = q.frequencies().listHz() == null ? "/to_hz" : "/list_hz/" + i;
        rules.belowHalfRate("/frequencies" + field, points[i]);
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
      if (!ids.add(output.id())) {
        run.refuse(CoreFault.DUPLICATE).at(at + "/id").given(output.id());
      }
      if (output.polarity() == 0) {
        run.refuse(SignalSumFault.POLARITY_ZERO).at(at + "/polarity").given(0);
      }
      filter(at + "/high_pass", output.highPass());
      filter(at + "/low_pass", output.lowPass());
      if (output.impulseResponse() != null) {
        recordings.check(output.impulseResponse(), at + "/impulse_response");
      }
      boolean described =
          output.highPass() != null
              || output.lowPass() != null
              || q.sections().stream().anyMatch(one -> one.output().equals(output.id()));
      boolean pointed = q.points().stream().anyMatch(one -> one.output().equals(output.id()));
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
    belowHalfRate(at + "/frequency_hz", filter.frequencyHz());
  }

  private void sections() {
    for (int i = 0; i < q.sections().size(); i++) {
      OutputSection section = q.sections().get(i);
      String at = "/sections/" + i;
      known(at + "/output", section.output());
      belowHalfRate(at + "/frequency_hz", section.frequencyHz());
      field(at, section, "q", section.q(), section.kind().takesQ());
      field(at, section, "gain_db", section.gainDb(), section.kind().takesGain());
    }
  }

  private void field(String at, OutputSection section, String name, Double value, boolean taken) {
    if (taken && value == null) {
      run.refuse(CoreFault.REQUIRED).at(at + "/" + name);
    } else if (!taken && value != null) {
      run.refuse(SignalSumFault.SECTION_FIELD_NOT_TAKEN)
          .at(at + "/" + name)
          .given(value)
          .field("kind", Names.of(section.kind()))
          .field("what", name);
    }
  }

  private void points() {
    Map<String, Double> before = new HashMap<>();
    Map<String, Integer> counts = new HashMap<>();
    for (int i = 0; i < q.points().size(); i++) {
      ResponsePoint point = q.points().get(i);
      String at = "/points/" + i;
      known(at + "/output", point.output());
      Double last = before.put(point.output(), point.frequencyHz());
      counts.merge(point.output(), 1, Integer::sum);
      if (last != null && point.frequencyHz() <= last) {
        run.refuse(last.equals(point.frequencyHz()) ? CoreFault.DUPLICATE : CoreFault.NOT_ASCENDING)
            .at(at + "/frequency_hz")
            .given(point.frequencyHz())
            .allowed("more than " + last);
      }
    }
    counts.forEach(
        (output, count) -> {
          if (count < FEWEST_POINTS) {
            run.refuse(SignalSumFault.TOO_FEW_POINTS)
                .at("/points")
                .given(count + " points of " + output)
                .allowed("at least " + FEWEST_POINTS);
          }
        });
  }

  private void known(String at, String id) {
    if (!ids.contains(id)) {
      run.refuse(CoreFault.DANGLING_REFERENCE)
          .at(at)
          .given(id)
          .allowed("outputs")
          .with("nearest", Names.didYouMean(id, ids));
    }
  }

  private void voltages() {
    List<Double> volts =
        q.outputs().stream()
            .map(Output::cleanOutputV)
            .collect(Collectors.toCollection(ArrayList::new));
    if (volts.stream().anyMatch(Objects::nonNull) && volts.stream().anyMatch(Objects::isNull)) {
      run.refuse(SignalSumFault.VOLTAGES_INCOMPLETE)
          .at("/outputs/" + volts.indexOf(null) + "/clean_output_v");
    }
  }

  private void belowHalfRate(String at, double frequency) {
    if (frequency >= q.rateHz() / 2) {
      run.refuse(SignalSumFault.FREQUENCY_ABOVE_HALF_RATE)
          .at(at)
          .given(frequency)
          .allowed("less than " + q.rateHz() / 2);
    }
  }
}
