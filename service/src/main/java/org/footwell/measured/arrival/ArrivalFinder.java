package org.footwell.measured.arrival;

import org.footwell.measured.arrival.ArrivalTimesResult.Method;
import org.footwell.measured.arrival.CoarsePeak.Span;
import org.footwell.physics.Decibels;
import org.footwell.signal.NoiseFloor;
import org.footwell.signal.PassBand;
import org.footwell.signal.Spectrum;
import org.footwell.signal.Window;

/**
 * Finds the first sound in an impulse response: coarsely, then by the envelope in the band, then by
 * the excess phase around it.
 */
final class ArrivalFinder {

  /** Window around the first sound: periods of the lowest frequency used, and least time, s. */
  private static final double PERIODS_BEFORE = 1.5;

  private static final double PERIODS_AFTER = 4;
  private static final double LEAST_BEFORE_S = 0.003;
  private static final double LEAST_AFTER_S = 0.004;

  // By how much the model may be off, measured on made-up responses, see the method page: shares of
  // the inverse of the frequency up to which the magnitude is known, and of the bandwidth.
  private static final double ROLL_OFF_UNKNOWN = 0.6;
  private static final double RESPONSE_UNKNOWN = 0.1;
  private static final double ENVELOPE_OFF = 1;

  /** An envelope alone tells little about polarity. */
  private static final double ENVELOPE_CONFIDENCE = 0.25;

  /** Below this middle of a band, reflections cannot be told apart, Hz. */
  private static final double REFLECTIONS_FROM_HZ = 300;

  // What a low pulse must be so that it counts as direct sound: compact in the band used and in all
  // that is believed. In a hard cabin modes of either sign spread it; measured, see the method
  // page.
  private static final double COMPACT = 0.86;
  private static final double COMPACT_IN_ALL = 0.72;

  /** Below this middle of a band a cabin may sound in single modes, Hz. */
  private static final double MODES_BELOW_HZ = 600;

  /** Confidence of a polarity that modes may have turned over: less than sure. */
  private static final double AMONG_MODES_CONFIDENCE = 0.25;

  /** How far modes move an arrival, periods of the middle of the band; measured. */
  private static final double AMONG_MODES_OFF = 1;

  private static final double MOST_DB = 120;

  private final double rateHz;

  ArrivalFinder(double rateHz) {
    this.rateHz = rateHz;
  }

  /**
   * Looks for the first sound.
   *
   * @param stated the band the channel plays, or null to find it
   * @return null if nothing stands out of the noise
   */
  Arrival find(double[] response, PassBand stated, Equalised.Filters filters) {
    CoarsePeak coarse = CoarsePeak.of(response, rateHz, span(stated, filters));
    int before = (int) (coarse.span().beforeS * rateHz);
    int after = (int) (coarse.span().afterS * rateHz);
    double[] gate = Window.gate(before + after, before / 4, after / 2);
    double[] piece = cut(response, coarse.sample() - before, gate);
    int size = Spectrum.sizeFor(2 * gate.length);
    Spectrum spectrum = Spectrum.of(piece, size);
    double[] density = NoiseFloor.of(response, rateHz).densities(spectrum.bins(), rateHz);
    PassBand band = stated == null ? found(response, coarse, density) : stated;
    if (band == null) {
      return null;
    }
    PassBand used = SoundBand.used(band);
    double[] factors = used.factors(spectrum.bins(), rateHz);
    double noise = NoiseFloor.rms(density, factors);
    FirstPeak peak = FirstPeak.of(spectrum.weighted(factors), noise, 0, gate.length);
    if (peak == null) {
      return null;
    }
    double origin = coarse.sample() - before;
    return new Judged(peak, used, noise, origin, equalised(piece, peak, used, density, filters))
        .arrival();
  }

  /** The band of what is nearest to the coarse peak: longer pieces hold more noise. */
  private PassBand found(double[] response, CoarsePeak coarse, double[] density) {
    int before = (int) (coarse.span().beforeS / 2 * rateHz);
    int after = (int) (coarse.span().afterS / 2 * rateHz);
    double[] gate = Window.gate(before + after, before / 4, after / 2);
    double[] piece = cut(response, coarse.sample() - before, gate);
    Spectrum spectrum = Spectrum.of(piece, 2 * (density.length - 1));
    return SoundBand.found(spectrum, density, sumOfSquares(gate), gate.length / rateHz, rateHz);
  }

  private static Span span(PassBand stated, Equalised.Filters filters) {
    if (stated != null) {
      return Span.upTo(stated.highHz());
    }
    return filters.lowPass() == null ? null : Span.upTo(filters.lowPass().frequencyHz());
  }

