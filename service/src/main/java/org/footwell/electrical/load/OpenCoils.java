package org.footwell.electrical.load;

import static org.footwell.electrical.load.LoadFinding.COIL_LEFT_OPEN;
import static org.footwell.electrical.load.LoadFinding.DRIVER_NOT_CONNECTED;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.physics.Decibels;

/** Says which of the coils listed are left open, and what that does to their driver. */
final class OpenCoils {

  /** By the definitions of Qes = 2π·fs·Mms·re/(Bl)² and of efficiency, ∝ (Bl)²/re. */
  static final Source THIELE_SMALL =
      Source.of(
          "R. H. Small, Direct-Radiator Loudspeaker System Analysis, JAES 20 (1972): Qes and"
              + " reference efficiency");

  /**
   * Qes with k of n like coils over Qes with all n: Bl and re grow as the coils in series do, so
   * (Bl)²/re is proportional to their number; in parallel it is the same.
   */
  private static final Formula.Of2 QES_RATIO =
      Formula.of("qes_ratio", "n/k", "", THIELE_SMALL).with("n", "k", (n, k) -> n / k);

  private OpenCoils() {}

  static void find(List<Coil> listed, Network<Coil> network, Run run) {
    Set<String> used = network.coils().stream().map(Coil::name).collect(Collectors.toSet());
    Map<String, List<Integer>> drivers = new LinkedHashMap<>();
    for (int i = 0; i < listed.size(); i++) {
      drivers.computeIfAbsent(driver(listed.get(i)), d -> new ArrayList<>()).add(i);
    }
    drivers.forEach((driver, coils) -> find(driver, coils, listed, used, run));
  }

  /** A coil without a driver's name is one of its own, whatever others are called. */
  private static String driver(Coil coil) {
    return coil.driver() == null ? "coil " + coil.name() : coil.driver();
  }

  private static void find(
      String driver, List<Integer> coils, List<Coil> listed, Set<String> used, Run run) {
    List<Integer> open = coils.stream().filter(i -> !used.contains(listed.get(i).name())).toList();
    if (open.size() == coils.size()) {
      run.find(DRIVER_NOT_CONNECTED).at(listed.get(open.get(0)).at()).own("driver", driver);
      return;
    }
    int driven = coils.size() - open.size();
    for (int i : open) {
      double ratio = run.apply(QES_RATIO, coils.size(), driven);
      run.find(COIL_LEFT_OPEN)
          .at(listed.get(i).at())
          .value(ratio)
          .own("coil", listed.get(i).name())
          .own("driver", driver)
          .with("used", driven)
          .with("count", coils.size())
          .with("loss", Decibels.ofPower(ratio));
    }
  }
}
