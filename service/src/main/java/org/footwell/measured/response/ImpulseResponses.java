package org.footwell.measured.response;

import java.util.Arrays;
import org.footwell.calculation.Arithmetic;
import org.footwell.recording.Recording;
import org.footwell.signal.ExponentialSweep;
import org.footwell.signal.PassBand;
import org.footwell.signal.SweepDeconvolution;

/** Impulse responses of recordings: as given, or made of sweeps. */
public final class ImpulseResponses {

  /** No sound takes longer to the listener, chain and reflections included, s. */
  private static final double LONGEST_S = 2;

  private final double rateHz;
  private final double leadInS;
  private final SweepDeconvolution deconvolution;

  /**
   * Prepares what all recordings of a request share.
   *
   * @param sweep what was played, or null for impulse responses
   * @param longest most samples of a recording
   * @param arithmetic whose deadline is kept between transforms
   */
  public ImpulseResponses(PlayedSweep sweep, double rateHz, int longest, Arithmetic arithmetic) {
    this.rateHz = rateHz;
    leadInS = sweep == null ? 0 : sweep.leadInS();
    deconvolution =
        sweep == null ? null : deconvolution(sweep, rateHz, longest, arithmetic::checkDeadline);
  }

  private static SweepDeconvolution deconvolution(
      PlayedSweep sweep, double rate, int longest, Runnable inTime) {
    return new SweepDeconvolution(
        new ExponentialSweep(sweep.fromHz(), sweep.toHz(), sweep.durationS()),
        rate,
        longest,
        inTime);
  }

  public double rateHz() {
    return rateHz;
  }

  /** The range responses are limited to; null without a sweep. */
  public PassBand range() {
    return deconvolution == null ? null : deconvolution.range();
  }

  /** What a flat response that arrives at a sample would be for levels. */
  public double[] flat(int samples, int at) {
    double[] flat = new double[samples];
    if (deconvolution == null) {
      flat[at] = 1;
    } else {
      double[] edges = deconvolution.edgesAlone();
      System.arraycopy(edges, 0, flat, at, Math.min(edges.length, samples - at));
    }
    return flat;
  }

  /** From the first sample of a response to the start of what was played, s. */
  public double startS() {
    return leadInS;
  }

  /** The impulse response of a recording. */
  public double[] of(Recording recording) {
    double[] samples = recording.samples().toDoubles();
    if (deconvolution == null) {
      return samples;
    }
    return limited(deconvolution.response(samples));
  }

  /** The same for levels: see {@link SweepDeconvolution#responseForLevels}. */
  public double[] forLevels(Recording recording) {
    double[] samples = recording.samples().toDoubles();
    return deconvolution == null ? samples : limited(deconvolution.responseForLevels(samples));
  }

  /** Of a sweep: see {@link SweepDeconvolution#beforeStartDb}. */
  public double beforeStartDb(Recording recording) {
    return deconvolution.beforeStartDb(recording.samples().toDoubles(), rateHz);
  }

  private double[] limited(double[] response) {
    int most = (int) ((leadInS + LONGEST_S) * rateHz);
    return response.length <= most ? response : Arrays.copyOf(response, most);
  }
}
