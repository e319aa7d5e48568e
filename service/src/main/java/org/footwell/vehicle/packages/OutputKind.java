package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.List;
import org.footwell.electrical.amplifier.SineSource;
import org.footwell.parts.Rails;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.vehicle.reading.PlannedSource;

/**
 * A kind of output a channel can hang on.
 *
 * @param number its place among all kinds of all amplifiers
 * @param outputs index of the alike outputs of its amplifier
 * @param source one of them, or two bridged
 * @param leastOhm smallest rated load as connected
 * @param outputOhm output impedance as connected
 */
record OutputKind(
    int number,
    AmplifierChoice amplifier,
    int outputs,
    boolean bridged,
    SineSource source,
    double leastOhm,
    double outputOhm) {

  /** How many outputs one channel takes. */
  int perChannel() {
    return bridged ? 2 : 1;
  }

  /** All kinds of some amplifiers; bridged only where its maker says what that bears or gives. */
  static List<OutputKind> of(List<AmplifierChoice> amplifiers) {
    List<OutputKind> kinds = new ArrayList<>();
    for (AmplifierChoice amplifier : amplifiers) {
      List<PlannedAmplifier.Outputs> all = amplifier.planned().outputs();
      for (int o = 0; o < all.size(); o++) {
        kinds.add(kind(kinds.size(), amplifier, o, false));
        if (mayBridge(all.get(o))) {
          kinds.add(kind(kinds.size(), amplifier, o, true));
        }
      }
    }
    return kinds;
  }

  private static OutputKind kind(int number, AmplifierChoice amplifier, int o, boolean bridged) {
    PlannedAmplifier.Outputs outputs = amplifier.planned().outputs().get(o);
    Double ohm = outputs.outputOhm();
    return new OutputKind(
        number,
        amplifier,
        o,
        bridged,
        PlannedSource.of(outputs, bridged, amplifier.planned().supplyRegulated()),
        least(outputs, bridged),
        ohm == null ? 0 : bridged ? 2 * ohm : ohm);
  }

  /** As the review has it; an output of the plan that states none takes any load. */
  private static double least(PlannedAmplifier.Outputs outputs, boolean bridged) {
    Double allowed = outputs.allowedOhm(bridged);
    return allowed == null ? 0 : allowed;
  }

  private static boolean mayBridge(PlannedAmplifier.Outputs outputs) {
    boolean stated = outputs.minimumBridgedOhm() != null || outputs.bridgedRatings() != null;
    boolean already =
        outputs.rails() != null
            ? outputs.rails().kind() == Rails.Kind.SINGLE_SUPPLY_BRIDGE
            : outputs.ratings().singleSupplyBridge();
    return stated && !already && outputs.outputCount() > 1;
  }
}
