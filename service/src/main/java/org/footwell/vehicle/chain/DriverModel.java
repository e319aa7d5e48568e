package org.footwell.vehicle.chain;

import org.footwell.acoustic.enclosure.PortTuning;
import org.footwell.loudspeaker.AirBehind;
import org.footwell.loudspeaker.DriverCircuit;
import org.footwell.loudspeaker.Radiator;
import org.footwell.parts.Box;
import org.footwell.parts.BoxPort;
import org.footwell.parts.Driver;
import org.footwell.parts.Filter;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.plan.Enclosure;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.physics.Air;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;
import org.footwell.physics.Piston;
import org.footwell.physics.SensitivityBases;

/**
 * A driver in its place: what one of its voice coils is to the network, and what it makes of the
 * voltage there.
 *
 * <p>With fs, qms, qes and re it is Small's circuit, in air of its own or with its vas in a box. Without
 * them a coil is a resistor of its rated impedance, and the sound is flat above the lowest frequency
 * stated and falls below it like a Butterworth filter of the second order.
 */
public final class DriverModel {

  private final PlannedPart part;
  private final double density;
  private final DriverCircuit circuit;
  private final Radiator radiator;
  private final AnalogFilter ownHighPass;
  private final Double pressurePerVolt;
  private final double movedBy;
  private final AirBehind air;

  private DriverModel(PlannedPart part, Enclosure enclosure, int driven, double temperatureC) {
    Driver driver = part.driver();
    this.part = part;
    density = Air.DENSITY.at(temperatureC);
    air = airBehind(driver, enclosure, temperatureC);
    circuit =
        circuitKnown(driver)
            ? DriverCircuit.of(driver).driving(driven, part.coilCount()).before(air)
            : null;
    radiator =
        circuit != null && driver.vasL() != null && driver.sdCm2() != null
            ? Radiator.of(circuit, driver.sdCm2(), temperatureC)
            : null;
    ownHighPass = circuit == null ? ownHighPass(driver) : null;
    pressurePerVolt = pressurePerVolt(part);
    // Coils alike that are driven alike move as one of their power together.
    movedBy = Math.sqrt(driven);
  }

  /**
   * A driver of a part in its enclosure, or in free air without one.
   *
   * @param driven how many of its voice coils are driven, at least 1
   */
  public static DriverModel of(
      PlannedPart part, Enclosure enclosure, int driven, double temperatureC) {
    return new DriverModel(part, enclosure, driven, temperatureC);
  }

  /** Whether impedance and movement follow from its circuit. */
  static boolean circuitKnown(Driver driver) {
    return driver.reOhm() != null
        && driver.fsHz() != null
        && driver.qms() != null
        && driver.qes() != null;
  }

  private static AirBehind airBehind(Driver driver, Enclosure enclosure, double temperatureC) {
    if (enclosure == null || driver.vasL() == null || driver.fsHz() == null) {
      return AirBehind.FREE;
    }
    if (enclosure.baffle() != null) {
      return AirBehind.of(driver, enclosure.baffle());
    }
    return enclosure.closed() == null
        ? vented(enclosure.vented(), Air.SPEED_OF_SOUND.at(temperatureC))
        : AirBehind.of(driver, enclosure.closed());
  }

  private static AirBehind vented(Enclosure.Vented vented, double c) {
    Box box = vented.box();
    BoxPort port = vented.port();
    double fb =
        box.fbHz() == null ? PortTuning.tuningHz(port, box.volumeL(), c) : (double) box.fbHz();
    return AirBehind.vented(
        box.volumeL() / 1000,
        2 * Math.PI * fb,
        box.ventedQl(),
        box.qa(),
        box.qp(),
        port.count() * port.areaM2());
  }

  private static AnalogFilter ownHighPass(Driver driver) {
    Double lowest = driver.lowerLimitHz() == null ? driver.fsHz() : driver.lowerLimitHz();
    return lowest == null ? null : Filter.of(Filter.Kind.BUTTERWORTH, 2, lowest).highPass();
  }

