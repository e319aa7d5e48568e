package org.footwell.signal;

import org.footwell.calculation.Source;

/**
 * Hum of the mains in a capture: a line at once or twice its frequency, and what stands out at the
 * multiples. Lines that a harmonic of the tone covers cannot be seen.
 *
 * @param mainsHz 50 or 60
 * @param rms of the lines seen together, in the unit of the samples
 */
public record Hum(double mainsHz, double rms) {

  public static final Source MAINS =
      Source.of(
          "Nominal frequencies of public supply networks, 50 and 60 Hz: IEC 60196, from"
              + " memory");

  private static final double[] NETWORKS = {50, 60};

  /** Multiples looked at: rectifiers leave little above. */
  private static final int MULTIPLES = 12;

  /** A main lobe wider than this on each side does not tell 50 from 60 Hz. */
  private static final double WIDEST_LOBE_HZ = 10;

  /** A line has so many times the power that the noise beside it would have: no chance reaches it. */
  private static final double STANDS_OUT = 10;

  /** Lines weaker than this against the tone, −80 dB, are left to the side lobes of the window. */
  private static final double LEAST_OF_TONE = 1e-8;

  /** How far networks and the clocks of recorders stray. */
  private static final double STRAY = 0.005;

  /**
   * Looks for it.
   *
   * @param tone mean square of the tone
   * @return null where there is none, or where the capture is too short to tell
   */
  static Hum of(SpectralLines lines, double toneHz, double tone, double edgeHz) {
    if (lines.lobeHz() > WIDEST_LOBE_HZ) {
      return null;
    }
    Hum most = null;
    for (double network : NETWORKS) {
      double first = 0;
      double sum = 0;
      for (int k = 1; k <= MULTIPLES && k * network < edgeHz; k++) {
        double line = line(lines, k * network, toneHz, tone);
        sum += line;
        first += k <= 2 ? line : 0;
      }
      if (first > 0 && (most == null || sum > most.rms * most.rms)) {
        most = new Hum(network, Math.sqrt(sum));
      }
    }
    return most;
  }

  /** Mean square of a line less the noise under it, 0 if it does not stand out. */
  private static double line(SpectralLines lines, double hz, double toneHz, double tone) {
    double harmonic = Math.max(1, Math.rint(hz / toneHz)) * toneHz;
    if (Math.abs(harmonic - hz) < 2 * lines.lobeHz()) {
      return 0;
    }
    double stray = STRAY * hz + lines.widthHz();
    double noise = lines.lobeNoise(hz, toneHz);
    double power = lines.lobe(hz);
    boolean there =
        Math.abs(lines.strongestHz(hz - lines.lobeHz(), hz + lines.lobeHz()) - hz) <= stray;
    boolean stands = power > STANDS_OUT * noise && power > LEAST_OF_TONE * tone;
    return there && stands ? power - noise : 0;
  }
}
