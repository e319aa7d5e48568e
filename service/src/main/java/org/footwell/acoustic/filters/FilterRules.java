package org.footwell.acoustic.filters;

import static org.footwell.acoustic.filters.FiltersFault.ABOVE_HALF_RATE;
import static org.footwell.acoustic.filters.FiltersFault.FRACTION_LONGER_THAN_WORD;
import static org.footwell.acoustic.filters.FiltersFault.SECTION_WITHOUT_SUCH;
import static org.footwell.calculation.CoreFault.DANGLING_REFERENCE;
import static org.footwell.calculation.CoreFault.DUPLICATE;
import static org.footwell.calculation.CoreFault.NOT_ALLOWED;
import static org.footwell.calculation.CoreFault.REQUIRED;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Listening;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Section;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Way;
import org.footwell.calculation.Names;
import org.footwell.calculation.Run;
import org.footwell.parts.Filter;
import org.footwell.signal.CoefficientFormat;

/** The rules between the fields of a request; every breach is refused, all at once. */
final class FilterRules {

  private final CrossoverFiltersRequest q;
  private final Run run;

  private FilterRules(CrossoverFiltersRequest q, Run run) {
    this.q = q;
    this.run = run;
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
    rules.belowHalfRate("/flat_from_hz", q.flatFromHz());
    rules.belowHalfRate("/flat_to_hz", q.flatToHz());
    rules.listening(q.listening());
    double[] points = rules.points();
    run.requireNoFaults();
    return points;
  }

  private void ways() {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < q.ways().size(); i++) {
      String at = "/ways/" + i;
      Way way = q.ways().get(i);
      if (!seen.add(way.id())) {
        run.refuse(DUPLICATE).at(at + "/id").given(way.id());
      }
      filter(at + "/high_pass", way.highPass());
      filter(at + "/low_pass", way.lowPass());
      if (way.polarity() == 0) {
        run.refuse(NOT_ALLOWED).at(at + "/polarity").given(0).allowed("1 or -1");
      }
    }
  }

  private void filter(String at, Filter filter) {
    if (filter == null) {
      return;
    }
    belowHalfRate(at + "/frequency_hz", filter.frequencyHz());
    Filter.require(filter, at, run);
  }

  private void sections() {
    List<String> ids = q.ways().stream().map(Way::id).toList();
    for (int i = 0; i < q.sections().size(); i++) {
      String at = "/sections/" + i;
      Section section = q.sections().get(i);
      if (!ids.contains(section.way())) {
        run.refuse(DANGLING_REFERENCE)
            .at(at + "/way")
            .given(section.way())
            .allowed("ways")
            .with("nearest", Names.didYouMean(section.way(), ids));
      }
      belowHalfRate(at + "/frequency_hz", section.frequencyHz());
      member(at, section, "q", section.q(), section.kind().takesQ());
      member(at, section, "gain_db", section.gainDb(), section.kind().takesGain());
    }
  }

  private void member(String at, Section section, String name, Double value, boolean taken) {
    if (taken && value == null) {
      run.refuse(REQUIRED).at(at + "/" + name);
    } else if (!taken && value != null) {
      run.refuse(SECTION_WITHOUT_SUCH)
          .at(at + "/" + name)
          .given(value)
          .field("kind", Names.of(section.kind()))
          .field("what", name);
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
          .allowed("at most " + (format.wordBits() - 1));
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
            .allowed("more than " + -listening.distanceM() + ", in front of the listener");
      }
    }
  }

  private double[] points() {
    double[] points = q.frequencies().points("/frequencies", run);
    if (q.frequencies().listHz() != null) {
      for (int i = 0; i < points.length; i++) {
        belowHalfRate("/frequencies/list_hz/" + i, points[i]);
      }
    }
    belowHalfRate("/frequencies/to_hz", q.frequencies().toHz());
    return points;
  }

  private void belowHalfRate(String at, Double frequency) {
    if (frequency != null && frequency >= q.rateHz() / 2) {
      run.refuse(ABOVE_HALF_RATE).at(at).given(frequency).allowed("less than " + q.rateHz() / 2);
    }
  }
}
