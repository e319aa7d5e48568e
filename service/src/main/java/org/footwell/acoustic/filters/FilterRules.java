package org.footwell.acoustic.filters;

import static org.footwell.acoustic.filters.FiltersFault.FRACTION_LONGER_THAN_WORD;
import static org.footwell.calculation.CoreFault.NOT_ALLOWED;
import static org.footwell.calculation.CoreFault.REQUIRED;

import org.footwell.acoustic.filters.CrossoverFiltersRequest.Listening;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Way;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.parts.Filter;
import org.footwell.signal.CoefficientFormat;
import org.footwell.signal.SampleRate;

/** What a request must keep to beyond its declared rules; every breach is refused, all at once. */
final class FilterRules {

  private final CrossoverFiltersRequest q;
  private final Run run;
  private final SampleRate rate;

  private FilterRules(CrossoverFiltersRequest q, Run run) {
    this.q = q;
    this.run = run;
    this.rate = new SampleRate(q.rateHz(), run);
  }

  /**
   * Ends the run if anything is amiss.
   *
   * @return the points of the curves, Hz
   */
  static double[] require(CrossoverFiltersRequest q, Run run) {
    FilterRules rules = new FilterRules(q, run);
    rules.ways();
    rules.sections();
    rules.format(q.coefficientFormat());
    rules.rate.refuses("/flat_from_hz", q.flatFromHz());
    rules.rate.refuses("/flat_to_hz", q.flatToHz());
    rules.listening(q.listening());
    double[] points = rules.points();
    run.requireNoFaults();
    return points;
  }

  private void ways() {
    for (int i = 0; i < q.ways().size(); i++) {
      String at = "/ways/" + i;
      Way way = q.ways().get(i);
      filter(at + "/high_pass", way.highPass());
      filter(at + "/low_pass", way.lowPass());
    }
  }

  private void filter(String at, Filter filter) {
    if (filter == null) {
      return;
    }
    rate.refuses(at + "/frequency_hz", filter.frequencyHz());
    Filter.require(filter, at, run);
  }

  private void sections() {
    for (int i = 0; i < q.sections().size(); i++) {
      String at = "/sections/" + i;
      rate.refuses(at + "/frequency_hz", q.sections().get(i).frequencyHz());
      q.sections().get(i).require(at, run);
    }
  }

  private void format(CoefficientFormat format) {
    if (format.kind() != CoefficientFormat.Kind.FIXED) {
      return;
    }
    if (format.wordBits() == null) {
      run.refuse(REQUIRED).at("/coefficient_format/word_bits");
    }
    if (format.fractionBits() == null) {
      run.refuse(REQUIRED).at("/coefficient_format/fraction_bits");
    } else if (format.wordBits() != null && format.fractionBits() >= format.wordBits()) {
      run.refuse(FRACTION_LONGER_THAN_WORD)
          .at("/coefficient_format/fraction_bits")
          .given(format.fractionBits())
          .allowed(Allowed.atMost(format.wordBits() - 1, ""));
    }
  }

  private void listening(Listening listening) {
    if (listening == null) {
      return;
    }
    for (int i = 0; i < q.ways().size(); i++) {
      if (-q.ways().get(i).behindM() >= listening.distanceM()) {
        run.refuse(NOT_ALLOWED)
            .at("/ways/" + i + "/behind_m")
            .given(q.ways().get(i).behindM())
            .allowed(Allowed.above(-listening.distanceM(), "m"));
      }
    }
  }

  private double[] points() {
    double[] points = q.frequencies().points("/frequencies", run);
    if (q.frequencies().listHz() != null) {
      for (int i = 0; i < points.length; i++) {
        rate.refuses("/frequencies/list_hz/" + i, points[i]);
      }
    }
    rate.refuses("/frequencies/to_hz", q.frequencies().toHz());
    return points;
  }
}
