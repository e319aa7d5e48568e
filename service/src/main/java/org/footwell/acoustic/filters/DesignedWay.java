package org.footwell.acoustic.filters;

import java.util.ArrayList;
import java.util.List;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Way;
import org.footwell.calculation.Arithmetic;
import org.footwell.parts.Filter;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Decibels;
import org.footwell.signal.Biquad;
import org.footwell.signal.Cascade;
import org.footwell.signal.CirclePoint;
import org.footwell.signal.CoefficientFormat;
import org.footwell.signal.EqualiserSection;
import org.footwell.signal.Response;
import org.footwell.signal.SectionDesign;

/**
 * A way with its digital sections.
 *
 * @param index its place in the request
 * @param parts its sections in the order of the signal
 * @param exact the sections as calculated
 * @param rounded the sections as the device holds them
 * @param factor amplitude of gain and polarity
 * @param delaySamples delay in samples
 */
record DesignedWay(
    int index,
    Way way,
    List<Part> parts,
    Cascade exact,
    Cascade rounded,
    double factor,
    double delaySamples) {

  /** Where the middle is looked for of a way that is open on a side, Hz. */
  private static final double LOWEST_HZ = 20;

  private static final double HIGHEST_HZ = 20000;

  /**
   * One section.
   *
   * @param pointer where in the request it comes from
   * @param frequencyHz the frequency it is designed for
   */
  record Part(String pointer, double frequencyHz, Biquad exact, Biquad rounded) {}

  /** Designs the sections of one way of a request. */
  static DesignedWay of(CrossoverFiltersRequest q, int index, Arithmetic steps) {
    Way way = q.ways().get(index);
    String at = "/ways/" + index;
    List<Part> parts = new ArrayList<>();
    Filter high = way.highPass();
    Filter low = way.lowPass();
    if (high != null) {
      addFilter(parts, at + "/high_pass", high.highPass(), q, steps);
    }
    if (low != null) {
      addFilter(parts, at + "/low_pass", low.lowPass(), q, steps);
    }
    for (int i = 0; i < q.sections().size(); i++) {
      if (q.sections().get(i).channel().equals(way.id())) {
        addSection(parts, "/sections/" + i, q.sections().get(i), q, steps);
      }
    }
    return new DesignedWay(
        index,
        way,
        List.copyOf(parts),
        Cascade.of(parts.stream().map(Part::exact).toList()),
        Cascade.of(parts.stream().map(Part::rounded).toList()),
        way.polarity() * Decibels.toAmplitude(way.gainDb()),
        way.delayMs() / 1000 * q.rateHz());
  }

  private static void addFilter(
      List<Part> parts,
      String at,
      AnalogFilter filter,
      CrossoverFiltersRequest q,
      Arithmetic steps) {
    steps.apply(SectionDesign.PREWARP, filter.cornerHz(), q.rateHz());
    for (Biquad section : SectionDesign.of(filter, q.rateHz())) {
      parts.add(part(at, filter.cornerHz(), section, q.coefficientFormat()));
    }
  }

  private static void addSection(
      List<Part> parts,
      String at,
      EqualiserSection section,
      CrossoverFiltersRequest q,
      Arithmetic steps) {
    double f = section.frequencyHz();
    steps.apply(SectionDesign.PREWARP, f, q.rateHz());
    if (section.kind().takesGain()) {
      steps.apply(SectionDesign.HALF_GAIN, section.gainDb());
    }
    parts.add(part(at, f, section.design(q.rateHz()), q.coefficientFormat()));
  }

  private static Part part(String at, double f, Biquad exact, CoefficientFormat format) {
    return new Part(at, f, exact, format.rounded(exact));
  }

  String id() {
    return way.id();
  }

  int bit() {
    return 1 << index;
  }

  /** Corner of its high-pass, Hz; 0 without one. */
  double bottomHz() {
    return way.highPass() == null ? 0 : way.highPass().frequencyHz();
  }

  /** Corner of its low-pass, Hz; infinite without one. */
  double topHz() {
    return way.lowPass() == null ? Double.POSITIVE_INFINITY : way.lowPass().frequencyHz();
  }

  /** The middle of its band, Hz. */
  double middleHz() {
    return Math.sqrt(Math.max(LOWEST_HZ, bottomHz()) * Math.min(HIGHEST_HZ, topHz()));
  }

  String pointer() {
    return "/ways/" + index;
  }

  /** Filters, gain, polarity and delay. */
  Response at(CirclePoint p) {
    return exact.at(p).scaled(factor, delaySamples, p);
  }

  double levelDb(CirclePoint p) {
    return Response.levelDb(exact.power(p) * factor * factor);
  }

  double roundedLevelDb(CirclePoint p) {
    return Response.levelDb(rounded.power(p) * factor * factor);
  }
}
