package org.footwell.electrical.supply;

import static org.footwell.electrical.supply.CableFinding.BEYOND_AMPACITY_TABLE;
import static org.footwell.electrical.supply.CableFinding.BLADE_BREAKING_CAPACITY;
import static org.footwell.electrical.supply.CableFinding.BRANCH_FUSE_PLACE;
import static org.footwell.electrical.supply.CableFinding.CONDUCTOR_TOO_HOT;
import static org.footwell.electrical.supply.CableFinding.COPPER_CLAD;
import static org.footwell.electrical.supply.CableFinding.DROP_HIGH;
import static org.footwell.electrical.supply.CableFinding.EARTH_POINT;
import static org.footwell.electrical.supply.CableFinding.EARTH_RETURN;
import static org.footwell.electrical.supply.CableFinding.FUSES_FOR_58_V;
import static org.footwell.electrical.supply.CableFinding.FUSE_TOO_FAR;
import static org.footwell.electrical.supply.CableFinding.MAIN_FUSE_PLACE;
import static org.footwell.electrical.supply.CableFinding.RULES_FIRST;
import static org.footwell.electrical.supply.CableFinding.SIZE_NOT_STANDARD;

import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.electrical.supply.SupplyCableResult.FuseSeries;
import org.footwell.electrical.supply.SupplyCableResult.SizedBranch;
import org.footwell.electrical.supply.SupplyCableResult.SizedCable;
import org.footwell.parts.Cable;
import org.footwell.parts.ConductorMaterial;
import org.footwell.parts.ReturnPath;
import org.footwell.physics.Conductors;

/** The rules of the trade that hold whatever the numbers are, and those about what was given. */
final class CableRules {

  /** Breaking capacity of blade fuse-links, A (ISO 8820-3, scope). */
  private static final double BLADE_BREAKS_A = 1000;

  /** Voltage the usual fuse-links for road vehicles are made for, V (ISO 8820-3 and -6). */
  private static final double LOW_FUSE_V = 32;

  /** Part of the supply that a feed may lose before it is worth a warning: common practice. */
  private static final double MOST_DROP = 0.1;

  private CableRules() {}

  static void find(SupplyCableRequest q, Sizing.Found found, List<SizedBranch> branches, Run run) {
    fuses(q, found, run);
    drops(q.supplyV(), found, branches, run);
    run.find(q.returnPath() == ReturnPath.BODY ? EARTH_POINT : EARTH_RETURN).at("/return_path");
    LaidCable main = LaidCable.main(q.cable());
    conductor(q.cable(), main, "/cable", run);
    for (int i = 0; q.branches() != null && i < q.branches().size(); i++) {
      Cable branch = q.branches().get(i).cable();
      conductor(branch, main.branch(branch), "/branches/" + i + "/cable", run);
    }
    run.find(RULES_FIRST);
  }

  private static void fuses(SupplyCableRequest q, Sizing.Found found, Run run) {
    double limit = q.fuseDistanceLimitM();
    if (q.fuseDistanceM() != null && q.fuseDistanceM() > limit) {
      run.find(FUSE_TOO_FAR).at("/fuse_distance_m").value(q.fuseDistanceM()).limit(limit);
    } else {
      run.find(MAIN_FUSE_PLACE).at("/fuse_distance_limit_m").limit(limit);
    }
    if (q.branches() != null) {
      run.find(BRANCH_FUSE_PLACE).at("/branches").limit(limit);
    }
    if (q.supplyV() > LOW_FUSE_V) {
      run.find(FUSES_FOR_58_V).at("/supply_v").value(q.supplyV()).limit(LOW_FUSE_V);
    }
    if (mayBeBlade(found.metric()) || mayBeBlade(found.gauge())) {
      run.find(BLADE_BREAKING_CAPACITY).limit(BLADE_BREAKS_A);
    }
  }

  /** Whatever the caller permits: what the main cable loses of the supply, and each branch more. */
  private static void drops(
      double supplyV, Sizing.Found found, List<SizedBranch> branches, Run run) {
    double main = largestDropV(found.metric(), found.gauge());
    drop("", main, supplyV, run);
    for (int i = 0; i < branches.size(); i++) {
      SizedBranch branch = branches.get(i);
      drop("/branches/" + i, main + largestDropV(branch.metric(), branch.gauge()), supplyV, run);
    }
  }

  /** Of the sizes that do. */
  private static double largestDropV(SizedCable metric, SizedCable gauge) {
    return Math.max(metric == null ? 0 : metric.dropV(), gauge == null ? 0 : gauge.dropV());
  }

  private static void drop(String pointer, double dropV, double supplyV, Run run) {
    if (dropV > MOST_DROP * supplyV) {
      run.find(DROP_HIGH)
          .at(pointer + "/permitted_drop_v")
          .value(100 * dropV / supplyV)
          .limit(100 * MOST_DROP)
          .with("end", supplyV - dropV);
    }
  }

  private static boolean mayBeBlade(SizedCable cable) {
    return cable != null
        && cable.fuseSeries() != null
        && cable.fuseSeries() != FuseSeries.BOLT_DOWN;
  }

  /** What there is to say about what one cable says of itself. */
  private static void conductor(Cable cable, LaidCable laid, String at, Run run) {
    if (cable.material() == ConductorMaterial.COPPER_CLAD_ALUMINIUM) {
      run.find(COPPER_CLAD).at(at + "/material").value(cable.conductivity());
    }
    if (cable.areaMm2() != null) {
      size(cable.areaMm2(), at + "/area_mm2", run);
    }
    boolean own = cable.insulationTemperatureC() != null || cable.conductorTemperatureC() != null;
    if (own && laid.conductorC() > laid.insulationC()) {
      run.find(CONDUCTOR_TOO_HOT)
          .at(at + "/insulation_temperature_c")
          .value(laid.conductorC())
          .limit(laid.insulationC());
    }
  }

  private static void size(double areaMm2, String at, Run run) {
    boolean gauge = Gauge.sizes().anyMatch(n -> near(areaMm2, Gauge.areaMm2(n)));
    if (!Conductors.isStandard(areaMm2) && !gauge) {
      run.find(SIZE_NOT_STANDARD).at(at).value(areaMm2);
    }
    if (areaMm2 > Ampacity.LARGEST_MM2) {
      run.find(BEYOND_AMPACITY_TABLE).at(at).value(areaMm2).limit(Ampacity.LARGEST_MM2);
    }
  }

  /** People round areas of gauges to two or three digits. */
  private static boolean near(double a, double b) {
    return Math.abs(a - b) <= 0.01 * b;
  }
}
