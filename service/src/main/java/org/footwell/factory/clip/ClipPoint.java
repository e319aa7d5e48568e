package org.footwell.factory.clip;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.FaultCode;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.factory.clip.ClipPointResult.Clipping;
import org.footwell.factory.clip.ClipPointResult.StepFigures;
import org.footwell.parts.Safety;
import org.footwell.physics.Decibels;
import org.footwell.physics.Electricity;
import org.footwell.recording.Recording;
import org.footwell.recording.RecordingFault;
import org.footwell.recording.Wav;
import org.footwell.signal.Harmonics;
import org.footwell.signal.Hum;
import org.footwell.signal.Spectrum;
import org.footwell.signal.Window;

/** Up to which volume step an output is clean, and what voltage it gives there. */
public final class ClipPoint implements Calculation<ClipPointRequest, ClipPointResult> {

  private static final Card<ClipPointRequest, ClipPointResult> CARD =
      Card.of("clip-point", ClipPointRequest.class, ClipPointResult.class)
          .title("Highest clean volume step of an output")
          .purpose(
              "Up to which volume step is an output clean, from captures of a sine at rising"
                  + " steps; do both halves clip alike, what voltage does it give there, and what"
                  + " input sensitivity follows for the next device.")
          .example(ClipExample.json())
          .sources(
              Harmonics.METHOD,
              Hum.MAINS,
              Window.HARRIS,
              Spectrum.TRANSFORM,
              Wav.RIFF,
              Electricity.LAW,
              Source.COMMON_PRACTICE)
          .limits(
              "Distortion is harmonics over fundamental up to the band's edge, noise and hum taken"
                  + " out; what an analyser calls distortion and noise is more.",
              "Harmonics that the recorder or its filter cuts off are not seen; a recorder without"
                  + " a filter folds them back, and they count as noise.",
              "All captures must be made with the same gain of the recorder; a capture holds 12"
                  + " periods of the tone or more, and its middle 262,144 samples are used.",
              "A clean step holds for its tone: equalisers and loudness functions in the source"
                  + " make other frequencies clip earlier.",
              "Other distortion than clipping counts like clipping.")
          .findings(ClipFinding.values())
          .refusals(
              Stream.<FaultCode>concat(
                      Stream.of(ClipFault.values()), Stream.of(RecordingFault.values()))
                  .toArray(FaultCode[]::new))
          .cautions(Safety.HEARING, Safety.AIRBAG)
          .build();

  @Override
  public Card<ClipPointRequest, ClipPointResult> card() {
    return CARD;
  }

  @Override
  public ClipPointResult compute(ClipPointRequest q, Run run) {
    List<VolumeStepTone> tones = ToneReader.read(q, run);
    CleanRange range = CleanRange.of(tones, q.limitPercent());
    ClipRemarks.make(q, range, run);
    VolumeStepTone clean = range.highest();
    VolumeStepTone unclean = range.firstUnclean();
    note(q, clean, run);
    FullScale full = FullScale.of(q, range, run);
    Double volts = clean == null ? null : clean.outputV();
    return ClipPointResultBuilder.builder()
        .cleanStep(clean == null ? null : (Integer) clean.step())
        .cleanDistortionPercent(clean == null ? null : (Double) clean.distortionPercent())
        .cleanOutputV(volts)
        .terminals(q.terminals())
        .cleanPowerW(
            volts == null || q.loadOhm() == null
                ? null
                : (Double) run.apply(Electricity.POWER, volts, q.loadOhm()))
        .uncleanStep(unclean == null ? null : (Integer) unclean.step())
        .uncleanDistortionPercent(unclean == null ? null : (Double) unclean.distortionPercent())
        .clipping(unclean == null ? Clipping.UNKNOWN : unclean.clipping())
        .fullScaleStep(full == null ? null : (Integer) full.step())
        .inputSensitivityV(full == null ? null : (Double) full.outputV())
        .bandEdgeHz(bandEdge(q))
        .steps(figures(q, tones))
        .build();
  }

  /** Notes the steps of the clean capture for the workings. */
  private static void note(ClipPointRequest q, VolumeStepTone clean, Run run) {
    if (clean != null && clean.harmonics() != null) {
      Harmonics harmonics = clean.harmonics();
      run.apply(ToneReader.DISTORTION, harmonics.all(), harmonics.fundamental());
      if (q.fullScaleV() != null) {
        run.apply(ToneReader.OUTPUT, harmonics.fundamental(), q.fullScaleV(), q.probeRatio());
      }
    }
  }

  private static Double bandEdge(ClipPointRequest q) {
    if (q.captures() == null) {
      return null;
    }
    double edge = q.bandEdgeHz();
    for (ClipPointRequest.Capture capture : q.captures()) {
      Recording recording = capture.recording();
      int size = Math.min(ToneReader.MOST_SAMPLES, recording.samples().size());
      edge = Math.min(edge, Harmonics.highestHz(size, recording.rateHz()));
    }
    return edge;
  }

  private static List<StepFigures> figures(ClipPointRequest q, List<VolumeStepTone> tones) {
    List<StepFigures> all = new ArrayList<>();
    for (int i = 0; i < tones.size(); i++) {
      VolumeStepTone tone = tones.get(i);
      Harmonics one = tone.harmonics();
      boolean captured = one != null;
      boolean hum = captured && one.hum() != null;
      all.add(
          ClipPointResultStepFiguresBuilder.builder()
              .volumeStep(tone.step())
              .distortionPercent(tone.distortionPercent())
              .clean(tone.distortionPercent() <= q.limitPercent())
              .evenPercent(captured ? tone.percent(one.even()) : null)
              .oddPercent(captured ? tone.percent(one.odd()) : null)
              .secondPercent(tone.percentOf(2))
              .thirdPercent(tone.percentOf(3))
              .noisePercent(captured ? tone.percent(one.noise()) : null)
              .humHz(hum ? (Double) one.hum().mainsHz() : null)
              .humPercent(hum ? tone.percent(one.hum().rms()) : null)
              .floorPercent(captured ? (Double) tone.floorPercent() : null)
              .toneHz(captured ? (Double) one.fundamentalHz() : null)
              .harmonicCount(captured ? (Integer) one.each().size() : null)
              .recordedLevelDb(captured ? (Double) (tone.levelDb() + Decibels.SINE_CREST) : null)
              .outputV(tone.outputV())
              .riseDb(ClipRemarks.rise(tones, i))
              .build());
    }
    return all;
  }
}
