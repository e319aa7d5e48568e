package org.footwell.measured.arrival;

import java.util.Arrays;
import org.footwell.parts.Filter;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Decibels;
import org.footwell.signal.BandPower;
import org.footwell.signal.MinimumPhase;
import org.footwell.signal.NoiseFloor;
import org.footwell.signal.PassBand;
import org.footwell.signal.Spectrum;

/**
 * A response with its minimum-phase part taken out: what is left of direct sound is a pulse at the
 * time of flight, upright or turned over. Reflections weaker than the direct sound are of minimum
 * phase together with it, so they hardly move the pulse.
 *
 * @param spectrum the pulse, in the band
 * @param band where it could be done
 * @param noise RMS of the noise in it
 * @param believedToHz up to where the magnitude was believed, Hz
 * @param wholeCompactness of the pulse in all that was believed, see {@link #compactness}
 */
record Equalised(
    Spectrum spectrum, PassBand band, double noise, double believedToHz, double wholeCompactness) {

  private static final double SMOOTHED_PER_OCTAVE = 6;

  /** Power over noise from which on a magnitude is believed. */
  private static final double BELIEVED = 4;

  private static final double LOWEST_HZ = 8;

  /** Above this share of the sample rate, converters cut off with a phase of their own. */
  private static final double HIGHEST = 0.4;

  /** Steepest slope taken over beyond what is believed: 48 dB per octave. */
  private static final double STEEPEST = 8;

  /**
   * Fall of power within the width of smoothing that no crossover has: 20 dB in a sixth of an octave,
   * 120 dB per octave. A fall at once is seen as wide as this.
   */
  private static final double CLIFF = 100;

  /** Natural logarithm of the range of magnitudes: 120 dB. */
  private static final double RANGE = 14;

  /** Keeps what was cut off from being divided by nothing. */
  private static final double LEAST = 1e-3;

  /** Keeps clear of the ends of what is believed. */
  private static final double CLEAR = 1.1;

  /** The same where all of it is looked at: its ends have the phase of a guessed roll-off. */
  private static final double WELL_CLEAR = 1.3;

  /**
   * Takes out the minimum-phase part.
   *
   * @param response spectrum of the response around its first sound
   * @param noise |X|² of the noise in it
   * @param density the same for a window with a sum of squares of 1
   * @return null where too little stands out of the noise
   */
  static Equalised of(
      Spectrum response,
      double[] noise,
      double[] density,
      PassBand wanted,
      Filters filters,
      double rateHz) {
    double width = rateHz / response.size();
    double[] power = BandPower.smoothed(response.powers(), SMOOTHED_PER_OCTAVE);
    int middle = (int) Math.round(wanted.middleHz() / width);
    PassBand range = filters.range(rateHz);
    int low = middle;
    while (low > 1 && power[low] > BELIEVED * noise[low] && low * width > range.lowHz()) {
      low--;
    }
    int high = middle;
    while (power[high] > BELIEVED * noise[high] && (high + 1) * width < range.highHz()) {
      high++;
    }
    high = beforeCliff(power, high);
    PassBand band = SoundBand.common(wanted, low * width * CLEAR, high * width / CLEAR);
    if (band == null) {
      return null;
    }
    Spectrum known = filters.spectrum(power.length, rateHz);
    double[] logarithms = new double[power.length];
    for (int k = low; k <= high; k++) {
      double clean = Math.max(power[k] - noise[k], power[k] / 1000);
      logarithms[k] = 0.5 * Math.log(clean + Double.MIN_NORMAL) - logarithm(known, k);
    }
    extend(logarithms, low, high);
    Spectrum whole = MinimumPhase.of(logarithms).times(known);
    double[] factors = band.factors(power.length, rateHz);
    double[] inverse = new double[power.length];
    for (int k = 0; k < inverse.length; k++) {
      inverse[k] = factors[k] == 0 ? 0 : factors[k] / Math.sqrt(whole.power(k));
    }
    Spectrum pulse = response.over(whole, 0);
    PassBand all = new PassBand(low * width * WELL_CLEAR, high * width / WELL_CLEAR);
    return new Equalised(
        pulse.weighted(factors),
        band,
        NoiseFloor.rms(density, inverse),
        high * width,
        compactness(pulse, all.factors(power.length, rateHz)));
  }

  /**
   * Where the fall of a magnitude starts that ends at a bin, if it is steeper than any crossover: that
   * is cut off by processing, mostly of zero phase, and would be taken for a delay that is not there.
   */
  private static int beforeCliff(double[] power, int high) {
    int before = (int) (high / Math.pow(2, 1 / SMOOTHED_PER_OCTAVE));
    return power[before] > CLIFF * power[high] ? before : high;
  }

  /** Of a peak in the band: its height over that of all frequencies at once, 0 to 1. */
  double compactness(double height, double rateHz) {
    return height / together(band.factors(spectrum.bins(), rateHz));
  }

  /** Height of a peak in the band of a compactness. */
  double height(double compactness, double rateHz) {
    return compactness * together(band.factors(spectrum.bins(), rateHz));
  }

  /** Height of the highest peak of what has been equalised, of magnitude 1, over its most. */
  private static double compactness(Spectrum pulse, double[] factors) {
    double highest = 0;
    for (double height : pulse.weighted(factors).analytic().envelope()) {
      highest = Math.max(highest, height);
    }
    return highest / together(factors);
  }

  /** Height of a pulse in which these frequencies come all at once. */
  private static double together(double[] factors) {
    return Arrays.stream(factors).sum() / (factors.length - 1);
  }

  private static double logarithm(Spectrum known, int bin) {
    return 0.5 * Math.log(known.power(bin) + Double.MIN_NORMAL);
  }

  /** Goes on beyond what is believed with the slope of the last half octave. */
  private static void extend(double[] logarithms, int low, int high) {
    double rise =
        Math.max(
            0, Math.min(STEEPEST, slope(logarithms, low, (int) Math.ceil(low * Math.sqrt(2)))));
    double fall =
        Math.max(-STEEPEST, Math.min(0, slope(logarithms, (int) (high / Math.sqrt(2)), high)));
    double most = Double.NEGATIVE_INFINITY;
    for (int k = low; k <= high; k++) {
      most = Math.max(most, logarithms[k]);
    }
    for (int k = 0; k < logarithms.length; k++) {
      if (k < low) {
        logarithms[k] = logarithms[low] + rise * Math.log(Math.max(1, k) / (double) low);
      } else if (k > high) {
        logarithms[k] = logarithms[high] + fall * Math.log(k / (double) high);
      }
      logarithms[k] = Math.max(logarithms[k], most - RANGE);
    }
  }

  /** Slope over the logarithm of the bin by least squares. */
  private static double slope(double[] values, int from, int to) {
    if (to - from < 2) {
      return 0;
    }
    double n = to - from + 1;
    double x = 0;
    double y = 0;
    double xx = 0;
    double xy = 0;
    for (int k = from; k <= to; k++) {
      double log = Math.log(k);
      x += log;
      y += values[k];
      xx += log * log;
      xy += log * values[k];
    }
    return (n * xy - x * y) / (n * xx - x * x);
  }

  /**
   * The filters of a channel that are known, each of them null when not.
   *
   * @param zeroPhase what the response was limited to without moving anything in time
   */
  record Filters(Filter highPass, Filter lowPass, PassBand zeroPhase) {

    /** Where magnitudes can be believed, noise apart. */
    PassBand range(double rateHz) {
      double highest = HIGHEST * rateHz;
      return zeroPhase == null
          ? new PassBand(LOWEST_HZ, highest)
          : new PassBand(
              Math.max(LOWEST_HZ, zeroPhase.lowHz()), Math.min(highest, zeroPhase.highHz()));
    }

    /** Their response, or 1 throughout. */
    Spectrum spectrum(int bins, double rateHz) {
      double width = rateHz / (2 * (bins - 1));
      AnalogFilter high = highPass == null ? null : highPass.highPass();
      AnalogFilter low = lowPass == null ? null : lowPass.lowPass();
      double[] re = new double[bins];
      double[] im = new double[bins];
      for (int k = 0; k < bins; k++) {
        double f = Math.max(k, 0.5) * width;
        double db = db(high, f) + db(low, f);
        double angle = Math.toRadians(deg(high, f) + deg(low, f));
        double limited = zeroPhase == null ? 1 : Math.max(LEAST, zeroPhase.at(f));
        double size = Decibels.toAmplitude(db) * limited;
        re[k] = size * Math.cos(angle);
        im[k] = size * Math.sin(angle);
      }
      return Spectrum.ofBins(re, im);
    }

    private static double db(AnalogFilter filter, double f) {
      return filter == null ? 0 : filter.magnitudeDb(f);
    }

    private static double deg(AnalogFilter filter, double f) {
      return filter == null ? 0 : filter.phaseDeg(f);
    }
  }
}
