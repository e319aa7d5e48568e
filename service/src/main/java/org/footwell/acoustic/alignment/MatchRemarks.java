package org.footwell.acoustic.alignment;

import static org.footwell.acoustic.alignment.AlignmentFinding.CROSSOVER_NOT_STATED;
import static org.footwell.acoustic.alignment.AlignmentFinding.DELAY_AT_WINDOW_EDGE;
import static org.footwell.acoustic.alignment.AlignmentFinding.FILTERS_NOT_GIVEN;
import static org.footwell.acoustic.alignment.AlignmentFinding.INVERSION_ADVISED;

import java.util.HashSet;
import java.util.Set;
import org.footwell.acoustic.alignment.SeatDelaysRequest.PlacedChannel;
import org.footwell.calculation.Run;
import org.footwell.parts.Crossover;

/** What there is to say about how lower channels meet the upper ones, and about what is not known. */
final class MatchRemarks {

  private final SeatDelaysRequest q;
  private final Crossovers crossovers;
  private final Run run;

  MatchRemarks(SeatDelaysRequest q, Run run) {
    this.q = q;
    this.crossovers = new Crossovers(q);
    this.run = run;
  }

  void remark(BassMatches matches) {
    Set<Integer> met = new HashSet<>();
    for (int lower = 0; lower < q.channels().size(); lower++) {
      if (matches.of(lower) != null) {
        remark(lower, matches.of(lower));
        met.add(lower);
        crossovers.ofTheBass(lower).forEach(i -> met.add(crossovers.upper(i)));
      }
    }
    for (int c = 0; c < q.channels().size(); c++) {
      remarkFilters(c, met.contains(c));
    }
  }

  private void remark(int lower, PhaseMatch match) {
    int place = crossovers.ofTheBass(lower).get(0);
    Crossover crossover = crossovers.all().get(place);
    PhaseMatch.Setting set = match.asGiven();
    PhaseMatch.Setting other = match.inverted();
    if (match.inversionAdvised()) {
      run.find(INVERSION_ADVISED)
          .at("/crossovers/" + place)
          .value(other.lossDb())
          .limit(set.lossDb())
          .with("lost", -other.lossDb())
          .with("lost_as_set", -set.lossDb())
          .with("moved", other.delayMs())
          .with("moved_as_set", set.delayMs())
          .with("frequency", crossover.frequencyHz())
          .own("lower", crossover.lower());
    } else if (set.atEdge()) {
      run.find(DELAY_AT_WINDOW_EDGE)
          .at("/crossovers/" + place)
          .value(set.delayMs())
          .limit(PhaseMatch.halfPeriodMs(crossover.frequencyHz()))
          .with("lost", -set.lossDb())
          .with("frequency", crossover.frequencyHz())
          .own("lower", crossover.lower());
    }
  }

  private void remarkFilters(int index, boolean met) {
    PlacedChannel channel = q.channels().get(index);
    boolean unknown =
        channel.highPass() == null && channel.lowPass() == null && !channel.fullRange();
    if (met && unknown) {
      run.find(FILTERS_NOT_GIVEN).at("/channels/" + index).own("name", channel.name());
    }
    boolean handsOver =
        channel.lowPass() != null && channel.lowPass().frequencyHz() <= q.incoherentAboveHz();
    if (handsOver && crossovers.above(index).isEmpty() && q.channels().size() > 1) {
      run.find(CROSSOVER_NOT_STATED)
          .at("/channels/" + index + "/low_pass")
          .value(channel.lowPass().frequencyHz())
          .own("name", channel.name());
    }
  }
}
