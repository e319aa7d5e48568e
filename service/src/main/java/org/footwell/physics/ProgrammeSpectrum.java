package org.footwell.physics;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.footwell.calculation.Source;

/**
 * How the power of a programme is spread over frequency: bands side by side, the power within each
 * spread evenly over the logarithm of frequency.
 */
public final class ProgrammeSpectrum {

  public static final Source IEC_60268_1 =
      Source.of(
          "IEC 60268-1:1985, Sound system equipment, Part 1: General: clause 7, Table II, simulated"
              + " programme signal (read in a public transcription, not in a printed copy)");

  /** Relative power of the third octaves from 20 Hz to 20 kHz, dB: Table II. */
  private static final double[] TABLE_II_DB = {
    -13.5, -10.2, -7.4, -5.2, -3.5, -2.3, -1.4, -0.9, -0.5, -0.2, -0.1, 0, 0, 0, 0, 0, 0, -0.1,
    -0.3, -0.6, -1.0, -1.6, -2.5, -3.7, -5.1, -7.0, -9.4, -11.9, -14.8, -18.2, -21.6
  };

  /** The first band of the table is 17 third octaves below 1 kHz. */
  private static final int FIRST_BAND = -17;

  /** Half a third octave in natural logarithms. */
  private static final double HALF_BAND = Math.log(10) / 20;

  /** Steps per band of the integration over a filter's skirts. */
  private static final int STEPS = 8;

  /** Logarithms of the edges, one more than there are bands. */
  private final double[] edges;

  /** Power of each band, 1 in all. */
  private final double[] powers;

  private ProgrammeSpectrum(double[] edges, double[] powers) {
    this.edges = edges;
    this.powers = powers;
  }

  /** The simulated programme signal; edges are those of base-ten third octaves. */
  public static ProgrammeSpectrum simulated() {
    double[] edges = new double[TABLE_II_DB.length + 1];
    double[] powers = new double[TABLE_II_DB.length];
    double sum = 0;
    for (int i = 0; i < powers.length; i++) {
      powers[i] = Decibels.toPower(TABLE_II_DB[i]);
      sum += powers[i];
    }
    for (int i = 0; i < edges.length; i++) {
      edges[i] = Math.log(1000 * Math.pow(10, (FIRST_BAND + i - 0.5) / 10));
    }
    for (int i = 0; i < powers.length; i++) {
      powers[i] /= sum;
    }
    return new ProgrammeSpectrum(edges, powers);
  }

  /** The same power in every octave between two frequencies in Hz. */
  public static ProgrammeSpectrum pink(double fromHz, double toHz) {
    int bands = TABLE_II_DB.length;
    double from = Math.log(fromHz);
    double step = (Math.log(toHz) - from) / bands;
    double[] edges = new double[bands + 1];
    double[] powers = new double[bands];
    for (int i = 0; i <= bands; i++) {
      edges[i] = from + i * step;
    }
    Arrays.fill(powers, 1.0 / bands);
    return new ProgrammeSpectrum(edges, powers);
  }

  /**
   * A spectrum of third octaves given by their mid-bands in Hz, rising, and relative levels in dB; a
   * nominal mid-band stands for the exact one.
   */
  public static ProgrammeSpectrum ofBands(double[] hz, double[] levelDb) {
    double[] edges = new double[2 * hz.length];
    double[] powers = new double[2 * hz.length - 1];
    double sum = 0;
    for (int i = 0; i < hz.length; i++) {
      double middle = Math.log(ThirdOctaves.exactHz(hz[i]));
      edges[2 * i] = middle - HALF_BAND;
      edges[2 * i + 1] = middle + HALF_BAND;
      powers[2 * i] = Decibels.toPower(levelDb[i]);
      sum += powers[2 * i];
    }
    for (int i = 0; i < powers.length; i++) {
      powers[i] /= sum;
    }
    return new ProgrammeSpectrum(edges, powers);
  }

  /** Share of the power below a frequency in Hz, 0 to 1. */
  public double below(double hz) {
    double here = Math.log(hz);
    double sum = 0;
    for (int i = 0; i < powers.length; i++) {
      double part = (here - edges[i]) / (edges[i + 1] - edges[i]);
      sum += powers[i] * Math.min(1, Math.max(0, part));
    }
    return Math.min(1, sum);
  }

  /** The frequency in Hz below which a share of the power lies, above 0 and below 1. */
  public double frequencyOf(double share) {
    double left = share;
    int band = 0;
    while (band < powers.length - 1 && left > powers[band]) {
      left -= powers[band];
      band++;
    }
    double width = edges[band + 1] - edges[band];
    return Math.exp(edges[band] + width * Math.min(1, left / powers[band]));
  }

  /** Share of the power that filters let pass, from their squared magnitude at a frequency. */
  public double share(DoubleUnaryOperator squaredMagnitude) {
    double sum = 0;
    for (int i = 0; i < powers.length; i++) {
      double width = (edges[i + 1] - edges[i]) / STEPS;
      for (int k = 0; k < STEPS; k++) {
        double middle = Math.exp(edges[i] + (k + 0.5) * width);
        sum += powers[i] / STEPS * squaredMagnitude.applyAsDouble(middle);
      }
    }
    return sum;
  }
}
