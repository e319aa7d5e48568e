package org.footwell.measured.arrival;

import org.footwell.signal.AnalyticSignal;
import org.footwell.signal.GatedSpectrum;
import org.footwell.signal.NoiseFloor;
import org.footwell.signal.PassBand;
import org.footwell.signal.Spectrum;
import org.footwell.signal.Window;

/**
 * The sound in a response whose frequencies may have been delayed by slope·ln f: undone with a slope,
 * the direct sound without its minimum phase is as compact as it was.
 */
final class DispersedPulse {

  /** What is looked at before it is undone, s. */
  private static final double BEFORE_S = 0.020;

  private static final double AFTER_S = 0.060;

  /** The same after: the direct sound, and few reflections, s. */
  private static final double NEAR_BEFORE_S = 0.003;

  private static final double NEAR_AFTER_S = 0.004;

  /** Periods of the lowest frequency that must pass before. */
  private static final double PERIODS_BEFORE = 1.5;

  /** Frequencies used: more than for an arrival, since delays differ the more the further apart. */
  private static final double RATIO_USED = 16;

  /** Channels that end lower are not sharp enough, Hz. */
  private static final double SHARP_FROM_HZ = 1500;

  /** Slopes looked at around a start, s, and how finely. */
  private static final double AROUND_S = 0.0003;

  private static final double FINE_S = 0.00001;

  /** How far from the top its curvature is looked at, s. */
  private static final double FAR_S = 0.00003;

  // How far off the sharpest slope may be, as a share of how far one must go from it until the
  // pulse
  // is as good as gone: by the end of the roll-off, the more noise hides of it, and by what of the
  // pulse is not of the direct sound. Measured on made-up responses, see the method page.
  private static final double ROLL_OFF_UNKNOWN = 0.06;
  private static final double NOISE_UNKNOWN = 8;
  private static final double REST_UNKNOWN = 0.2;

  /** What is less sure tells nothing, s: so it is among the modes of a hard cabin. */
  private static final double TELLS_NOTHING_S = 0.00025;

  private final Spectrum spectrum;
  private final double[] gate;
  private final double[] density;
  private final PassBand range;
  private final double rateHz;

  private DispersedPulse(double[] response, PassBand range, double rateHz) {
    this.range = range;
    this.rateHz = rateHz;
    int before = (int) (BEFORE_S * rateHz);
    double[] around = Window.gate(before + (int) (AFTER_S * rateHz), before / 2, before);
    double[] piece = cut(response, GatedSpectrum.strongest(response) - before, around);
    spectrum = Spectrum.of(piece, Spectrum.sizeFor(piece.length));
    int after = (int) (NEAR_AFTER_S * rateHz);
    gate = Window.gate(nearBefore() + after, nearBefore() / 2, after / 2);
    int bins = Spectrum.sizeFor(2 * gate.length) / 2 + 1;
    density = NoiseFloor.of(response, rateHz).densities(bins, rateHz);
  }

  private int nearBefore() {
    return (int) (NEAR_BEFORE_S * rateHz);
  }

  /**
   * A slope in s an e-fold of frequency, with how far off it may be.
   *
   * @param slopeS the sharpest
   * @param uncertaintyS of it
   */
  record Slope(double slopeS, double uncertaintyS) {}

  /** The strongest sound of a response; null where it does not play high enough. */
  static DispersedPulse of(double[] response, PassBand range, double rateHz) {
    DispersedPulse pulse = new DispersedPulse(response, range, rateHz);
    return pulse.undone(0) == null ? null : pulse;
  }

  /** Height of the pulse, with a slope undone, over what all frequencies would reach at once. */
  double compactness(double slopeS) {
    Equalised undone = undone(slopeS);
    return undone == null ? 0 : compactness(undone, 0);
  }

