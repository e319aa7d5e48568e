package org.footwell.factory.clip;

import org.footwell.calculation.Built;
import org.footwell.factory.clip.ClipPointResult.Clipping;
import org.footwell.signal.Harmonics;

/**
 * The tone at one volume step.
 *
 * @param index place in the request
 * @param step volume step
 * @param distortionPercent harmonics over fundamental, percent
 * @param outputV RMS voltage at the output, V, or null
 * @param levelDb level of the tone for differences, dB, or null
 * @param clipping how both halves clip, if they do
 * @param harmonics of a capture, or null
 * @param unsteadyDb how far the level moves within a capture, dB
 * @param peak largest sample of a capture, full scale being 1
 */
@Built
record VolumeStepTone(
    int index,
    int step,
    double distortionPercent,
    Double outputV,
    Double levelDb,
    Clipping clipping,
    Harmonics harmonics,
    double unsteadyDb,
    double peak) {

  Double percent(double part) {
    return harmonics == null ? null : (Double) (100 * part / harmonics.fundamental());
  }

  /** A harmonic from the second on over the fundamental in percent, or null if not in the band. */
  Double percentOf(int harmonic) {
    return harmonics == null || harmonics.each().size() < harmonic - 1
        ? null
        : percent(harmonics.each().get(harmonic - 2));
  }

  double floorPercent() {
    return harmonics == null ? 0 : 100 * harmonics.floor() / harmonics.fundamental();
  }
}
