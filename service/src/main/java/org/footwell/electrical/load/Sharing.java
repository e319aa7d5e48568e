package org.footwell.electrical.load;

import static org.footwell.electrical.load.LoadFinding.UNEVEN_DRIVERS;
import static org.footwell.electrical.load.LoadFinding.UNEVEN_SHARING;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.electrical.load.Evenness.Portion;
import org.footwell.electrical.load.Solved.Share;

/** Whether those who share the power of a band take the same: its coils, and its drivers. */
final class Sharing {

  private Sharing() {}

  /** Whether both the coils and the drivers take the same power; warns if not. */
  static boolean isEven(List<Share> coils, Run run) {
    boolean even = isEven(Evenness.portions(coils), UNEVEN_SHARING, run);
    List<Portion> drivers = drivers(coils);
    // Drivers of one coil each are said as coils.
    return drivers.size() < coils.size() ? isEven(drivers, UNEVEN_DRIVERS, run) && even : even;
  }

  /** The coils of each driver added up; a coil without a driver is one of its own. */
  private static List<Portion> drivers(List<Share> coils) {
    Map<String, Double> drivers = new LinkedHashMap<>();
    List<Portion> all = new ArrayList<>();
    for (Share share : coils) {
      if (share.coil().driver() == null) {
        all.add(new Portion(share.coil().name(), share.power()));
      } else {
        drivers.merge(share.coil().driver(), share.power(), Double::sum);
      }
    }
    drivers.forEach((name, power) -> all.add(new Portion(name, power)));
    return all;
  }

  private static boolean isEven(List<Portion> portions, LoadFinding uneven, Run run) {
    Evenness evenness = Evenness.of(portions);
    if (evenness.even()) {
      return true;
    }
    run.find(uneven)
        .at(NetworkReader.NETWORK)
        .value(100 * evenness.most().power())
        .limit(100.0 / portions.size())
        .own("most", evenness.most().name())
        .own("least", evenness.least().name())
        .with("least_percent", 100 * evenness.least().power())
        .with(
            "shares",
            portions.stream()
                .map(
                    each ->
                        Phrase.of(NetworkWords.SHARE)
                            .own("name", each.name())
                            .with("percent", 100 * each.power()))
                .toList());
    return false;
  }
}