  /**
   * Pa RMS at 1 m in half space for 1 V on every voice coil. A watt of the whole driver is the same
   * voltage on each coil, however they are joined.
   */
  private static Double pressurePerVolt(PlannedPart part) {
    Sensitivity sensitivity = part.driver().sensitivity();
    if (sensitivity == null) {
      return null;
    }
    double watts =
        sensitivity.basis() == Sensitivity.Basis.ONE_WATT
            ? 1
            : SensitivityBases.REFERENCE_V
                * SensitivityBases.REFERENCE_V
                / part.sensitivityLoadOhm();
    double coilV = Math.sqrt(watts * part.driver().ratedOhm() / part.coilCount());
    return Decibels.SPL_REFERENCE_PA * Decibels.toAmplitude(sensitivity.levelDbSpl()) / coilV;
  }

  /** The part it is. */
  public PlannedPart part() {
    return part;
  }

  /** It at a frequency in Hz. */
  At at(double f) {
    return new At(f);
  }

  /** Whether its sensitivity is known. */
  public boolean heard() {
    return pressurePerVolt != null;
  }

  /** Whether it is known how far its cone moves. */
  public boolean movementKnown() {
    return radiator != null || (part.driver().sdCm2() != null && heard());
  }

  /** Whether its impedance over frequency is known. */
  public boolean impedanceKnown() {
    return circuit != null;
  }

  /**
   * Level in dB SPL at 1 m in half space with 2.83 V on the load its sensitivity is stated for, nothing
   * before it; it must be {@link #heard}.
   */
  public double levelDbSpl(double f) {
    return part.voltageDbSpl() + Decibels.ofAmplitude(at(f).highPass().modulus());
  }

  /** The driver at one frequency. */
  final class At {

    private final double f;

    /** Null where its circuit is not known. */
    private final DriverCircuit.Solved solved;

    private At(double f) {
      this.f = f;
      solved = circuit == null ? null : circuit.solved(f);
    }

    /** Impedance of one voice coil, ohm. */
    Phasor coilOhm() {
      return solved == null ? new Phasor(part.driver().ratedOhm(), 0) : solved.ohm();
    }

    /**
     * Pressure in Pa RMS at 1 m in half space for a mean of 1 V over all its voice coils; it must be
     * {@link #heard}.
     */
    Phasor pressure() {
      return highPass().times(pressurePerVolt);
    }

    /** Its own high-pass with the enclosure, normalised. */
    private Phasor highPass() {
      if (solved != null) {
        return solved.highPass();
      }
      return ownHighPass == null ? Phasor.ONE : ownHighPass.at(f);
    }

    /**
     * Peak of the cone's displacement in mm for 1 V RMS on each driven coil; its movement must be
     * known.
     *
     * @param meanV mean over all coils for that volt
     */
    double displacementMm(double meanV) {
      if (radiator != null) {
        return movedBy * radiator.displacementMm(solved);
      }
      double level = Decibels.ofAmplitude(pressure().modulus() * meanV / Decibels.SPL_REFERENCE_PA);
      return Piston.DISPLACEMENT_OF_LEVEL.at(f, part.driver().sdCm2(), level, density);
    }
  }

  /** DC resistance of one voice coil, ohm: that of the data sheet, or the rated impedance. */
  double coilDcOhm() {
    Driver driver = part.driver();
    return driver.reOhm() == null ? driver.ratedOhm() : driver.reOhm();
  }

  /** The lowest frequency it plays by itself, Hz: as stated, else its resonance in its place. */
  public double lowestHz() {
    Driver driver = part.driver();
    if (driver.lowerLimitHz() != null) {
      return driver.lowerLimitHz();
    }
    if (driver.fsHz() == null) {
      return 20;
    }
    return air.resonanceHz(driver);
  }
}
