package org.footwell.vehicle.chain;

import java.util.Arrays;
import org.footwell.physics.Phasor;
import org.footwell.physics.PhasorSum;

/** A loudspeaker at one frequency, for 1 V RMS at its terminals. */
final class SolvedLoudspeaker {

  private final Loudspeaker loudspeaker;
  private final DriverModel.At[] drivers;
  private final Phasor[] loadOhm;
  private final Phasor[] volts;
  private final Phasor ohm;

  SolvedLoudspeaker(Loudspeaker loudspeaker, double f) {
    this.loudspeaker = loudspeaker;
    drivers = new DriverModel.At[loudspeaker.drivers().size()];
    Arrays.setAll(drivers, d -> loudspeaker.drivers().get(d).at(f));
    loadOhm = new Phasor[loudspeaker.loads().size()];
    Arrays.setAll(loadOhm, i -> ohm(loudspeaker.loads().get(i)));
    volts = new Phasor[loadOhm.length];
    PhasorSum admittance = new PhasorSum();
    for (BranchCircuit branch : loudspeaker.branches()) {
      BranchCircuit.Solved solved = branch.at(f, loadOhm);
      admittance.add(solved.admittance());
      branch.tree().spread(solved.transfer(), loadOhm, volts);
    }
    ohm = admittance.value().inverse();
  }

  private Phasor ohm(Loudspeaker.Load load) {
    return load.driver() < 0 ? new Phasor(load.ratedOhm(), 0) : drivers[load.driver()].coilOhm();
  }

  /** Impedance of the whole. */
  Phasor ohm() {
    return ohm;
  }

  /** Impedance of each load, ohm. */
  Phasor[] loadOhm() {
    return loadOhm;
  }

  /** Voltage across each load. */
  Phasor[] volts() {
    return volts;
  }

  private boolean drives(int load, int driver) {
    return loudspeaker.loads().get(load).driver() == driver;
  }

  /** Power a driver gets against its rated impedance, W. */
  double heldW(int driver) {
    double watts = 0;
    for (int i = 0; i < volts.length; i++) {
      watts += drives(i, driver) ? volts[i].square() / loudspeaker.loads().get(i).ratedOhm() : 0;
    }
    return watts;
  }

  /** Power that becomes heat in the voice coils of a driver, W. */
  double coilW(int driver) {
    double square = 0;
    for (int i = 0; i < volts.length; i++) {
      square += drives(i, driver) ? volts[i].square() / loadOhm[i].square() : 0;
    }
    return square * loudspeaker.drivers().get(driver).coilDcOhm();
  }

  /** Peak displacement of a driver whose movement is known, mm. */
  double movedMm(int driver) {
    double squares = 0;
    int driven = 0;
    for (int i = 0; i < volts.length; i++) {
      if (drives(i, driver)) {
        squares += volts[i].square();
        driven++;
      }
    }
    double coilV = Math.sqrt(squares / driven);
    double share = coilV == 0 ? 1 : meanV(driver).modulus() / coilV;
    return coilV * drivers[driver].displacementMm(share);
  }

  /** Pressure of a driver that is heard at 1 m in half space, Pa. */
  Phasor pressure(int driver) {
    return drivers[driver].pressure().times(meanV(driver));
  }

  /** Mean voltage over all voice coils of a driver, those left open counted with none. */
  private Phasor meanV(int driver) {
    PhasorSum sum = new PhasorSum();
    for (int i = 0; i < volts.length; i++) {
      if (drives(i, driver)) {
        sum.add(volts[i]);
      }
    }
    return sum.value().times(1.0 / loudspeaker.drivers().get(driver).part().coilCount());
  }
}
