package org.footwell.vehicle.chain;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.loudspeaker.Ladder;
import org.footwell.physics.Phasor;

/**
 * One channel from its amplifier to its coils: a source of voltage with its output impedance, the
 * cable, and the branches of the loudspeaker at its end.
 *
 * @param loads what hangs in the network, in the order the branches number it
 * @param cableOhm both conductors
 * @param outputOhm of the amplifier as connected
 */
public record ChannelCircuit(
    List<Load> loads, List<BranchCircuit> branches, double cableOhm, double outputOhm) {

  /**
   * A voice coil or a resistor of a network.
   *
   * @param driver index of its driver in the plan, or −1 for a resistor
   * @param model of that driver, or null
   * @param ratedOhm of this coil or resistor
   */
  public record Load(int driver, DriverModel model, double ratedOhm) {
    Phasor ohm(double f) {
      return model == null ? new Phasor(ratedOhm, 0) : model.coilOhm(f);
    }
  }

  /**
   * The channel at one frequency for 1 V from the source.
   *
   * @param networkOhm impedance of the loudspeaker alone
   * @param terminalOhm what the amplifier meets, with the cable
   * @param terminalV at the amplifier's terminals
   * @param networkV at the loudspeaker's
   * @param volts across each load
   * @param ohm of each load
   */
  @SuppressWarnings("ArrayRecordComponent") // made for every frequency, never compared or kept
  public record State(
      Phasor networkOhm,
      Phasor terminalOhm,
      Phasor terminalV,
      Phasor networkV,
      Phasor[] volts,
      Phasor[] ohm) {

    /** Real power in W that the amplifier gives for 1 V RMS from the source. */
    double terminalW() {
      return terminalV.square() * terminalOhm.re() / terminalOhm.square();
    }

    /** Real power in W in one load for 1 V RMS. */
    double loadW(int load) {
      return volts[load].square() * ohm[load].re() / ohm[load].square();
    }
  }

  State at(double f) {
    Phasor[] ohm = new Phasor[loads.size()];
    for (int i = 0; i < ohm.length; i++) {
      ohm[i] = loads.get(i).ohm(f);
    }
    BranchCircuit.Solved[] solved = new BranchCircuit.Solved[branches.size()];
    Phasor admittance = null;
    for (int b = 0; b < solved.length; b++) {
      solved[b] = branches.get(b).at(f, ohm);
      admittance = b == 0 ? solved[b].admittance() : admittance.plus(solved[b].admittance());
    }
    Phasor network = admittance.inverse();
    Phasor terminal = cableOhm == 0 ? network : network.plus(cableOhm);
    Phasor source = outputOhm == 0 ? terminal : terminal.plus(outputOhm);
    Phasor terminalV = outputOhm == 0 ? Phasor.ONE : terminal.over(source);
    Phasor networkV = network.over(source);
    Phasor[] volts = new Phasor[ohm.length];
    for (int b = 0; b < solved.length; b++) {
      branches.get(b).tree().spread(networkV.times(solved[b].transfer()), ohm, volts);
    }
    return new State(network, terminal, terminalV, networkV, volts, ohm);
  }

  /** Rated load in ohm without the cable: the lowest of the branches, which have a band each. */
  public double ratedOhm() {
    return IntStream.range(0, branches.size()).mapToDouble(this::branchOhm).min().orElseThrow();
  }

  /** Rated load in ohm of one of its branches. */
  double branchOhm(int branch) {
    return branches
        .get(branch)
        .tree()
        .ratedOhm(loads.stream().mapToDouble(Load::ratedOhm).toArray());
  }

  /** Whether the driven coils of a driver get unlike voltages by their rated impedances. */
  boolean unlikeCoils(int driver) {
    Phasor[] rated =
        loads.stream().map(load -> new Phasor(load.ratedOhm(), 0)).toArray(Phasor[]::new);
    Phasor[] volts = new Phasor[rated.length];
    branches.forEach(branch -> branch.tree().spread(Phasor.ONE, rated, volts));
    double[] own =
        IntStream.range(0, rated.length)
            .filter(i -> loads.get(i).driver() == driver)
            .mapToDouble(i -> volts[i].modulus())
            .toArray();
    return Arrays.stream(own).max().orElse(0) > 1.01 * Arrays.stream(own).min().orElse(0);
  }

  /** Power a driver of the plan takes of 1 V by rated impedances, in its own band, W/V². */
  double ratedWPerSquareVolt(int driver) {
    Phasor[] rated =
        loads.stream().map(load -> new Phasor(load.ratedOhm(), 0)).toArray(Phasor[]::new);
    Phasor[] volts = new Phasor[rated.length];
    branches.forEach(branch -> branch.tree().spread(new Phasor(branch.padGain(), 0), rated, volts));
    double watts = 0;
    for (int i = 0; i < rated.length; i++) {
      watts += loads.get(i).driver() == driver ? volts[i].square() / rated[i].re() : 0;
    }
    return watts;
  }

  /**
   * DC resistance in ohm with the cable: infinite where capacitors block all of it, null where it is
   * not known.
   */
  Double dcOhm() {
    double[] dc = new double[loads.size()];
    for (int i = 0; i < dc.length; i++) {
      DriverModel model = loads.get(i).model();
      Double re = model == null ? (Double) loads.get(i).ratedOhm() : model.part().driver().reOhm();
      if (re == null) {
        return null;
      }
      dc[i] = re;
    }
    if (!partsKnown()) {
      return null;
    }
    double admittance = 0;
    for (BranchCircuit branch : branches) {
      double ohm = new Ladder(branch.elements(), f -> Phasor.ONE).dcOhm(branch.tree().ratedOhm(dc));
      admittance += 1 / ohm;
    }
    return 1 / admittance + cableOhm;
  }

  /** Whether no filter or pad of it is only stated. */
  boolean partsKnown() {
    return branches.stream().allMatch(one -> one.stated().isEmpty() && one.padGain() == 1);
  }
}
