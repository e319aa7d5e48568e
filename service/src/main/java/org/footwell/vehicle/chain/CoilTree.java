package org.footwell.vehicle.chain;

import java.util.List;
import org.footwell.electrical.load.Network;
import org.footwell.physics.Phasor;
import org.footwell.physics.PhasorSum;

/**
 * Voice coils and resistors in series and in parallel, solved at one frequency.
 *
 * @param leaf which load it is, or −1 for a group
 * @param inSeries how the parts of a group are joined
 * @param parts none for a single load
 */
public record CoilTree(int leaf, boolean inSeries, List<CoilTree> parts) {

  /** The tree of a network whose leaves are numbered. */
  public static CoilTree of(Network<Integer> network) {
    return network.fold(
        leaf -> new CoilTree(leaf, false, List.of()),
        parts -> new CoilTree(-1, true, List.copyOf(parts)),
        parts -> new CoilTree(-1, false, List.copyOf(parts)));
  }

  /** Impedance of the whole in ohm from those of the loads. */
  Phasor ohm(Phasor[] loads) {
    if (leaf >= 0) {
      return loads[leaf];
    }
    PhasorSum sum = new PhasorSum();
    for (CoilTree part : parts) {
      sum.add(inSeries ? part.ohm(loads) : part.ohm(loads).inverse());
    }
    return inSeries ? sum.value() : sum.value().inverse();
  }

  /** Puts what each load gets of a voltage across the whole where it belongs. */
  void spread(Phasor voltage, Phasor[] loads, Phasor[] into) {
    if (leaf >= 0) {
      into[leaf] = voltage;
      return;
    }
    Phasor current = inSeries ? voltage.over(ohm(loads)) : Phasor.ZERO;
    for (CoilTree part : parts) {
      part.spread(inSeries ? current.times(part.ohm(loads)) : voltage, loads, into);
    }
  }

  /** The rated load in ohm from that of each load. */
  double ratedOhm(double[] loads) {
    if (leaf >= 0) {
      return loads[leaf];
    }
    double sum = 0;
    for (CoilTree part : parts) {
      sum += inSeries ? part.ratedOhm(loads) : 1 / part.ratedOhm(loads);
    }
    return inSeries ? sum : 1 / sum;
  }
}
