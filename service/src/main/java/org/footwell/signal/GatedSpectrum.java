package org.footwell.signal;

/** Spectrum of the part of an impulse response that passes a gate. */
public final class GatedSpectrum {

  private final Spectrum spectrum;
  private final double[] noise;
  private final int startSample;
  private final double lengthS;

  GatedSpectrum(Spectrum spectrum, double[] noise, int startSample, double lengthS) {
    this.spectrum = spectrum;
    this.noise = noise;
    this.startSample = startSample;
    this.lengthS = lengthS;
  }

  /** Share of the time before the strongest sample that fades in, and of the time after out. */
  private static final double FADE_IN = 0.5;

  private static final double FADE_OUT = 0.25;

  /** Place of the strongest sample. */
  public static int strongest(double[] response) {
    int at = 0;
    for (int n = 1; n < response.length; n++) {
      at = Math.abs(response[n]) > Math.abs(response[at]) ? n : at;
    }
    return at;
  }

  /**
   * Cuts and transforms.
   *
   * @param strongest sample the gate is set by
   * @param beforeS how long before it the gate opens, s
   * @param afterS how long after it the gate closes, s
   */
  public static GatedSpectrum of(
      double[] response, double rateHz, int strongest, double beforeS, double afterS) {
    int before = (int) Math.round(beforeS * rateHz);
    int after = (int) Math.round(afterS * rateHz);
    int start = strongest - before;
    // A response that ends earlier is faded out at its own end.
    int length = Math.max(4, Math.min(before + after, response.length - start));
    int tail = Math.max(1, length - before);
    double[] gate = Window.gate(length, (int) (FADE_IN * before), (int) (FADE_OUT * tail));
    double[] piece = new double[length];
    double weight = 0;
    for (int i = 0; i < length; i++) {
      int n = start + i;
      piece[i] = n >= 0 && n < response.length ? response[n] * gate[i] : 0;
      weight += gate[i] * gate[i];
    }
    // Twice the length: the bins lie closer than what they can tell apart, so bands are smooth.
    Spectrum spectrum = Spectrum.of(piece, Spectrum.sizeFor(2 * length));
    double[] noise = NoiseFloor.of(response, rateHz).densities(spectrum.bins(), rateHz);
    for (int k = 0; k < noise.length; k++) {
      noise[k] *= weight;
    }
    return new GatedSpectrum(spectrum, noise, start, tail / rateHz);
  }

  /** Of the gated part. */
  public Spectrum spectrum() {
    return spectrum;
  }

  /** |X|² that noise alone would have in it, one value a bin. */
  public double[] noise() {
    return noise;
  }

  /** Where the gate starts in the response, may be below 0. */
  public int startSample() {
    return startSample;
  }

  /** From the strongest sample of the response to the end of the gate or of the response, whichever comes first, s: the inverse is the lowest frequency it can tell. */
  public double lengthS() {
    return lengthS;
  }
}
