package org.footwell.vehicle.packages;

import org.footwell.physics.Decibels;

/**
 * An upper bound on channels together: pressures add at most as their moduli, so that the root of the
 * power of a sum is at most the sum of the roots.
 */
final class LoudestTogether {

  private double adding;
  private double apart;

  /** One more, by squares of its pressures in Pa² at 0 dB SPL: what adds by phase, and by power. */
  void add(double addingSquare, double apartSquare) {
    adding += Math.sqrt(addingSquare);
    apart += apartSquare;
  }

  /** How loud all of them are at most where each gives 0 dB SPL, dB SPL. */
  double db() {
    double reference = Decibels.SPL_REFERENCE_PA;
    return Decibels.ofPower((adding * adding + apart) / (reference * reference));
  }
}
