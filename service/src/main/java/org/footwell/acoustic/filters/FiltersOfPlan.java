package org.footwell.acoustic.filters;

import java.util.ArrayList;
import java.util.List;
import org.footwell.acoustic.filters.CrossoverFiltersRequest.Way;
import org.footwell.parts.Processor;
import org.footwell.parts.plan.ParametricFilter;
import org.footwell.parts.plan.PlanReader;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.signal.EqualiserSection;

/** Filters and equalisers of channels that hand over to each other, as the processor holds them. */
final class FiltersOfPlan {

  private final PlanReader plan;
  private final List<EqualiserSection> sections = new ArrayList<>();

  FiltersOfPlan(PlanReader plan) {
    this.plan = plan;
  }

  CrossoverFiltersRequest request() {
    Processor processor = plan.poses(plan.plan().processor(), "/processor");
    plan.also("/processor");
    List<Way> ways = plan.handingOver().stream().map(this::way).toList();
    return CrossoverFiltersRequestBuilder.builder()
        .rateHz(processor == null ? null : processor.rateHz())
        .ways(ways)
        .sections(sections)
        .build();
  }

  private Way way(int index) {
    PlannedChannel channel = plan.plan().channels().get(index);
    String at = PlanReader.channelAt(index);
    for (int f = 0; f < channel.equaliser().size(); f++) {
      ParametricFilter filter = channel.equaliser().get(f);
      sections.add(
          plan.made(
              new EqualiserSection(
                  channel.id(),
                  filter.kind(),
                  filter.frequencyHz(),
                  filter.kind().takesQ() ? filter.q() : null,
                  filter.kind().takesGain() ? filter.gainDb() : null),
              at + "/equaliser/" + f));
    }
    return plan.made(
        CrossoverFiltersRequestWayBuilder.builder()
            .id(channel.id())
            .highPass(channel.highPass())
            .lowPass(channel.lowPass())
            .polarity(channel.polarity())
            .build(),
        at);
  }
}
