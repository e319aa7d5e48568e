package org.footwell.acoustic.filters;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Listening;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Section;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Way;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;
import org.footwell.signal.CoefficientFormat;
import org.footwell.signal.SectionKind;

/** A request in the making. */
final class FilterDraft {

  private static final CrossoverFilters CALCULATION = new CrossoverFilters();

  double rateHz = 48000;
  final List<Way> ways = new ArrayList<>();
  final List<Section> sections = new ArrayList<>();
  CoefficientFormat format;
  Listening listening;
  Double flatFromHz;
  Double flatToHz;
  CurveFrequencies frequencies;

  /** A way in the making. */
  static final class Output {
    private final String id;
    Filter highPass;
    Filter lowPass;
    Double gainDb;
    Double delayMs;
    Integer polarity;
    Double heightM;
    Double behindM;

    Output(String id) {
      this.id = id;
    }

    Output high(Kind kind, int order, double corner) {
      highPass = new Filter(kind, order, corner, null);
      return this;
    }

    Output low(Kind kind, int order, double corner) {
      lowPass = new Filter(kind, order, corner, null);
      return this;
    }

    Output inverted() {
      polarity = -1;
      return this;
    }

    Output delayed(double ms) {
      delayMs = ms;
      return this;
    }

    Output gain(double db) {
      gainDb = db;
      return this;
    }

    Output at(double height, double behind) {
      heightM = height;
      behindM = behind;
      return this;
    }

    Way way() {
      return new Way(id, highPass, lowPass, gainDb, delayMs, polarity, heightM, behindM);
    }
  }

  /** A low-pass and a high-pass of one kind at one corner. */
  static FilterDraft pair(Kind kind, int order, double corner, int polarity) {
    Output upper = new Output("upper").high(kind, order, corner);
    upper.polarity = polarity;
    return new FilterDraft().with(new Output("lower").low(kind, order, corner)).with(upper);
  }

  FilterDraft with(Output output) {
    ways.add(output.way());
    return this;
  }

  FilterDraft with(String way, SectionKind kind, double frequency, Double q, Double gain) {
    sections.add(new Section(way, kind, frequency, q, gain));
    return this;
  }

  FilterDraft at(Double... frequenciesHz) {
    frequencies = new CurveFrequencies(null, null, null, Arrays.asList(frequenciesHz));
    return this;
  }

  FilterDraft fixed(Integer word, Integer fraction) {
    format = new CoefficientFormat(CoefficientFormat.Kind.FIXED, word, fraction);
    return this;
  }

  CrossoverFiltersRequest request() {
    return new CrossoverFiltersRequest(
        rateHz, ways, sections, format, listening, flatFromHz, flatToHz, frequencies);
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
