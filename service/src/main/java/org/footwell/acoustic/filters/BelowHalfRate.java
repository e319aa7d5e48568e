package org.footwell.acoustic.filters;

import java.util.List;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Way;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.parts.Filter;
import org.footwell.signal.SampleRate;

/** Digital filters have no frequencies above half their sample rate. */
@Check.Of(
    value = {
      "rate_hz",
      "ways.*.high_pass.frequency_hz",
      "ways.*.low_pass.frequency_hz",
      "sections.*.frequency_hz",
      "flat_from_hz",
      "flat_to_hz",
      "frequencies"
    },
    says = "Every frequency is below half of rate_hz.")
final class BelowHalfRate implements Check<CrossoverFiltersRequest> {

  @Override
  public void check(CrossoverFiltersRequest q, Refusing to) {
    SampleRate rate = new SampleRate(q.rateHz(), to);
    for (int i = 0; i < q.ways().size(); i++) {
      Way way = q.ways().get(i);
      rate.refuses("/ways/" + i + "/high_pass/frequency_hz", Filter.cornerHz(way.highPass()));
      rate.refuses("/ways/" + i + "/low_pass/frequency_hz", Filter.cornerHz(way.lowPass()));
    }
    for (int i = 0; i < q.sections().size(); i++) {
      rate.refuses("/sections/" + i + "/frequency_hz", q.sections().get(i).frequencyHz());
    }
    rate.refuses("/flat_from_hz", q.flatFromHz());
    rate.refuses("/flat_to_hz", q.flatToHz());
    List<Double> listed = q.frequencies().listHz();
    for (int i = 0; listed != null && i < listed.size(); i++) {
      rate.refuses("/frequencies/list_hz/" + i, listed.get(i));
    }
    rate.refuses("/frequencies/to_hz", q.frequencies().toHz());
  }
}
