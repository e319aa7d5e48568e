package org.footwell.electrical.load;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

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
  static Solved of(Network<Coil> network, ToDoubleFunction<Coil> ohm, Arithmetic steps) {
    return network.fold(
        coil -> of(coil, ohm.applyAsDouble(coil)),
        parts -> group(true, parts, steps),
        parts -> group(false, parts, steps));
  }

  /** A single coil. */
  static Solved of(Coil coil, double ohm) {
    return new Solved(ohm, coil, false, List.of());
  }

  /** Two or more parts in series, worked out silently. */
  static Solved series(List<Solved> parts) {
    return group(true, parts, Arithmetic.SILENT);
  }

  /** Two or more parts in parallel, worked out silently. */
  static Solved parallel(List<Solved> parts) {
    return group(false, parts, Arithmetic.SILENT);
  }

  private static Solved group(boolean series, List<Solved> parts, Arithmetic steps) {
    Formula.Of2 formula = series ? SERIES : PARALLEL;
    double ohm = parts.get(0).ohm();
    for (int i = 1; i < parts.size(); i++) {
      ohm = steps.apply(formula, ohm, parts.get(i).ohm());
    }
    return new Solved(ohm, null, series, parts);
  }

  /** The network without its resistances, each coil as {@code named} says, from left to right. */
  Network<Coil> network(UnaryOperator<Coil> named) {
    if (coil != null) {
      return Network.leaf(named.apply(coil));
    }
    List<Network<Coil>> networks = new ArrayList<>();
    for (Solved part : parts) {
      networks.add(part.network(named));
    }
    return inSeries ? Network.series(networks) : Network.parallel(networks);
  }

  /** How many groups in series or in parallel it is made of. */
  int groups() {
    int groups = coil != null ? 0 : 1;
    for (Solved part : parts) {
      groups += part.groups();
    }
    return groups;
  }

  /** Shares of the coils from left to right, worked out silently. */
  List<Share> shares() {
    return shares(Arithmetic.SILENT);
  }

  /** Shares of the coils from left to right. */
  List<Share> shares(Arithmetic steps) {
    List<Share> shares = new ArrayList<>();
    spread(1, 1, shares, steps);
    return shares;
  }

  private void spread(double power, double voltage, List<Share> into, Arithmetic steps) {
    if (coil != null) {
      into.add(new Share(coil, power, voltage));
    }
    for (Solved part : parts) {
      if (inSeries) {
        part.spread(
            steps.apply(SHARE_IN_SERIES, power, part.ohm, ohm),
            steps.apply(SHARE_IN_SERIES, voltage, part.ohm, ohm),
            into,
            steps);
      } else {
        part.spread(steps.apply(POWER_IN_PARALLEL, power, part.ohm, ohm), voltage, into, steps);
      }
    }
  }
}
