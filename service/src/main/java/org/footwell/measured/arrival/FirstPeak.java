package org.footwell.measured.arrival;

import org.footwell.signal.AnalyticSignal;
import org.footwell.signal.PassBand;
import org.footwell.signal.Spectrum;

/**
 * The first sound in an envelope: its earliest peak that is not much weaker than the strongest and
 * stands out of the noise.
 *
 * @param sample where it is, between samples
 * @param height of the envelope
 * @param curvature −e″/e there, per sample²
 * @param phase of the signal there, radians
 * @param laterHeight strongest later peak, 0 if none
 * @param laterSample where that is
 */
record FirstPeak(
    double sample,
    double height,
    double curvature,
    double phase,
    double laterHeight,
    int laterSample) {

  /** A first peak weaker than this against the strongest, −8 dB, is taken for a side lobe. */
  private static final double LEAST = 0.4;

  /** Heights over the RMS of the noise that chance does not reach. */
  private static final double OVER_NOISE = 5.6;

  /** But never asks for more than this share of the strongest. */
  private static final double ENOUGH = 0.9;

  /** Finer grid for the last parabola, samples. */
  private static final double GRID = 0.25;

  /**
   * Finds it.
   *
   * @param noise RMS of the noise in the signal
   * @param from first sample looked at
   * @param to sample after the last
   */
  static FirstPeak of(Spectrum spectrum, double noise, int from, int to) {
    AnalyticSignal analytic = spectrum.analytic();
    double[] envelope = analytic.envelope();
    int first = Math.max(1, from);
    int last = Math.min(envelope.length - 1, to);
    double strongest = 0;
    for (int i = first; i < last; i++) {
      strongest = Math.max(strongest, envelope[i]);
    }
    double threshold =
        Math.max(LEAST * strongest, Math.min(OVER_NOISE * noise, ENOUGH * strongest));
    int at = -1;
    int later = 0;
    for (int i = first; i < last; i++) {
      boolean peak = envelope[i] >= envelope[i - 1] && envelope[i] > envelope[i + 1];
      if (peak && at < 0 && envelope[i] >= threshold) {
        at = i;
      } else if (peak && at >= 0 && (later == 0 || envelope[i] > envelope[later])) {
        later = i;
      }
    }
    if (at < 0) {
      return null;
    }
    return refined(spectrum, at, later == 0 ? 0 : envelope[later], later);
  }

  /** Between samples: a parabola through the samples, then a finer one through computed values. */
  private static FirstPeak refined(Spectrum spectrum, int at, double laterHeight, int later) {
    double place =
        at
            + AnalyticSignal.parabolicOffset(
                spectrum.envelopeAt(at - 1), spectrum.envelopeAt(at), spectrum.envelopeAt(at + 1));
    double before = spectrum.envelopeAt(place - GRID);
    double here = spectrum.envelopeAt(place);
    double after = spectrum.envelopeAt(place + GRID);
    double curvature = Math.max(0, 2 * here - before - after) / (GRID * GRID) / here;
    place += GRID * AnalyticSignal.parabolicOffset(before, here, after);
    double[] there = spectrum.analyticAt(place);
    return new FirstPeak(
        place,
        Math.hypot(there[0], there[1]),
        curvature,
        Math.atan2(there[1], there[0]),
        laterHeight,
        later);
  }

  /** How far noise may have moved the peak, samples, one standard deviation. */
  double jitter(double noise, PassBand band, double rateHz) {
    double steepness = curvature > 0 ? Math.sqrt(curvature) : band.widthHz() / rateHz;
    return noise / height / steepness;
  }
}
