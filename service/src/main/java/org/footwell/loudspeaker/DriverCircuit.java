package org.footwell.loudspeaker;

import org.footwell.parts.Driver;
import org.footwell.physics.Impedance;
import org.footwell.physics.Phasor;
import org.footwell.physics.ThieleSmall;

/**
 * Driver and air behind it as Small's circuit, seen from the terminals: resistance, coil, and motion
 * as an impedance in series with them. With s = j·ω/ωs and Zab the air behind over ρ·c²,
 *
 * <pre>
 *   Ze   = re + coil
 *   Zmot = re·(qms/qes)/(1 + qms·(s + 1/s) + qms·ωs·vas·Zab)     = bl²/(Zm + sd²·ρ·c²·Zab)
 * </pre>
 *
 * since bl² = ωs·mms·re/qes, Zm = j·ω·mms + ωs·mms/qms + mms·ωs²/(j·ω) and sd² = mms·ωs²·vas/(ρ·c²).
 */
public final class DriverCircuit implements Impedance {

  private final double re;
  private final CoilImpedance coil;
  private final double ws;
  private final double qms;
  private final double qes;
  private final double vas;
  private final AirBehind air;

  private DriverCircuit(Driver driver, CoilImpedance coil, AirBehind air) {
    this(
        driver.reOhm(),
        coil,
        2 * Math.PI * driver.fsHz(),
        driver.qms(),
        driver.qes(),
        driver.vasL() == null ? Double.NaN : driver.vasL() / 1000,
        air);
  }

  private DriverCircuit(
      double re, CoilImpedance coil, double ws, double qms, double qes, double vas, AirBehind air) {
    this.re = re;
    this.coil = coil;
    this.ws = ws;
    this.qms = qms;
    this.qes = qes;
    this.vas = vas;
    this.air = air;
  }

  /** A driver in free air; its re, fs, qms and qes are known, and its vas where air is behind it. */
  public static DriverCircuit of(Driver driver) {
    return new DriverCircuit(driver, CoilImpedance.of(driver), AirBehind.FREE);
  }

  /** The same with other air behind it. */
  public DriverCircuit before(AirBehind behind) {
    return new DriverCircuit(re, coil, ws, qms, qes, vas, behind);
  }

  /**
   * The same with only some of several alike voice coils driven: they move all of the mass.
   *
   * @param driven how many of them are, at least 1
   * @param all how many there are
   */
  public DriverCircuit driving(int driven, int all) {
    return new DriverCircuit(re, coil, ws, qms, qes * all / driven, vas, air);
  }

  /** The same with a voice coil that has no inductance, as alignments are stated. */
  DriverCircuit bare() {
    return new DriverCircuit(re, CoilImpedance.none(), ws, qms, qes, vas, air);
  }

  AirBehind air() {
    return air;
  }

  @Override
  public Phasor at(double f) {
    return solved(f).ohm();
  }

  /** The circuit at one frequency in Hz. */
  public Solved solved(double f) {
    double w = 2 * Math.PI * f;
    return new Solved(w, coil.impedance(f).plus(re), motion(w));
  }

  /** The motion as the terminals show it, ohm. */
  private Slope motion(double w) {
    Slope balance = Slope.rising(w, 1 / ws).plus(Slope.rising(w, 1 / ws).inverse());
    Slope load = balance.times(qms).plus(1);
    return air.isFree() ? moving(load) : moving(load.plus(air.impedance(w).times(qms * ws * vas)));
  }

  private Slope moving(Slope load) {
    return load.inverse().times(ThieleSmall.MOTIONAL_OHM.at(re, qms, qes));
  }

  /** Its two impedances in series at one frequency. */
  public final class Solved {

    private final double w;
    private final Slope electrical;
    private final Slope motion;

    private Solved(double w, Slope electrical, Slope motion) {
      this.w = w;
      this.electrical = electrical;
      this.motion = motion;
    }

    /** Both together: what the terminals show. */
    public Phasor ohm() {
      return electrical.plus(motion).value();
    }

    /** Angular frequency. */
    double w() {
      return w;
    }

    /** Voltage of the motion for 1 V from a source of some resistance in ohm. */
    Slope motionV(double sourceOhm) {
      return electrical.plus(motion).plus(sourceOhm).inverse().times(motion);
    }

    /**
     * The normalised high-pass of driver and air behind it for a voltage that stays: what is heard
     * over what would be far above the resonance, the coil's inductance left out, as alignments are
     * stated.
     */
    public Phasor highPass() {
      Slope sound = motion.plus(re).inverse().times(motion).times(air.heard(w));
      return sound.times(Slope.rising(w, qes / ws)).value();
    }
  }

  /**
   * Volume velocity of the cone over the voltage of its motion, sd/bl in m³/(V·s), in air whose ρ·c²
   * is given in Pa.
   */
  double volumeVelocityPerVolt(double airStiffness) {
    return Math.sqrt(ws * vas * qes / (airStiffness * re));
  }
}
