package org.footwell.vehicle.chain;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.loudspeaker.Ladder;
import org.footwell.physics.Phasor;

/**
 * What hangs at the end of a speaker cable: drivers, and the branches with their coils and resistors.
 * Two of alike drivers and branches are equal.
 *
 * @param drivers each once
 * @param loads what hangs in the network, in the order the branches number it
 */
public record Loudspeaker(
    List<DriverModel> drivers, List<Load> loads, List<BranchCircuit> branches) {

  public Loudspeaker {
    drivers = List.copyOf(drivers);
    loads = List.copyOf(loads);
    branches = List.copyOf(branches);
  }

  /**
   * A voice coil or a resistor of a network.
   *
   * @param driver index of its driver here, or −1 for a resistor
   * @param ratedOhm of this coil or resistor
   */
  public record Load(int driver, double ratedOhm) {}

  /** It at a frequency in Hz. */
  SolvedLoudspeaker at(double f) {
    return new SolvedLoudspeaker(this, f);
  }

  /** Rated load in ohm: the lowest of the branches, which have a band each. */
  public double ratedOhm() {
    return IntStream.range(0, branches.size()).mapToDouble(this::branchOhm).min().orElseThrow();
  }

  /** Rated load in ohm of one of its branches. */
  double branchOhm(int branch) {
    double[] rated = loads.stream().mapToDouble(Load::ratedOhm).toArray();
    return branches.get(branch).tree().ratedOhm(rated);
  }

  /** Whether the driven coils of a driver get unlike voltages by their rated impedances. */
  boolean unlikeCoils(int driver) {
    Phasor[] rated = ratedOhms();
    Phasor[] volts = new Phasor[rated.length];
    branches.forEach(branch -> branch.tree().spread(Phasor.ONE, rated, volts));
    double[] own =
        IntStream.range(0, rated.length)
            .filter(i -> loads.get(i).driver() == driver)
            .mapToDouble(i -> volts[i].modulus())
            .toArray();
    return Arrays.stream(own).max().orElse(0) > 1.01 * Arrays.stream(own).min().orElse(0);
  }

  /** Power a driver takes of 1 V by rated impedances, in its own band, W/V². */
  double ratedWPerSquareVolt(int driver) {
    Phasor[] rated = ratedOhms();
    Phasor[] volts = new Phasor[rated.length];
    branches.forEach(branch -> branch.tree().spread(new Phasor(branch.padGain(), 0), rated, volts));
    double watts = 0;
    for (int i = 0; i < rated.length; i++) {
      watts += loads.get(i).driver() == driver ? volts[i].square() / rated[i].re() : 0;
    }
    return watts;
  }

  private Phasor[] ratedOhms() {
    return loads.stream().map(load -> new Phasor(load.ratedOhm(), 0)).toArray(Phasor[]::new);
  }

  /** DC resistance in ohm: infinite where capacitors block all of it, null where it is not known. */
  Double dcOhm() {
    double[] dc = new double[loads.size()];
    for (int i = 0; i < dc.length; i++) {
      Load load = loads.get(i);
      Double re =
          load.driver() < 0
              ? (Double) load.ratedOhm()
              : drivers.get(load.driver()).part().driver().reOhm();
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
    return 1 / admittance;
  }

  /** Whether no filter or pad of it is only stated. */
  boolean partsKnown() {
    return branches.stream().allMatch(one -> one.stated().isEmpty() && one.padGain() == 1);
  }

  /** Whether the sensitivities of all its drivers are known. */
  boolean heard() {
    return drivers.stream().allMatch(DriverModel::heard);
  }

  /** Whether the impedance of all its drivers is known over frequency. */
  boolean impedanceKnown() {
    return drivers.stream().allMatch(DriverModel::impedanceKnown);
  }
}
