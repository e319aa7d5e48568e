package org.footwell.acoustic.filters;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Way;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;
import org.footwell.signal.CoefficientFormat;
import org.footwell.signal.EqualiserSection;
import org.footwell.signal.SectionKind;

/** A request to be changed: ways whose outputs are filtered at 48 kHz. */
final class FilteredWays {

  private static final CrossoverFilters CALCULATION = new CrossoverFilters();

  private final List<Way> ways = new ArrayList<>();
  private final List<EqualiserSection> sections = new ArrayList<>();
  final CrossoverFiltersRequestBuilder asked =
      CrossoverFiltersRequestBuilder.builder().rateHz(48_000.0);

  static CrossoverFiltersRequestWayBuilder way(String id) {
    return CrossoverFiltersRequestWayBuilder.builder().id(id);
  }

  static CrossoverFiltersRequestWayBuilder low(String id, Kind kind, int order, double corner) {
    return way(id).lowPass(filter(kind, order, corner));
  }

  static CrossoverFiltersRequestWayBuilder high(String id, Kind kind, int order, double corner) {
    return way(id).highPass(filter(kind, order, corner));
  }

  static Filter filter(Kind kind, int order, double corner) {
    return new Filter(kind, order, corner, null);
  }

  /** A low-pass and a high-pass of one kind at one corner. */
  static FilteredWays pair(Kind kind, int order, double corner, int polarity) {
    return new FilteredWays()
        .with(low("lower", kind, order, corner))
        .with(high("upper", kind, order, corner).polarity(polarity));
  }

  FilteredWays with(CrossoverFiltersRequestWayBuilder way) {
    ways.add(way.build());
    return this;
  }

  FilteredWays with(String way, SectionKind kind, double frequency, Double q, Double gain) {
    sections.add(new EqualiserSection(way, kind, frequency, q, gain));
    return this;
  }

  FilteredWays at(Double... frequenciesHz) {
    asked.frequencies(new CurveFrequencies(null, null, null, Arrays.asList(frequenciesHz)));
    return this;
  }

  FilteredWays fixed(Integer word, Integer fraction) {
    asked.coefficientFormat(new CoefficientFormat(CoefficientFormat.Kind.FIXED, word, fraction));
    return this;
  }

  CrossoverFiltersRequest request() {
    return asked.ways(ways).sections(sections).build();
  }

  Answer<CrossoverFiltersResult> answer() {
    return Answers.of(CALCULATION, request());
  }

  CrossoverFiltersResult result() {
    return answer().result();
  }

  List<String> refusedAt() {
    return Answers.faults(CALCULATION, request()).stream().map(Fault::pointer).toList();
  }

  List<String> refusals() {
    return Answers.faults(CALCULATION, request()).stream().map(Fault::code).toList();
  }
}