  private Equalised equalised(
      double[] piece, FirstPeak peak, PassBand used, double[] density, Equalised.Filters filters) {
    int before = (int) (Math.max(LEAST_BEFORE_S, PERIODS_BEFORE / used.lowHz()) * rateHz);
    int after = (int) (Math.max(LEAST_AFTER_S, PERIODS_AFTER / used.lowHz()) * rateHz);
    double[] gate = Window.gate(before + after, before / 2, after / 2);
    int start = (int) peak.sample() - before;
    double[] near = new double[piece.length];
    for (int i = 0; i < gate.length; i++) {
      if (start + i >= 0 && start + i < near.length) {
        near[start + i] = piece[start + i] * gate[i];
      }
    }
    double[] noise = density.clone();
    double weight = sumOfSquares(gate);
    for (int k = 0; k < noise.length; k++) {
      noise[k] *= weight;
    }
    Spectrum spectrum = Spectrum.of(near, 2 * (density.length - 1));
    return Equalised.of(spectrum, noise, density, used, filters, rateHz);
  }

  /** A piece of the response from a sample on, which may lie before its start, through a gate. */
  private static double[] cut(double[] response, int from, double[] gate) {
    double[] piece = new double[gate.length];
    for (int i = 0; i < gate.length; i++) {
      int there = from + i;
      piece[i] = there >= 0 && there < response.length ? response[there] * gate[i] : 0;
    }
    return piece;
  }

  private static double sumOfSquares(double[] gate) {
    double sum = 0;
    for (double factor : gate) {
      sum += factor * factor;
    }
    return sum;
  }

  /** Both ways put together. */
  private final class Judged {
    private final FirstPeak envelope;
    private final PassBand band;
    private final double noise;
    private final double origin;
    private final Equalised equalised;

    Judged(FirstPeak envelope, PassBand band, double noise, double origin, Equalised equalised) {
      this.envelope = envelope;
      this.band = band;
      this.noise = noise;
      this.origin = origin;
      this.equalised = equalised;
    }

    Arrival arrival() {
      int size = equalised == null ? 0 : equalised.spectrum().size();
      FirstPeak pulse =
          equalised == null
              ? null
              : FirstPeak.of(equalised.spectrum(), equalised.noise(), 0, size / 2);
      return pulse == null
          ? arrival(Method.ENVELOPE, envelope, band, noise)
          : arrival(Method.EXCESS_PHASE, pulse, equalised.band(), equalised.noise());
    }

    private Arrival arrival(Method method, FirstPeak peak, PassBand in, double noiseIn) {
      boolean excess = method == Method.EXCESS_PHASE;
      double quarterTurns =
          Math.abs(Math.sin(peak.phase() / 2)) > Math.sqrt(0.5)
              ? (Math.PI - Math.abs(peak.phase())) / (Math.PI / 2)
              : Math.abs(peak.phase()) / (Math.PI / 2);
      double clear = Math.max(0, 1 - 4 * noiseIn / peak.height());
      double confidence = (1 - quarterTurns) * clear;
      double jitter = 2 * peak.jitter(noiseIn, in, rateHz) / rateHz;
      double model =
          excess
              ? ROLL_OFF_UNKNOWN / equalised.believedToHz() + RESPONSE_UNKNOWN / in.widthHz()
              : ENVELOPE_OFF / in.widthHz();
      boolean amongModes = excess && in.middleHz() < MODES_BELOW_HZ && spread(peak);
      double modes = amongModes ? AMONG_MODES_OFF / in.middleHz() : 0;
      double phase = excess ? quarterTurns / 4 / in.middleHz() : 0;
      boolean later = in.middleHz() >= REFLECTIONS_FROM_HZ && envelope.laterHeight() > 0;
      return ArrivalBuilder.builder()
          .method(method)
          .timeS((origin + peak.sample()) / rateHz)
          .uncertaintyS(Math.sqrt(jitter * jitter + model * model + phase * phase + modes * modes))
          .envelopeS((origin + envelope.sample()) / rateHz)
          .band(in)
          .polarity(Math.cos(peak.phase()) < 0 ? -1 : 1)
          .confidence(
              confidence * (amongModes ? AMONG_MODES_CONFIDENCE : excess ? 1 : ENVELOPE_CONFIDENCE))
          .signalToNoiseDb(Math.min(MOST_DB, Decibels.ofAmplitude(envelope.height() / noise)))
          .reflectionDb(
              later
                  ? Double.valueOf(Decibels.ofAmplitude(envelope.laterHeight() / envelope.height()))
                  : null)
          .reflectionS(
              later ? Double.valueOf((envelope.laterSample() - envelope.sample()) / rateHz) : null)
          .build();
    }

    /** Whether a pulse is that of modes rather than of direct sound. */
    private boolean spread(FirstPeak pulse) {
      return equalised.compactness(pulse.height(), rateHz) < COMPACT
          || equalised.wholeCompactness() < COMPACT_IN_ALL;
    }
  }
}
