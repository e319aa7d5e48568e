package org.footwell.measured.sum;

import org.footwell.measured.response.Gate;
import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;
import org.footwell.signal.GatedSpectrum;
import org.footwell.signal.Spectrum;

/** Both channels at one microphone position, on the points of the band. */
final class PairOfResponses {

  private final Phasor[] lower;
  private final Phasor[] upper;
  private final double weight;
  private final double lengthS;
  private final double[] aboveNoiseDb;

  private PairOfResponses(
      Phasor[] lower, Phasor[] upper, double weight, double lengthS, double[] aboveNoiseDb) {
    this.lower = lower;
    this.upper = upper;
    this.weight = weight;
    this.lengthS = lengthS;
    this.aboveNoiseDb = aboveNoiseDb;
  }

  /**
   * Gates and transforms what one position heard.
   *
   * @param low impulse response of the lower channel
   * @param high of the upper
   * @param gate around the strongest samples of both
   * @param weight of the position
   * @param frequencies points of the band, Hz
   */
  static PairOfResponses of(
      double[] low, double[] high, double rate, Gate gate, double weight, double[] frequencies) {
    int first = Math.min(GatedSpectrum.strongest(low), GatedSpectrum.strongest(high));
    int last = Math.max(GatedSpectrum.strongest(low), GatedSpectrum.strongest(high));
    // One gate for both, or their phases could not be compared.
    double before = gate.beforeMs() / 1000;
    double after = gate.afterMs() / 1000 + (last - first) / rate;
    GatedSpectrum lows = GatedSpectrum.of(low, rate, first, before, after);
    GatedSpectrum highs = GatedSpectrum.of(high, rate, first, before, after);
    double middle = first - lows.startSample();
    double[] above = {aboveNoise(lows, rate, frequencies), aboveNoise(highs, rate, frequencies)};
    return new PairOfResponses(
        at(lows.spectrum(), rate, frequencies, middle),
        at(highs.spectrum(), rate, frequencies, middle),
        weight,
        Math.min(lows.lengthS(), highs.lengthS()),
        above);
  }

  /**
   * The spectrum between its bins, counted from a sample near the sound: from there on it turns
   * little from bin to bin, so a straight line does.
   */
  private static Phasor[] at(
      Spectrum spectrum, double rate, double[] frequencies, double fromSample) {
    Phasor[] values = new Phasor[frequencies.length];
    for (int i = 0; i < values.length; i++) {
      double bin = frequencies[i] * spectrum.size() / rate;
      int below = (int) bin;
      double share = bin - below;
      values[i] =
          turned(spectrum, below, fromSample)
              .times(1 - share)
              .plus(turned(spectrum, below + 1, fromSample).times(share));
    }
    return values;
  }

  private static Phasor turned(Spectrum spectrum, int bin, double fromSample) {
    double angle = 2 * Math.PI * bin * fromSample / spectrum.size();
    return new Phasor(spectrum.re(bin), spectrum.im(bin))
        .times(new Phasor(Math.cos(angle), Math.sin(angle)));
  }

  private static double aboveNoise(GatedSpectrum gated, double rate, double[] frequencies) {
    double sound = 0;
    double noise = 0;
    for (double f : frequencies) {
      int bin = (int) Math.round(f * gated.spectrum().size() / rate);
      sound += gated.spectrum().power(bin);
      noise += gated.noise()[bin];
    }
    return Decibels.ofPower(sound / Math.max(noise, 1e-12 * sound));
  }

  double weight() {
    return weight;
  }

  double lengthS() {
    return lengthS;
  }

  /** How far the sound of a channel, 0 or 1, stands above the noise in the band, dB. */
  double aboveNoiseDb(int channel) {
    return aboveNoiseDb[channel];
  }

  double lowerPower(int i) {
    return square(lower[i]);
  }

  double upperPower(int i) {
    return square(upper[i]);
  }

  /** Upper times the conjugate of the lower: its angle is that of upper less lower. */
  Phasor cross(int i) {
    return upper[i].times(new Phasor(lower[i].re(), -lower[i].im()));
  }

  double inPhasePower(int i) {
    double sum = Math.sqrt(lowerPower(i)) + Math.sqrt(upperPower(i));
    return sum * sum;
  }

  /** Power of the sum with the upper turned by a polarity and an angle in radians. */
  double sumPower(int i, int polarity, double turn) {
    Phasor cross = cross(i);
    double in = cross.re() * Math.cos(turn) - cross.im() * Math.sin(turn);
    return lowerPower(i) + upperPower(i) + 2 * polarity * in;
  }

  private static double square(Phasor value) {
    return value.re() * value.re() + value.im() * value.im();
  }
}
