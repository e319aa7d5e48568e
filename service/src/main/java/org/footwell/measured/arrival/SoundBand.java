package org.footwell.measured.arrival;

import org.footwell.measured.response.TakeRules;
import org.footwell.signal.BandPower;
import org.footwell.signal.PassBand;
import org.footwell.signal.Spectrum;

/** Which band a channel plays, and which part of it tells its arrival best. */
final class SoundBand {

  private static final double LOWEST_HZ = 12;

  /** The band ends where an octave holds a tenth of the strongest one's energy. */
  private static final double DROP = 10;

  /** How far above chance, in standard deviations of a mean of noise, sound must stand. */
  private static final double STANDS_OUT = 6;

  /** Octaves at the top of the band that are used: the rest adds reflections, not precision. */
  private static final double RATIO_USED = 4;

  /** Narrower bands are widened: their envelope has no form of its own. */
  private static final double NARROWEST_USED = 1.6;

  private SoundBand() {}

  /**
   * The band in which sound stands out of noise, or null if there is none.
   *
   * @param weight sum of the squared factors of the window the spectrum was made with
   * @param lengthS length of that window, s
   */
  static PassBand found(
      Spectrum spectrum, double[] noise, double weight, double lengthS, double rateHz) {
    double[] smoothed = BandPower.smoothed(spectrum.powers(), 1);
    double width = rateHz / spectrum.size();
    double highest = TakeRules.USABLE * rateHz / 2;
    double[] perOctave = new double[smoothed.length];
    int strongest = 0;
    for (int k = 1; k < smoothed.length; k++) {
      double f = k * width;
      double chance = 1 + STANDS_OUT / Math.sqrt(Math.max(1, 0.7 * f * lengthS));
      if (f >= LOWEST_HZ && f <= highest && smoothed[k] > noise[k] * weight * chance) {
        perOctave[k] = (smoothed[k] - noise[k] * weight) * f;
      }
      strongest = perOctave[k] > perOctave[strongest] ? k : strongest;
    }
    if (strongest == 0) {
      return null;
    }
    double threshold = perOctave[strongest] / DROP;
    int low = strongest;
    while (low > 1 && perOctave[low - 1] > threshold) {
      low--;
    }
    int high = strongest;
    while (high < perOctave.length - 1 && perOctave[high + 1] > threshold) {
      high++;
    }
    return new PassBand(Math.max(LOWEST_HZ, low * width), Math.min(highest, high * width));
  }

  /** The part of a band that is used. */
  static PassBand used(PassBand band) {
    double low = Math.max(band.lowHz(), band.highHz() / RATIO_USED);
    if (band.highHz() / low >= NARROWEST_USED) {
      return new PassBand(low, band.highHz());
    }
    double middle = Math.sqrt(low * band.highHz());
    double half = Math.sqrt(NARROWEST_USED);
    return new PassBand(middle / half, middle * half);
  }

  /** What two bands have in common, or null if that is too narrow to use. */
  static PassBand common(PassBand one, double lowHz, double highHz) {
    PassBand both = new PassBand(Math.max(one.lowHz(), lowHz), Math.min(one.highHz(), highHz));
    return both.highHz() / both.lowHz() >= NARROWEST_USED * 0.99 ? both : null;
  }
}
