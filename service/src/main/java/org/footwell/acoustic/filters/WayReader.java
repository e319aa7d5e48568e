package org.footwell.acoustic.filters;

import java.util.ArrayList;
import java.util.List;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Way;
import org.footwell.acoustic.filters.DesignedWay.Part;
import org.footwell.calculation.Run;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Decibels;
import org.footwell.signal.Biquad;
import org.footwell.signal.Cascade;
import org.footwell.signal.EqualiserSection;
import org.footwell.signal.SectionDesign;

/** Reads the ways of a request and has their sections designed. */
record WayReader(CrossoverFiltersRequest q, Run run) {

  DesignedWay way(int index) {
    Way way = q.ways().get(index);
    List<Part> parts = parts(way, "/ways/" + index);
    return DesignedWayBuilder.builder()
        .index(index)
        .id(way.id())
        .highPass(way.highPass())
        .lowPass(way.lowPass())
        .heightM(way.heightM())
        .behindM(way.behindM())
        .parts(parts)
        .exact(Cascade.of(parts.stream().map(Part::exact).toList()))
        .rounded(Cascade.of(parts.stream().map(Part::rounded).toList()))
        .factor(way.polarity() * Decibels.toAmplitude(way.gainDb()))
        .delaySamples(way.delayMs() / 1000 * q.rateHz())
        .build();
  }

  private List<Part> parts(Way way, String at) {
    List<Part> parts = new ArrayList<>();
    if (way.highPass() != null) {
      addFilter(parts, at + "/high_pass", way.highPass().highPass());
    }
    if (way.lowPass() != null) {
      addFilter(parts, at + "/low_pass", way.lowPass().lowPass());
    }
    for (int i = 0; i < q.sections().size(); i++) {
      if (q.sections().get(i).channel().equals(way.id())) {
        addSection(parts, "/sections/" + i, q.sections().get(i));
      }
    }
    return List.copyOf(parts);
  }

  private void addFilter(List<Part> parts, String at, AnalogFilter filter) {
    run.apply(SectionDesign.PREWARP, filter.cornerHz(), q.rateHz());
    for (Biquad section : SectionDesign.of(filter, q.rateHz())) {
      parts.add(part(at, filter.cornerHz(), section));
    }
  }

  private void addSection(List<Part> parts, String at, EqualiserSection section) {
    double f = section.frequencyHz();
    run.apply(SectionDesign.PREWARP, f, q.rateHz());
    if (section.kind().takesGain()) {
      run.apply(SectionDesign.HALF_GAIN, section.gainDb());
    }
    parts.add(part(at, f, section.design(q.rateHz())));
  }

  private Part part(String at, double f, Biquad exact) {
    return new Part(at, f, exact, q.coefficientFormat().rounded(exact));
  }
}
