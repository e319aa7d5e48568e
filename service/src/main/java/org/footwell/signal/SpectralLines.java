package org.footwell.signal;

import java.util.Arrays;

/** Mean squares by bin of a windowed capture, and how they belong to a tone and to noise. */
final class SpectralLines {

  /** Independent values in a main lobe: its width over the window's noise bandwidth of 2 bins. */
  private static final double INDEPENDENT = 4;

  private final double[] power;
  private final double widthHz;
  private final double lobeHz;

  private SpectralLines(double[] power, double widthHz, double lobeHz) {
    this.power = power;
    this.widthHz = widthHz;
    this.lobeHz = lobeHz;
  }

  static SpectralLines of(double[] samples, double rateHz) {
    double[] window = Window.BLACKMAN_HARRIS.periodic(samples.length);
    double[] windowed = new double[samples.length];
    double squares = 0;
    for (int n = 0; n < windowed.length; n++) {
      windowed[n] = window[n] * samples[n];
      squares += window[n] * window[n];
    }
    int size = Spectrum.sizeFor(samples.length);
    double[] power = Spectrum.of(windowed, size).powers();
    // Two sides, and Parseval: the sum over a line is its mean square.
    double scale = 2 / (size * squares);
    for (int k = 0; k < power.length; k++) {
      power[k] *= scale;
    }
    double width = rateHz / size;
    return new SpectralLines(power, width, Harmonics.HALF_LOBE * rateHz / samples.length + width);
  }

  /** Mean square of the whole capture. */
  double total() {
    return sum(0, power.length - 1);
  }

  /** Between bins, Hz. */
  double widthHz() {
    return widthHz;
  }

  /** How far a line reaches to each side, Hz. */
  double lobeHz() {
    return lobeHz;
  }

  /** Mean square around a line. */
  double lobe(double hz) {
    return sum(bin(hz - lobeHz), bin(hz + lobeHz));
  }

  /** What noise beside a line would have under it; lines of a tone are left out by the median. */
  double lobeNoise(double hz, double spacingHz) {
    int bins = bin(hz + lobeHz) - bin(hz - lobeHz) + 1;
    return bins * density(hz, spacingHz);
  }

  private int bin(double hz) {
    return Math.max(0, Math.min(power.length - 1, (int) Math.round(hz / widthHz)));
  }

  double strongestHz(double fromHz, double toHz) {
    int best = -1;
    for (int k = Math.max(1, bin(fromHz)); k <= Math.min(power.length - 2, bin(toHz)); k++) {
      // The skirt of a line below the range is no line.
      boolean top = power[k] >= power[k - 1] && power[k] >= power[k + 1];
      best = top && (best < 0 || power[k] > power[best]) ? k : best;
    }
    return best < 0 || power[best] == 0 ? Double.NaN : best * widthHz;
  }

  Harmonics apart(double tone, double edge) {
    int count = (int) Math.floor(edge / tone * (1 + 1e-12));
    double[] lines = new double[count];
    double inLobes = 0;
    double hidden = 0;
    int lobeBins = 0;
    for (int h = 1; h <= count; h++) {
      int from = bin(h * tone - lobeHz);
      int to = bin(h * tone + lobeHz);
      double sum = sum(from, to);
      double noise = (to - from + 1) * density(h * tone, tone);
      lines[h - 1] = sum - noise;
      inLobes += sum;
      hidden += h == 1 ? 0 : noise;
      lobeBins += to - from + 1;
    }
    int lowest = bin(2 * lobeHz);
    int bins = bin(edge) - lowest + 1;
    double between = Math.max(0, sum(lowest, bin(edge)) - inLobes);
    double share = Math.max(1.0 / bins, 1 - (double) lobeBins / bins);
    double fluctuation = count < 2 ? 0 : hidden / Math.sqrt(INDEPENDENT * (count - 1));
    return lines[0] <= 0
        ? null
        : HarmonicsBuilder.builder()
            .fundamentalHz(tone)
            .fundamental(root(lines[0]))
            .each(Arrays.stream(lines).skip(1).mapToObj(SpectralLines::root).toList())
            .even(root(every(lines, 1)))
            .odd(root(every(lines, 2)))
            .all(root(every(lines, 1) + every(lines, 2)))
            .noise(root(between / share))
            .floor(root(2 * fluctuation))
            .hum(Hum.of(this, tone, lines[0], edge))
            .build();
  }

  private static double every(double[] lines, int from) {
    double sum = 0;
    for (int i = from; i < lines.length; i += 2) {
      sum += lines[i];
    }
    return sum;
  }

  private double sum(int from, int to) {
    double sum = 0;
    for (int k = from; k <= to; k++) {
      sum += power[k];
    }
    return sum;
  }

  /** Mean noise in a bin around a line: the median, which single lines do not move. */
  private double density(double hz, double spacingHz) {
    int[] edges = {
      bin(hz - 0.5 * spacingHz),
      bin(hz - lobeHz) - 1,
      bin(hz + lobeHz) + 1,
      bin(hz + 0.5 * spacingHz)
    };
    double[] there = new double[0];
    for (int i = 0; i < edges.length; i += 2) {
      if (edges[i] <= edges[i + 1]) {
        double[] part = Arrays.copyOfRange(power, edges[i], edges[i + 1] + 1);
        int before = there.length;
        there = Arrays.copyOf(there, before + part.length);
        System.arraycopy(part, 0, there, before, part.length);
      }
    }
    Arrays.sort(there);
    // Powers of noise are spread exponentially: their median is ln 2 of their mean.
    return there.length == 0 ? 0 : there[there.length / 2] / Math.log(2);
  }

  private static double root(double meanSquare) {
    return Math.sqrt(Math.max(0, meanSquare));
  }
}
