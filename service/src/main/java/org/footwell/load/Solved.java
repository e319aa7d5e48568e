package org.footwell.load;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.load.WiringLoadRequest.Coil;

/**
 * A network with the resistance of each of its parts.
 *
 * @param ohm resistance of the whole
 * @param coil the coil, when it is a single one
 * @param inSeries whether the parts are in series or in parallel
 * @param parts none for a single coil
 */
record Solved(double ohm, Coil coil, boolean inSeries, List<Solved> parts) {

  static final Source KIRCHHOFF = Source.of("Kirchhoff's laws: resistances in series and parallel");

  /** Resistance in ohm of two in series. */
  static final Formula.Of2 SERIES =
      Formula.of("load_ohm", "R1 + R2", "ohm", KIRCHHOFF).with("R1", "R2", Double::sum);

  /** Resistance in ohm of two, above 0, in parallel. */
  static final Formula.Of2 PARALLEL =
      Formula.of("load_ohm", "R1·R2/(R1 + R2)", "ohm", KIRCHHOFF)
          .with("R1", "R2", (r1, r2) -> r1 * r2 / (r1 + r2));

  /** Share, of power or of voltage, of a part of R1 ohm in a series group of R ohm. */
  private static final Formula.Of3 SHARE_IN_SERIES =
      Formula.of("share", "share of the group·R1/R", "", KIRCHHOFF)
          .with("share of the group", "R1", "R", (share, r1, r) -> share * r1 / r);

  /** Share of power of a part of R1 ohm in a parallel group of R ohm. */
  private static final Formula.Of3 POWER_IN_PARALLEL =
      Formula.of("power_share", "share of the group·R/R1", "", KIRCHHOFF)
          .with("share of the group", "R1", "R", (share, r1, r) -> share * r / r1);

  /** What a coil takes of the network's power and voltage. */
  record Share(Coil coil, double power, double voltage) {}

  /** Works a network out from the resistance of each coil, above 0. */
  static Solved of(Network<Coil> network, ToDoubleFunction<Coil> ohm, Run run) {
    return network.fold(
        coil -> new Solved(ohm.applyAsDouble(coil), coil, false, List.of()),
        parts -> group(true, SERIES, parts, run),
        parts -> group(false, PARALLEL, parts, run));
  }

  private static Solved group(boolean series, Formula.Of2 two, List<Solved> parts, Run run) {
    double ohm = parts.get(0).ohm();
    for (Solved part : parts.subList(1, parts.size())) {
      ohm = run.apply(two, ohm, part.ohm());
    }
    return new Solved(ohm, null, series, parts);
  }

  /** Shares of the coils from left to right. */
  List<Share> shares(Run run) {
    List<Share> shares = new ArrayList<>();
    spread(1, 1, shares, run);
    return shares;
  }

  private void spread(double power, double voltage, List<Share> into, Run run) {
    if (coil != null) {
      into.add(new Share(coil, power, voltage));
    }
    for (Solved part : parts) {
      if (inSeries) {
        part.spread(
            run.apply(SHARE_IN_SERIES, power, part.ohm, ohm),
            run.apply(SHARE_IN_SERIES, voltage, part.ohm, ohm),
            into,
            run);
      } else {
        part.spread(run.apply(POWER_IN_PARALLEL, power, part.ohm, ohm), voltage, into, run);
      }
    }
  }
}
