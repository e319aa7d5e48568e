package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.footwell.fitting.comparison.sides.SideFormulas;
import org.footwell.parts.Driver;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedPart;

/** Every position of which a factory part leaves, before against after. */
final class Replacements {

  private final PlanIndex index;
  private final List<ReplacementLine> lines = new ArrayList<>();
  private final Set<String> missing = new LinkedHashSet<>();

  Replacements(PlanIndex index) {
    this.index = index;
    for (int d = 0; d < index.plan().drivers().size(); d++) {
      if (index.replacedBy(d) >= 0) {
        lines.add(line(d));
      }
    }
  }

  List<ReplacementLine> lines() {
    return lines;
  }

  /** Fields that would have to be given for the figures left out, each once. */
  List<String> missing() {
    return List.copyOf(missing);
  }

  private ReplacementLine line(int d) {
    PlannedPart before = index.plan().factoryParts().get(index.replacedBy(d));
    PlannedPart after = index.part(d);
    Pair pair = new Pair(before.driver(), after.driver(), d);
    boolean level =
        pair.need(before.driver().sensitivity(), after.driver().sensitivity(), "sensitivity");
    boolean mass = pair.need(before.driver().massG(), after.driver().massG(), "mass_g");
    return new ReplacementLine(
        index.plan().drivers().get(d).id(),
        before.id(),
        after.id(),
        level ? (Double) (after.voltageDbSpl() - before.voltageDbSpl()) : null,
        mass ? (Double) (after.driver().massG() - before.driver().massG()) : null,
        pair.octavesLower());
  }

  /** The two drivers of a position. */
  private final class Pair {
    private final Driver before;
    private final Driver after;
    private final int position;

    Pair(Driver before, Driver after, int position) {
      this.before = before;
      this.after = after;
      this.position = position;
    }

    /** Whether both have a figure; notes the field of the one that has not. */
    boolean need(Object ofBefore, Object ofAfter, String field) {
      if (ofBefore == null) {
        missing.add("/factory_parts/" + index.replacedBy(position) + "/driver/" + field);
      }
      if (ofAfter == null) {
        missing.add(index.partAt(position) + "/driver/" + field);
      }
      return ofBefore != null && ofAfter != null;
    }

    /** Like is held against like: a limit and a resonance are not the same thing. */
    Double octavesLower() {
      if (before.lowerLimitHz() != null && after.lowerLimitHz() != null) {
        return SideFormulas.OCTAVES_DOWN.at(before.lowerLimitHz(), after.lowerLimitHz());
      }
      return need(before.fsHz(), after.fsHz(), "fs_hz")
          ? (Double) SideFormulas.OCTAVES_DOWN.at(before.fsHz(), after.fsHz())
          : null;
    }
  }
}
