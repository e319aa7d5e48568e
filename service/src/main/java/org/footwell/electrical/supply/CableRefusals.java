package org.footwell.electrical.supply;

import org.footwell.calculation.Phrase;
import org.footwell.calculation.Allowed;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Run;
import org.footwell.electrical.supply.SupplyCableRequest.Branch;
import org.footwell.electrical.supply.SupplyCableRequest.FedAmplifier;
import org.footwell.electrical.supply.SupplyCableRequest.Material;
import org.footwell.electrical.supply.SupplyCableRequest.ReturnPath;

/** What a supply cable cannot be. */
final class CableRefusals {

  /** Conductivities relative to annealed copper that a material may have. */
  private record Range(double least, double most) {}

  /** Annealed copper is 1; the rest is margin for poorer copper, without a source. */
  private static final Range COPPER = new Range(0.9, 1);

  /**
   * At most 15 % of copper by volume (ASTM B566, from memory) around pure aluminium of 0.65:
   * 0.15 + 0.85·0.65 by the law of mixtures. The lower end is margin without a source.
   */
  private static final Range COPPER_CLAD_ALUMINIUM = new Range(0.55, 0.7);

  private CableRefusals() {}

  /** Refuses all that cannot be, at once. */
  static void of(SupplyCableRequest q, Run run) {
    Map<String, Object> loads = new HashMap<>();
    loads.put("current_a", q.currentA());
    loads.put("constant_power", q.constantPower());
    loads.put("branches", q.branches());
    run.exactlyOneOf("", loads);
    if (q.returnPath() == ReturnPath.CABLE && q.bodyOhm() != null) {
      run.refuse(CableFault.BODY_NOT_IN_LOOP).at("/body_ohm").given(q.bodyOhm());
    }
    conductivity(q, run);
    boolean possible = refuseDrop(q.permittedDropV(), q.supplyV(), "", run);
    for (int i = 0; q.branches() != null && i < q.branches().size(); i++) {
      Branch branch = q.branches().get(i);
      String pointer = "/branches/" + i;
      Map<String, Object> load = new HashMap<>();
      load.put("current_a", branch.currentA());
      load.put("constant_power", branch.constantPower());
      run.exactlyOneOf(pointer, load);
      if (possible) {
        refuseDrop(branch.permittedDropV(), q.supplyV() - q.permittedDropV(), pointer, run);
      }
    }
    refuseTwins(q, run);
    refuseAmplifiers(q, run);
    run.requireNoFaults();
  }

  private static void refuseAmplifiers(SupplyCableRequest q, Run run) {
    requireSine(q.amplifier(), "", run);
    if (q.branches() == null) {
      return;
    }
    if (q.amplifier() != null) {
      run.refuse(CableFault.AMPLIFIER_ON_BRANCHES).at("/amplifier").given(Phrase.of(SupplyWords.GROUP));
    }
    for (int i = 0; i < q.branches().size(); i++) {
      requireSine(q.branches().get(i).amplifier(), "/branches/" + i, run);
    }
  }

  private static void requireSine(FedAmplifier amplifier, String pointer, Run run) {
    if (amplifier != null && amplifier.sustainedBass() && amplifier.fullSineA() == null) {
      run.refuse(CoreFault.REQUIRED)
          .at(pointer + "/amplifier/full_sine_a");
    }
  }

  private static void refuseTwins(SupplyCableRequest q, Run run) {
    Set<String> names = new HashSet<>();
    for (int i = 0; q.branches() != null && i < q.branches().size(); i++) {
      String name = q.branches().get(i).name();
      if (!names.add(name)) {
        run.refuse(CoreFault.DUPLICATE).at("/branches/" + i + "/name").given(name);
      }
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

  private static void conductivity(SupplyCableRequest q, Run run) {
    Range range = q.material() == Material.COPPER ? COPPER : COPPER_CLAD_ALUMINIUM;
    if (q.conductivity() < range.least() || q.conductivity() > range.most()) {
      run.refuse(CableFault.CONDUCTIVITY_NOT_OF_MATERIAL)
          .at("/conductivity")
          .given(q.conductivity())
          .allowed(Allowed.between(range.least(), range.most(), ""))
          .with("material", q.material());
    }
  }
}
