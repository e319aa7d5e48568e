package org.footwell.vehicle.chain;

import org.footwell.acoustic.enclosure.radiator.CabinCurve;
import org.footwell.parts.Cabin;
import org.footwell.physics.CabinGain;
import org.footwell.physics.Phasor;

/**
 * From a driver to a listener: the distance law up to the critical distance, what the cabin adds
 * without a phase, and the time the sound takes. A measured table replaces distance law and gain.
 */
public final class Way {

  private final double distanceM;
  private final double spread;
  private final CabinCurve cabin;
  private final double delayS;

  public Way(double distanceM, Cabin cabin, CabinCurve curve, double speed) {
    this.distanceM = distanceM;
    this.cabin = curve;
    spread =
        cabin.transfer() == null ? 1 / CabinGain.countedM(distanceM, cabin.criticalDistanceM()) : 1;
    delayS = distanceM / speed;
  }

  double distanceM() {
    return distanceM;
  }

  double delayMs() {
    return 1000 * delayS;
  }

  /** Pressure at the listener over that at 1 m in half space, at a frequency in Hz. */
  Phasor at(double f) {
    double gain = spread * Math.pow(10, cabin.gainDb(f) / 20);
    return Phasor.ofPolar(gain, -360 * f * delayS);
  }
}
