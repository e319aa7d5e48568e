package org.footwell.loudspeaker;

import org.footwell.parts.Box;
import org.footwell.parts.Driver;
import org.footwell.parts.LeakyBaffle;
import org.footwell.physics.Phasor;
import org.footwell.physics.ThieleSmall;

/**
 * The air behind a cone: a volume with the losses of fill in it, and beside it a leak and ports. All
 * are acoustic impedances over ρ·c², so that what they do to the driver's impedance needs no air.
 *
 * @param volume apparent volume of air, m³; infinite where the back of the cone is free
 * @param absorption resistance in series with it, s/m³; 0 for none
 * @param leak conductance of all leaks, m³/s; 0 for none
 * @param portMass mass of all ports, s²/m³; infinite for none
 * @param portLoss resistance in series with it, s/m³
 * @param portArea of all ports together, m²; only the speed of the air in them needs it
 * @param leakHeard whether what leaks out reaches the listener, or ends elsewhere
 */
public record AirBehind(
    double volume,
    double absorption,
    double leak,
    double portMass,
    double portLoss,
    double portArea,
    boolean leakHeard) {

  /** Free air, or a baffle whose two sides do not meet. */
  public static final AirBehind FREE =
      new AirBehind(Double.POSITIVE_INFINITY, 0, 0, Double.POSITIVE_INFINITY, 0, 0, true);

  /**
   * A closed volume.
   *
   * @param volume apparent, m³
   * @param w0 angular frequency at which the Qs count
   * @param ql Q of the leaks, or null
   * @param qa Q of the absorption, or null
   */
  public static AirBehind closed(double volume, double w0, Double ql, Double qa) {
    return new AirBehind(
        volume,
        resistance(w0, volume, qa),
        ql == null ? 0 : w0 * volume / ql,
        Double.POSITIVE_INFINITY,
        0,
        0,
        true);
  }

  /** The same, where what leaks out ends elsewhere than at the listener. */
  public AirBehind leakingAway() {
    return new AirBehind(volume, absorption, leak, portMass, portLoss, portArea, false);
  }

  /**
   * A volume with ports that tune it to the angular frequency w0.
   *
   * @param qp Q of the losses in the ports, or null
   * @param portArea of all ports together, m²
   */
  public static AirBehind vented(
      double volume, double w0, Double ql, Double qa, Double qp, double portArea) {
    AirBehind box = closed(volume, w0, ql, qa);
    return new AirBehind(
        volume,
        box.absorption,
        box.leak,
        1 / (w0 * w0 * volume),
        resistance(w0, volume, qp),
        portArea,
        true);
  }

  /** The same with ports of which nothing but the tuning is known. */
  public static AirBehind tuned(double volume, double w0, Double ql, Double qa, Double qp) {
    return vented(volume, w0, ql, qa, qp, Double.NaN);
  }

  /**
   * What a box is to a driver whose vas and fs are known: closed, or vented where it has a tuning; free
   * air without one.
   */
  public static AirBehind of(Driver driver, Box box) {
    if (box == null) {
      return FREE;
    }
    double volumeL = box.volumeL() * box.fill();
    if (box.fbHz() != null) {
      double wb = 2 * Math.PI * box.fbHz();
      return tuned(volumeL / 1000, wb, box.ventedQl(), box.qa(), box.qp());
    }
    return closed(volumeL / 1000, closedW(driver, volumeL), box.ql(), box.qa());
  }

  /** What a door or shelf is to a driver whose vas and fs are known. */
  public static AirBehind of(Driver driver, LeakyBaffle baffle) {
    AirBehind door =
        closed(baffle.volumeL() / 1000, closedW(driver, baffle.volumeL()), baffle.ql(), null);
    return baffle.leakHeard() ? door : door.leakingAway();
  }

  /** Angular frequency of the resonance in a closed volume in litre. */
  private static double closedW(Driver driver, double volumeL) {
    double alpha = ThieleSmall.COMPLIANCE_RATIO.at(driver.vasL(), volumeL);
    return 2 * Math.PI * ThieleSmall.IN_CLOSED_BOX.at(driver.fsHz(), alpha);
  }

  /** What the cone works into at a frequency in Hz, over ρ·c², s/m³. */
  public Phasor impedanceAt(double f) {
    return impedance(2 * Math.PI * f).value();
  }

  /**
   * Where the range of a driver in this air begins, Hz: its resonance, or the tuning of a vented box.
   * Its fs, and where the air is not free its vas, must be known.
   */
  public double resonanceHz(Driver driver) {
    if (isFree()) {
      return driver.fsHz();
    }
    return isVented()
        ? 1 / (2 * Math.PI * Math.sqrt(portMass * volume))
        : closedW(driver, 1000 * volume) / (2 * Math.PI);
  }

  boolean isFree() {
    return Double.isInfinite(volume);
  }

  boolean isVented() {
    return !Double.isInfinite(portMass);
  }

  private static double resistance(double w0, double volume, Double q) {
    return q == null ? 0 : 1 / (q * w0 * volume);
  }

  /** Admittance of the volume, m³/s, at an angular frequency. */
  Slope intoVolume(double w) {
    return Slope.rising(w, volume).inverse().plus(absorption).inverse();
  }

  /** Admittance of the ports, m³/s. */
  Slope intoPorts(double w) {
    return isVented() ? Slope.rising(w, portMass).plus(portLoss).inverse() : Slope.ZERO;
  }

  /** What the cone works into, s/m³. */
  Slope impedance(double w) {
    return isFree() ? Slope.ZERO : intoVolume(w).plus(leak).plus(intoPorts(w)).inverse();
  }

  /** Which part of the cone's air is heard; ports and leaks take their own away from it. */
  Slope heard(double w) {
    if (isFree()) {
      return Slope.ONE;
    }
    Slope heard = leakHeard ? intoVolume(w) : intoVolume(w).plus(leak);
    return impedance(w).times(heard);
  }
}
