package org.footwell.measured.response;

import java.util.Arrays;
import java.util.Random;

/** An impulse response with known answers: filters and reflections run in time, seeded noise. */
public final class MadeUpResponse {

  public static final double RATE_HZ = 48_000;

  private final double[] samples;

  private MadeUpResponse(double[] samples) {
    this.samples = samples;
  }

  /** A single sample in so much silence. */
  public static MadeUpResponse click(int size, int at, double height) {
    double[] samples = new double[size];
    samples[at] = height;
    return new MadeUpResponse(samples);
  }

  /** Through second-order sections, six numbers each: b0 b1 b2 a0 a1 a2, a0 being 1. */
  public MadeUpResponse through(double... sections) {
    double[] y = samples;
    for (int s = 0; s < sections.length; s += 6) {
      y = section(y, Arrays.copyOfRange(sections, s, s + 6));
    }
    return new MadeUpResponse(y);
  }

  /** Through sections as SciPy prints them. */
  public MadeUpResponse through(String sections) {
    return through(
        Arrays.stream(sections.split(" ", -1)).mapToDouble(Double::parseDouble).toArray());
  }

  private static double[] section(double[] x, double[] c) {
    double[] y = new double[x.length];
    for (int n = 0; n < y.length; n++) {
      y[n] = c[0] * x[n];
      if (n > 0) {
        y[n] += c[1] * x[n - 1] - c[4] * y[n - 1];
      }
      if (n > 1) {
        y[n] += c[2] * x[n - 2] - c[5] * y[n - 2];
      }
    }
    return y;
  }

  /** With a copy of it later. */
  public MadeUpResponse reflected(double size, int later) {
    double[] sum = samples.clone();
    for (int n = later; n < sum.length; n++) {
      sum[n] += size * samples[n - later];
    }
    return new MadeUpResponse(sum);
  }

  public MadeUpResponse times(double factor) {
    return new MadeUpResponse(Arrays.stream(samples).map(x -> factor * x).toArray());
  }

  public MadeUpResponse noisy(double rms, long seed) {
    Random random = new Random(seed);
    return new MadeUpResponse(
        Arrays.stream(samples).map(x -> x + rms * random.nextGaussian()).toArray());
  }

  /** What a recording of a played signal is. */
  public MadeUpResponse playing(double[] signal) {
    double[] y = new double[samples.length + signal.length];
    for (int n = 0; n < samples.length; n++) {
      if (samples[n] != 0) {
        for (int k = 0; k < signal.length; k++) {
          y[n + k] += samples[n] * signal[k];
        }
      }
    }
    return new MadeUpResponse(y);
  }

  public float[] samples() {
    float[] floats = new float[samples.length];
    for (int n = 0; n < floats.length; n++) {
      floats[n] = (float) samples[n];
    }
    return floats;
  }
}