  /** The slope near a start whose undoing makes the pulse highest; null if that is nowhere near. */
  Slope sharpest(double startS) {
    Equalised pulse = undone(startS);
    if (pulse == null) {
      return null;
    }
    double best = 0;
    double top = 0;
    int steps = (int) Math.round(AROUND_S / FINE_S);
    for (int i = -steps; i <= steps; i++) {
      double height = compactness(pulse, i * FINE_S);
      if (height > top) {
        top = height;
        best = i * FINE_S;
      }
    }
    if (Math.abs(best) > AROUND_S - FINE_S / 2) {
      return null;
    }
    double before = compactness(pulse, best - FINE_S);
    double after = compactness(pulse, best + FINE_S);
    best += FINE_S * AnalyticSignal.parabolicOffset(before, top, after);
    double lost = 2 * top - compactness(pulse, best - FAR_S) - compactness(pulse, best + FAR_S);
    double width = FAR_S * Math.sqrt(top / Math.max(lost, top * 1e-9));
    double rest = Math.sqrt(Math.max(0, 1 - top * top));
    double noise = pulse.noise() / pulse.height(top, rateHz);
    double off = width * (ROLL_OFF_UNKNOWN + NOISE_UNKNOWN * noise + REST_UNKNOWN * rest);
    return off > TELLS_NOTHING_S ? null : new Slope(startS + best, off);
  }

  /** The direct sound without its minimum phase, once a slope has been undone. */
  private Equalised undone(double slopeS) {
    double[] whole = turned(spectrum, slopeS, SHARP_FROM_HZ).signal();
    double[] piece = cut(whole, GatedSpectrum.strongest(whole) - nearBefore(), gate);
    Spectrum near = Spectrum.of(piece, 2 * (density.length - 1));
    double weight = 0;
    for (double factor : gate) {
      weight += factor * factor;
    }
    PassBand band = SoundBand.found(near, density, weight, gate.length / rateHz, rateHz);
    if (band == null || band.highHz() < SHARP_FROM_HZ) {
      return null;
    }
    double low = Math.max(PERIODS_BEFORE / NEAR_BEFORE_S, band.highHz() / RATIO_USED);
    PassBand used = SoundBand.common(band, low, band.highHz());
    if (used == null) {
      return null;
    }
    double[] noise = density.clone();
    for (int k = 0; k < noise.length; k++) {
      noise[k] *= weight;
    }
    Equalised.Filters filters = new Equalised.Filters(null, null, range);
    return Equalised.of(near, noise, density, used, filters, rateHz);
  }

  private double compactness(Equalised pulse, double slopeS) {
    Spectrum turned = turned(pulse.spectrum(), slopeS, pulse.band().middleHz());
    double[] envelope = turned.analytic().envelope();
    int at = 1;
    for (int i = 2; i < envelope.length - 1; i++) {
      at = envelope[i] > envelope[at] ? i : at;
    }
    double offset =
        AnalyticSignal.parabolicOffset(envelope[at - 1], envelope[at], envelope[at + 1]);
    return pulse.compactness(turned.envelopeAt(at + offset), rateHz);
  }

  /** Every frequency earlier by slope·ln(f/still), in s: the derivative of the phase. */
  private Spectrum turned(Spectrum spectrum, double slopeS, double stillHz) {
    double width = rateHz / spectrum.size();
    double[] re = new double[spectrum.bins()];
    double[] im = new double[spectrum.bins()];
    for (int k = 1; k < re.length - 1; k++) {
      double f = k * width;
      double turn = 2 * Math.PI * slopeS * (f * Math.log(f / stillHz) - f);
      double cos = Math.cos(turn);
      double sin = Math.sin(turn);
      re[k] = spectrum.re(k) * cos - spectrum.im(k) * sin;
      im[k] = spectrum.im(k) * cos + spectrum.re(k) * sin;
    }
    return Spectrum.ofBins(re, im);
  }

  private static double[] cut(double[] response, int from, double[] gate) {
    double[] piece = new double[gate.length];
    for (int i = 0; i < gate.length; i++) {
      int n = from + i;
      piece[i] = n >= 0 && n < response.length ? response[n] * gate[i] : 0;
    }
    return piece;
  }
}
