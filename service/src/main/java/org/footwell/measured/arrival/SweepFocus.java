package org.footwell.measured.arrival;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Source;
import org.footwell.signal.GatedSpectrum;
import org.footwell.signal.NoiseFloor;
import org.footwell.signal.PassBand;
import org.footwell.signal.Spectrum;
import org.footwell.signal.Window;

/**
 * Whether the sweep that was played is the one stated. One that lasted δ longer delays a frequency by
 * δ·ln(f/f1)/ln(f2/f1) against the stated one, which spreads a pulse in time. Undone with the right δ,
 * what is left of the responses without their minimum phase is most compact. Told by channels that
 * play high; woofers alone tell nothing.
 *
 * @param longerS how much longer than stated the sweep seems, s
 * @param sharper compactness there over that as stated: 1 when the stated length is the best
 */
record SweepFocus(double longerS, double sharper) {

  static final Source DISPERSION =
      Source.of(
          "A. Farina, 108th AES Convention (2000): instant of a frequency in an exponential sweep,"
              + " T·ln(f/f1)/ln(f2/f1); differentiated by T");

  /** Lengths looked at, s: found by trials on made-up rooms to be fine enough for a tweeter. */
  private static final double FURTHEST_S = 0.010;

  private static final double STEP_S = 0.00025;

  /** Channels that end lower are not sharp enough, Hz. */
  private static final double SHARP_FROM_HZ = 5000;

  /** So many responses tell it. */
  private static final int ENOUGH = 8;

  private static final double BEFORE_S = 0.020;
  private static final double AFTER_S = 0.060;

  /** Sharper by this is no chance; measured, see the method page. */
  private static final double CLEARLY = 1.10;

  boolean otherLength() {
    return sharper > CLEARLY;
  }

  /**
   * Looks for it.
   *
   * @param octaves natural logarithm of the sweep's end over its start
   * @return null where nothing plays high enough to tell
   */
  static SweepFocus of(List<double[]> responses, double octaves, PassBand range, double rateHz) {
    List<Spectrum> pulses = new ArrayList<>();
    List<Double> middles = new ArrayList<>();
    for (double[] response : responses) {
      Equalised pulse = pulse(response, range, rateHz);
      if (pulse != null && pulse.band().highHz() >= SHARP_FROM_HZ && pulses.size() < ENOUGH) {
        pulses.add(pulse.spectrum());
        middles.add(pulse.band().middleHz());
      }
    }
    if (pulses.isEmpty()) {
      return null;
    }
    int steps = (int) Math.round(FURTHEST_S / STEP_S);
    double asStated = 0;
    double most = 0;
    double best = 0;
    for (int i = -steps; i <= steps; i++) {
      double longer = i * STEP_S;
      double squares = 0;
      for (int p = 0; p < pulses.size(); p++) {
        double one = compactness(pulses.get(p), middles.get(p), longer / octaves, rateHz);
        squares += one * one / pulses.size();
      }
      double all = Math.sqrt(squares);
      asStated = i == 0 ? all : asStated;
      if (all > most) {
        most = all;
        best = longer;
      }
    }
    return new SweepFocus(best, most / asStated);
  }

  private static Equalised pulse(double[] response, PassBand range, double rateHz) {
    int before = (int) (BEFORE_S * rateHz);
    double[] gate = Window.gate(before + (int) (AFTER_S * rateHz), before / 2, before);
    int from = GatedSpectrum.strongest(response) - before;
    double[] piece = new double[gate.length];
    double weight = 0;
    for (int i = 0; i < gate.length; i++) {
      int n = from + i;
      piece[i] = n >= 0 && n < response.length ? response[n] * gate[i] : 0;
      weight += gate[i] * gate[i];
    }
    Spectrum spectrum = Spectrum.of(piece, Spectrum.sizeFor(2 * gate.length));
    double[] density = NoiseFloor.of(response, rateHz).densities(spectrum.bins(), rateHz);
    double seconds = gate.length / rateHz;
    PassBand band = SoundBand.found(spectrum, density, weight, seconds, rateHz);
    if (band == null) {
      return null;
    }
    double[] noise = density.clone();
    for (int k = 0; k < noise.length; k++) {
      noise[k] *= weight;
    }
    Equalised.Filters filters = new Equalised.Filters(null, null, range);
    return Equalised.of(spectrum, noise, density, SoundBand.used(band), filters, rateHz);
  }

  /** Peak of the envelope over what it would be with all frequencies in step. */
  private static double compactness(Spectrum pulse, double middleHz, double slopeS, double rateHz) {
    double width = rateHz / pulse.size();
    double[] re = new double[pulse.bins()];
    double[] im = new double[pulse.bins()];
    double sum = 0;
    for (int k = 1; k < re.length - 1; k++) {
      if (pulse.re(k) != 0 || pulse.im(k) != 0) {
        double f = k * width;
        double turn = 2 * Math.PI * slopeS * (f * Math.log(f / middleHz) - f);
        double cos = Math.cos(turn);
        double sin = Math.sin(turn);
        re[k] = pulse.re(k) * cos - pulse.im(k) * sin;
        im[k] = pulse.im(k) * cos + pulse.re(k) * sin;
        sum += Math.hypot(re[k], im[k]);
      }
    }
    double peak = 0;
    for (double height : Spectrum.ofBins(re, im).analytic().envelope()) {
      peak = Math.max(peak, height);
    }
    return sum == 0 ? 0 : peak * pulse.size() / (2 * sum);
  }
}
