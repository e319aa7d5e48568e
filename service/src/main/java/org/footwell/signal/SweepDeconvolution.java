package org.footwell.signal;

import java.util.Arrays;
import org.footwell.calculation.Source;
import org.footwell.physics.Decibels;

/**
 * Turns recordings of a known exponential sweep into impulse responses by division of spectra. What
 * distortion adds lands before the start and is cut off. Outside the sweep's range nothing is known,
 * so the response is limited to it, with soft edges half an octave wide inside.
 */
public final class SweepDeconvolution {

  public static final Source DIVISION =
      Source.of(
          "S. Müller and P. Massarani, Transfer-function measurement with sweeps, Journal of the"
              + " AES 49 (2001): division of spectra");

  /** Keeps bins at the edges of the sweep's range from blowing up noise: −60 dB of the strongest. */
  private static final double FLOOR = 1e-6;

  /** Half an edge of a pass band in octaves, as a ratio. */
  private static final double QUARTER_OCTAVE = Math.pow(2, 0.25);

  /** Stretches of which the loudest are compared, s: longer than direct sound, shorter than rooms. */
  private static final double STRETCH_S = 0.020;

  /** Where the edges of minimum phase end: −80 dB. */
  private static final double LEAST_FACTOR = 1e-4;

  private final int size;
  private final int sweepSamples;
  private final PassBand range;

  /** Range over sweep: one multiplication for every recording. */
  private final Spectrum inverse;

  /** The same with edges of minimum phase, which ring after the sound and not before it. */
  private final Spectrum causal;

  private final Spectrum edges;

  private final Runnable inTime;

  /**
   * Prepares the division.
   *
   * @param most largest number of samples of a recording
   * @param inTime called between transforms, of which one can take a tenth of a second; ends the work by what it throws
   */
  public SweepDeconvolution(ExponentialSweep sweep, double rateHz, int most, Runnable inTime) {
    this.size = Spectrum.sizeFor(most);
    this.inTime = inTime;
    double[] signal = sweep.signal(rateHz);
    this.sweepSamples = signal.length;
    inTime.run();
    Spectrum played = Spectrum.of(signal, size);
    inTime.run();
    double strongest = 0;
    for (int k = 0; k < played.bins(); k++) {
      strongest = Math.max(strongest, played.power(k));
    }
    this.range = new PassBand(sweep.fromHz() * QUARTER_OCTAVE, sweep.toHz() / QUARTER_OCTAVE);
    double[] factors = range.factors(played.bins(), rateHz);
    this.inverse =
        Spectrum.ofBins(factors, new double[factors.length]).over(played, FLOOR * strongest);
    this.edges =
        MinimumPhase.of(Arrays.stream(factors).map(SweepDeconvolution::log).toArray(), inTime);
    inTime.run();
    this.causal = edges.over(played, FLOOR * strongest);
  }

  private static double log(double factor) {
    return Math.log(Math.max(LEAST_FACTOR, factor));
  }

  /** The range that responses are limited to, without moving anything in time. */
  public PassBand range() {
    return range;
  }

  /**
   * The impulse response. Sample 0 is what arrives without delay if the sweep was played from the
   * recording's first sample on.
   *
   * @param recording longer than the sweep
   * @return as many samples as the recording goes on after the length of the sweep
   */
  public double[] response(double[] recording) {
    return response(recording, inverse);
  }

  /**
   * The same for levels: what the edges do rings after the sound, where a gate is long, and not before
   * it, where it is short.
   */
  public double[] responseForLevels(double[] recording) {
    return response(recording, causal);
  }

  /**
   * How much more sound lands before the start of the response than after, dB: the loudest stretch of
   * each. What a sweep of the stated kind makes lands after, but for its distortion.
   */
  public double beforeStartDb(double[] recording, double rateHz) {
    double[] whole = whole(recording, inverse);
    int kept = recording.length - sweepSamples;
    int stretch = Math.min(kept, (int) (STRETCH_S * rateHz));
    // The last stretch is what rings before a sound at the very start.
    double before = loudest(whole, kept, whole.length - stretch, stretch);
    return Decibels.ofPower(before / loudest(whole, 0, kept, stretch));
  }

  private static double loudest(double[] signal, int from, int to, int stretch) {
    double most = Double.MIN_NORMAL;
    double energy = 0;
    for (int n = from; n < to; n++) {
      energy += signal[n] * signal[n];
      if (n >= from + stretch) {
        energy -= signal[n - stretch] * signal[n - stretch];
      }
      most = Math.max(most, energy);
    }
    return most;
  }

  /** What the edges make of a single sample, from the first one on. */
  public double[] edgesAlone() {
    return edges.signal();
  }

  private double[] whole(double[] recording, Spectrum inverse) {
    inTime.run();
    Spectrum response = Spectrum.of(recording, size).times(inverse);
    inTime.run();
    return response.signal();
  }

  private double[] response(double[] recording, Spectrum inverse) {
    double[] whole = whole(recording, inverse);
    double[] response = new double[recording.length - sweepSamples];
    System.arraycopy(whole, 0, response, 0, response.length);
    return response;
  }
}
