package org.footwell.factory.sum;

import java.util.ArrayList;
import java.util.List;
import org.footwell.physics.Phasor;
import org.footwell.signal.MinimumPhase;
import org.footwell.signal.Spectrum;

/**
 * What the phase of a measured response does beside what its magnitude asks for: a delay, and what
 * all-pass filters turn.
 *
 * @param delayMs constant delay, ms
 * @param allPassHz where the rest turns fastest, Hz; null if it turns by less than a right angle
 */
record ExcessPhase(double delayMs, Double allPassHz) {

  private static final int SIZE = 1 << 16;

  /** Below this against the highest level the phase is not looked at. */
  private static final double WEAK_DB = -15;

  /** How far the level may fall beyond the ends, in natural units: 104 dB. */
  private static final double MOST_FALL = 12;

  private static final double RIGHT_ANGLE_DEG = 90;

  static ExcessPhase of(OutputResponse response, double lowHz, double highHz) {
    double rate = 2.2 * highHz;
    Spectrum minimum = MinimumPhase.of(logMagnitude(response, lowHz, highHz, rate));
    List<Double> hz = new ArrayList<>();
    List<Double> excess = new ArrayList<>();
    collect(response, minimum, new double[] {lowHz, highHz, rate}, hz, excess);
    if (hz.size() < 6) {
      return new ExcessPhase(0, null);
    }
    double delay = delayMs(hz, excess);
    return new ExcessPhase(delay, turn(hz, excess, delay));
  }

  private static double[] logMagnitude(
      OutputResponse response, double lowHz, double highHz, double rate) {
    double[] logs = new double[SIZE / 2 + 1];
    double lowest = Math.log(modulus(response, lowHz));
    double lowSlope = (Math.log(modulus(response, lowHz * 1.26)) - lowest) / Math.log(1.26);
    double highest = Math.log(modulus(response, highHz));
    double highSlope = (highest - Math.log(modulus(response, highHz / 1.26))) / Math.log(1.26);
    // Beyond the ends the slope of the last third of an octave goes on.
    for (int k = 0; k < logs.length; k++) {
      double f = Math.max(k, 1) * rate / SIZE;
      if (f < lowHz) {
        logs[k] = lowest + Math.max(-MOST_FALL, lowSlope * Math.log(f / lowHz));
      } else if (f > highHz) {
        logs[k] = highest + Math.max(-MOST_FALL, highSlope * Math.log(f / highHz));
      } else {
        logs[k] = Math.log(modulus(response, f));
      }
    }
    return logs;
  }

  private static double modulus(OutputResponse response, double f) {
    return Math.max(1e-9, response.at(f).modulus());
  }

  /** Frequencies where the level is high, and the unwrapped excess there in degrees. */
  private static void collect(
      OutputResponse response,
      Spectrum minimum,
      double[] range,
      List<Double> hz,
      List<Double> excess) {
    List<Double> all = new ArrayList<>();
    double highest = 0;
    // Close enough for the phase of some ms to be followed: twice as close as it turns half round.
    for (double f = range[0]; f <= range[1]; f += Math.min(f * 0.0293, 20)) {
      all.add(f);
      highest = Math.max(highest, response.at(f).modulus());
    }
    double least = highest * Math.pow(10, WEAK_DB / 20);
    double before = 0;
    for (double f : all) {
      Phasor here = response.at(f);
      if (here.modulus() < least) {
        continue;
      }
      int k = (int) Math.round(f * SIZE / range[2]);
      double raw = here.phaseDeg() - Math.toDegrees(Math.atan2(minimum.im(k), minimum.re(k)));
      double value = hz.isEmpty() ? raw : raw - 360 * Math.rint((raw - before) / 360);
      hz.add(f);
      excess.add(value);
      before = value;
    }
  }

  /** Median slope of the upper half of the band: there all-pass filters far below turn little. */
  private static double delayMs(List<Double> hz, List<Double> excess) {
    double middle = Math.sqrt(hz.get(0) * hz.get(hz.size() - 1));
    List<Double> slopes = new ArrayList<>();
    for (int i = 1; i < hz.size(); i++) {
      if (hz.get(i) >= middle) {
        double turn = excess.get(i) - excess.get(i - 1);
        slopes.add(-turn / 360 / (hz.get(i) - hz.get(i - 1)) * 1000);
      }
    }
    slopes.sort(Double::compare);
    return slopes.isEmpty() ? 0 : slopes.get(slopes.size() / 2);
  }

  /** Where the excess less the delay turns fastest on a logarithmic axis, or null. */
  private static Double turn(List<Double> hz, List<Double> excess, double delayMs) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    double fastest = 0;
    double at = 0;
    double before = 0;
    for (int i = 0; i < hz.size(); i++) {
      double rest = excess.get(i) + 360 * delayMs / 1000 * hz.get(i);
      least = Math.min(least, rest);
      most = Math.max(most, rest);
      if (i > 0) {
        double speed = Math.abs(rest - before) / Math.log(hz.get(i) / hz.get(i - 1));
        if (speed > fastest) {
          fastest = speed;
          at = Math.sqrt(hz.get(i) * hz.get(i - 1));
        }
      }
      before = rest;
    }
    return most - least > RIGHT_ANGLE_DEG ? (Double) at : null;
  }
}
