package org.footwell.fitting.comparison;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Run;
import org.footwell.fitting.comparison.sides.ComparedPosition;

/** What a request must keep to beyond the bounds of its fields. */
final class ComparisonRules {

  private ComparisonRules() {}

  static void check(DriverComparisonRequest q, Run run) {
    Set<String> names = new HashSet<>();
    List<ComparedPosition> positions = q.positions();
    for (int i = 0; i < positions.size(); i++) {
      String at = "/positions/" + i;
      ComparedPosition position = positions.get(i);
      if (!names.add(position.name())) {
        run.refuse(CoreFault.DUPLICATE).at(at + "/name").given(position.name());
      }
      check(position, at, run);
    }
    run.requireNoFaults();
  }

  private static void check(ComparedPosition position, String at, Run run) {
    if (position.amplifierBefore() != null) {
      position.amplifierBefore().requireOneDrive(at + "/amplifier_before", run);
      if (position.factory() == null) {
        run.refuse(ComparisonFault.AMPLIFIER_WITHOUT_FACTORY_PART).at(at + "/amplifier_before");
      }
    }
    if (position.amplifierAfter() != null) {
      position.amplifierAfter().requireOneDrive(at + "/amplifier_after", run);
    }
  }
}
