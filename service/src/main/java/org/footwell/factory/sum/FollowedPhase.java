package org.footwell.factory.sum;

import java.util.ArrayList;
import java.util.List;

/**
 * Phase without jumps, followed from point to point by the smaller turn.
 *
 * @param degrees at every point
 * @param coarsestDeg the largest turn to a point that still counts
 * @param atHz where that is
 */
record FollowedPhase(List<Double> degrees, double coarsestDeg, double atHz) {

  /**
   * Follows the phase over points of rising frequency in Hz.
   *
   * @param levels dB
   * @param phases degrees, as measured
   */
  static FollowedPhase of(List<Double> frequencies, List<Double> levels, List<Double> phases) {
    List<Double> degrees = new ArrayList<>();
    double highest = levels.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    double coarsest = 0;
    double at = 0;
    for (int i = 0; i < phases.size(); i++) {
      double before = i == 0 ? phases.get(0) : degrees.get(i - 1);
      double turn = Math.IEEEremainder(phases.get(i) - before, 360);
      degrees.add(before + turn);
      if (Math.abs(turn) > coarsest && levels.get(i) > highest + OutputResponse.FALLEN_DB) {
        coarsest = Math.abs(turn);
        at = frequencies.get(i);
      }
    }
    return new FollowedPhase(degrees, coarsest, at);
  }
}
