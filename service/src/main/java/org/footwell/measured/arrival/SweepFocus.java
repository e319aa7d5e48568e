package org.footwell.measured.arrival;

import java.util.List;
import java.util.Objects;
import org.footwell.calculation.Source;
import org.footwell.signal.PassBand;

/**
 * How much longer than stated the sweep lasted that was played. One that lasted δ longer delays a
 * frequency by δ·ln(f/f1)/ln(f2/f1) against the stated one, which spreads a pulse in time, by the
 * same δ in every recording of a measurement. So does a clock of the recorder that is fast by e,
 * with δ = e·T. It is found by undoing it: with the right δ all responses are most compact.
 *
 * @param longerS δ, s
 * @param uncertaintyS how far δ may be off, s; covers nineteen of twenty cases or more, measured, see
 *     the method page
 */
record SweepFocus(double longerS, double uncertaintyS) {

  static final Source DISPERSION =
      Source.of(
          "A. Farina, 108th AES Convention (2000): instant of a frequency in an exponential sweep,"
              + " T·ln(f/f1)/ln(f2/f1); differentiated by T");

  /** Lengths looked at, s; a pulse of a tweeter is half as high a millisecond off. */
  private static final double FURTHEST_S = 0.010;

  private static final double STEP_S = 0.0005;

  /** So much more compact is no chance, even among strong reflections. */
  private static final double SHARPER = 1.2;

  /** So many responses tell it. */
  private static final int ENOUGH = 8;

  /** Of the least uncertainty, what more recordings do not take away: they err alike. */
  private static final double ALIKE = 0.5;

  /** Times its uncertainty from which on a length is another: chance does not reach it in the trials. */
  private static final double CLEARLY = 2;

  /** Whether the length is another than stated, beyond doubt. */
  boolean otherLength() {
    return Math.abs(longerS) > CLEARLY * uncertaintyS;
  }

  /** How much more than a low frequency a higher one is delayed, s. */
  static double apartS(double longerS, double lowHz, double highHz, double logRatio) {
    return Math.abs(longerS) * Math.log(highHz / lowHz) / logRatio;
  }

  /**
   * Looks for it.
   *
   * @param logRatio natural logarithm of the sweep's end over its start
   * @return null where nothing plays high enough to tell
   */
  static SweepFocus of(List<double[]> responses, double logRatio, PassBand range, double rateHz) {
    List<DispersedPulse> pulses =
        responses.stream()
            .map(response -> DispersedPulse.of(response, range, rateHz))
            .filter(Objects::nonNull)
            .limit(ENOUGH)
            .toList();
    double start = start(pulses, logRatio);
    double sum = 0;
    double weights = 0;
    double squares = 0;
    double least = Double.POSITIVE_INFINITY;
    int told = 0;
    for (DispersedPulse pulse : pulses) {
      DispersedPulse.Slope slope = pulse.sharpest(start);
      if (slope != null) {
        double weight = 1 / (slope.uncertaintyS() * slope.uncertaintyS());
        weights += weight;
        sum += weight * slope.slopeS();
        squares += weight * slope.slopeS() * slope.slopeS();
        least = Math.min(least, slope.uncertaintyS());
        told++;
      }
    }
    if (told == 0) {
      return null;
    }
    double mean = sum / weights;
    // Recordings that disagree by more than they may make all of them less sure.
    double scatter = told < 2 ? 1 : Math.max(1, (squares - mean * sum) / (told - 1));
    double uncertainty = Math.max(ALIKE * least, Math.sqrt(scatter / weights));
    return new SweepFocus(logRatio * mean, logRatio * uncertainty);
  }

  /** Where the responses are most compact, roughly, as a slope in s: as stated unless clearly elsewhere. */
  private static double start(List<DispersedPulse> pulses, double logRatio) {
    double asStated = compactness(pulses, 0);
    double start = 0;
    double most = asStated * SHARPER;
    int steps = (int) Math.round(FURTHEST_S / STEP_S);
    for (int i = -steps; i <= steps; i++) {
      double slope = i * STEP_S / logRatio;
      double there = compactness(pulses, slope);
      if (there > most) {
        most = there;
        start = slope;
      }
    }
    return start;
  }

  private static double compactness(List<DispersedPulse> pulses, double slope) {
    return pulses.stream().mapToDouble(pulse -> pulse.compactness(slope)).sum();
  }
}
