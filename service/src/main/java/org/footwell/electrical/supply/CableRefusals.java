package org.footwell.electrical.supply;

import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.electrical.supply.SupplyCableRequest.Branch;
import org.footwell.parts.Cable;
import org.footwell.parts.ReturnPath;

/** What a supply cable cannot be. */
final class CableRefusals {

  private static final Phrase SIZES =
      Phrase.of(SupplyWords.INSTALLED_SIZES).own("least", Double.toString(Ampacity.SMALLEST_MM2));

  private CableRefusals() {}

  /** Refuses all that cannot be, at once. */
  static void of(SupplyCableRequest q, Run run) {
    if (q.returnPath() == ReturnPath.CABLE && q.bodyOhm() != null) {
      run.refuse(CableFault.BODY_NOT_IN_LOOP).at("/body_ohm").given(q.bodyOhm());
    }
    cable(q.cable(), "", run);
    requireSine(q.sustainedBass(), q.fullSineA(), "", run);
    boolean possible = refuseDrop(q.permittedDropV(), q.supplyV(), "", run);
    for (int i = 0; q.branches() != null && i < q.branches().size(); i++) {
      Branch branch = q.branches().get(i);
      String pointer = "/branches/" + i;
      cable(branch.cable(), pointer, run);
      requireSine(branch.sustainedBass(), branch.fullSineA(), pointer, run);
      if (possible) {
        refuseDrop(branch.permittedDropV(), q.supplyV() - q.permittedDropV(), pointer, run);
      }
    }
    run.requireNoFaults();
  }

  private static void cable(Cable cable, String pointer, Run run) {
    cable.requirePossible(pointer + "/cable", run);
    if (cable.areaMm2() != null && cable.areaMm2() < Ampacity.SMALLEST_MM2) {
      run.refuse(CoreFault.NOT_ALLOWED)
          .at(pointer + "/cable/area_mm2")
          .given(cable.areaMm2())
          .allowed(SIZES);
    }
  }

  private static void requireSine(boolean sustained, Double fullSineA, String pointer, Run run) {
    if (sustained && fullSineA == null) {
      run.refuse(CoreFault.REQUIRED).at(pointer + "/full_sine_a");
    }
  }

  private static boolean refuseDrop(double permitted, double supply, String at, Run run) {
    if (permitted == 0) {
      run.refuse(CableFault.PERMITTED_DROP_ZERO).at(at + "/permitted_drop_v").given(permitted);
    } else if (permitted >= supply) {
      run.refuse(CableFault.PERMITTED_DROP_ABOVE_SUPPLY)
          .at(at + "/permitted_drop_v")
          .given(permitted)
          .with("supply", supply)
          .allowed(Allowed.aboveAndBelow(0, supply, "V"));
    }
    return permitted > 0 && permitted < supply;
  }
}
