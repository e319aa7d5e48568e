package org.footwell.factory.clip;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.factory.clip.ClipPointRequest.Reading;
import org.footwell.factory.clip.ClipPointResult.Clipping;
import org.footwell.physics.Decibels;
import org.footwell.recording.Recording;
import org.footwell.signal.Harmonics;

/** Makes the tone at each volume step of captures or of readings. */
final class ToneReader {

  /** More samples are not needed: the middle of a longer capture is taken. */
  static final int MOST_SAMPLES = 1 << 18;

  /** Even over odd harmonics, or a difference of the peaks, from which on clipping is lopsided. */
  private static final double LOPSIDED_HARMONICS = 0.3;

  private static final double LOPSIDED_PEAKS = 0.05;

  /** Harmonics over fundamental in percent. */
  static final Formula.Of2 DISTORTION =
      Formula.of(
              "distortion_percent",
              "100·√(ΣUk²)/U1",
              "%",
              Source.of("Harmonics over fundamental, by definition; the text fixes which is meant"))
          .with("√(ΣUk²)", "U1", (harmonics, fundamental) -> 100 * harmonics / fundamental);

  /** RMS voltage at the output from RMS in samples, volts at a sample of 1 and the probe's ratio. */
  static final Formula.Of3 OUTPUT =
      Formula.of("output_v", "u·full scale·ratio", "V", DEFINITION)
          .with("u", "full scale", "ratio", (u, fullScale, ratio) -> u * fullScale * ratio);

  private ToneReader() {}

  /** All steps, rising. */
  static List<VolumeStepTone> read(ClipPointRequest q, Run run) {
    List<VolumeStepTone> tones = new ArrayList<>();
    if (q.readings() != null) {
      for (int i = 0; i < q.readings().size(); i++) {
        tones.add(reading(i, q.readings().get(i)));
      }
    } else {
      for (int i = 0; i < q.captures().size(); i++) {
        run.checkDeadline();
        VolumeStepTone tone = capture(i, q, run);
        if (tone != null) {
          tones.add(tone);
        }
      }
    }
    run.requireNoFaults();
    tones.sort(Comparator.comparingInt(VolumeStepTone::step));
    return tones;
  }

  private static VolumeStepTone reading(int index, Reading reading) {
    Clipping clipping = Clipping.UNKNOWN;
    if (reading.positivePeakV() != null) {
      double up = reading.positivePeakV();
      double down = reading.negativePeakV();
      boolean lopsided = Math.abs(up - down) > LOPSIDED_PEAKS * Math.max(up, down);
      clipping = lopsided ? Clipping.ASYMMETRIC : Clipping.SYMMETRIC;
    }
    return VolumeStepToneBuilder.builder()
        .index(index)
        .step(reading.volumeStep())
        .distortionPercent(reading.distortionPercent())
        .outputV(reading.outputV())
        .levelDb(
            reading.outputV() == null ? null : (Double) Decibels.ofAmplitude(reading.outputV()))
        .clipping(clipping)
        .unsteadyDb(0)
        .peak(0)
        .build();
  }

  private static VolumeStepTone capture(int index, ClipPointRequest q, Run run) {
    Recording recording = q.captures().get(index).recording();
    double[] all = recording.samples().toDoubles();
    int skip = Math.max(0, (all.length - MOST_SAMPLES) / 2);
    double[] samples = skip == 0 ? all : Arrays.copyOfRange(all, skip, skip + MOST_SAMPLES);
    String at = "/captures/" + index + "/recording";
    double rate = recording.rateHz();
    if (tooShort(samples, rate, q, at, run)) {
      return null;
    }
    Harmonics harmonics = Harmonics.of(samples, rate, q.toneHz(), q.bandEdgeHz());
    if (harmonics == null) {
      run.refuse(ClipFault.TONE_NOT_FOUND).at(at);
      return null;
    }
    if (harmonics.each().size() == 0) {
      run.refuse(ClipFault.NO_HARMONIC_IN_BAND)
          .at(at)
          .given(harmonics.fundamentalHz() + " Hz")
          .allowed(
              Allowed.only(
                  Math.min(q.bandEdgeHz(), Harmonics.highestHz(samples.length, rate)) + " Hz"));
      return null;
    }
    double u1 = harmonics.fundamental();
    Double volts = q.fullScaleV() == null ? null : OUTPUT.at(u1, q.fullScaleV(), q.probeRatio());
    boolean told = harmonics.all() > harmonics.floor();
    boolean lopsided = harmonics.even() > LOPSIDED_HARMONICS * harmonics.odd();
    return VolumeStepToneBuilder.builder()
        .index(index)
        .step(q.captures().get(index).volumeStep())
        .distortionPercent(DISTORTION.at(harmonics.all(), u1))
        .outputV(volts)
        .levelDb(Decibels.ofAmplitude(u1))
        .clipping(!told ? Clipping.UNKNOWN : lopsided ? Clipping.ASYMMETRIC : Clipping.SYMMETRIC)
        .harmonics(harmonics)
        .unsteadyDb(Harmonics.unsteadinessDb(samples, rate, harmonics.fundamentalHz()))
        .peak(Arrays.stream(samples).map(Math::abs).max().orElse(0))
        .build();
  }

  /** Refuses a capture that cannot hold enough periods: of the tone stated, or of any. */
  private static boolean tooShort(
      double[] samples, double rate, ClipPointRequest q, String at, Run run) {
    double tone = q.toneHz() == null ? Harmonics.highestHz(samples.length, rate) / 2 : q.toneHz();
    double periods = tone * samples.length / rate;
    if (periods >= Harmonics.FEWEST_PERIODS) {
      return false;
    }
    run.refuse(ClipFault.TOO_FEW_PERIODS)
        .at(at)
        .given(Phrase.of(ToneWords.PERIODS).with("count", Math.floor(periods)))
        .allowed(Phrase.of(ToneWords.AT_LEAST_PERIODS).with("count", Harmonics.FEWEST_PERIODS));
    return true;
  }
}
