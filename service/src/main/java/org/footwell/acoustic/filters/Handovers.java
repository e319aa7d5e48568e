package org.footwell.acoustic.filters;

import static org.footwell.acoustic.filters.FiltersFinding.NO_CROSSING;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.footwell.acoustic.filters.CrossoverFiltersResult.Handover;
import org.footwell.acoustic.filters.HandoverSearch.Neighbours;
import org.footwell.calculation.Run;

/** What there is to say of where one way hands over to the next. */
final class Handovers {

  private final HandoverSearch search;
  private final Advice advice;
  private final Run run;

  Handovers(SummedWays sum, Sums sums, Run run) {
    this.search = new HandoverSearch(sum, run);
    this.advice = new Advice(sum, sums, run);
    this.run = run;
  }

  /** Those that are heard, each with advice where there is some. */
  List<Handover> all() {
    List<Handover> found = new ArrayList<>();
    for (Neighbours two : search.neighbours()) {
      OptionalDouble crossing = search.crossing(two);
      if (crossing.isEmpty()) {
        run.find(NO_CROSSING)
            .at(two.upper().pointer())
            .own("lower", two.lower().id())
            .own("upper", two.upper().id());
      } else if (!search.masked(two, crossing.getAsDouble())) {
        Handover handover = search.at(two, crossing.getAsDouble());
        advice.on(handover, two.lower(), two.upper());
        found.add(handover);
      }
    }
    return found;
  }
}
