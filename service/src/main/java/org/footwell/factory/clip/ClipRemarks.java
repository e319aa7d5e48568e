package org.footwell.factory.clip;

import static org.footwell.factory.clip.ClipFinding.BAND_CUT_BY_RATE;
import static org.footwell.factory.clip.ClipFinding.CAPTURE_TRIMMED;
import static org.footwell.factory.clip.ClipFinding.CLEAN_AGAIN_ABOVE;
import static org.footwell.factory.clip.ClipFinding.CLIPPING_ASYMMETRIC;
import static org.footwell.factory.clip.ClipFinding.CLIPPING_NOT_REACHED;
import static org.footwell.factory.clip.ClipFinding.HARMONICS_FEW;
import static org.footwell.factory.clip.ClipFinding.HUM_SEEN;
import static org.footwell.factory.clip.ClipFinding.LEVEL_FALLS_WITH_VOLUME;
import static org.footwell.factory.clip.ClipFinding.LEVEL_STOPS_RISING;
import static org.footwell.factory.clip.ClipFinding.LOW_STEPS_UNCLEAN;
import static org.footwell.factory.clip.ClipFinding.MEASURED_AGAINST_GROUND;
import static org.footwell.factory.clip.ClipFinding.MEASURING_UNKNOWN;
import static org.footwell.factory.clip.ClipFinding.NOISE_HIDES_DISTORTION;
import static org.footwell.factory.clip.ClipFinding.NO_CLEAN_STEP;
import static org.footwell.factory.clip.ClipFinding.RECORDER_NEAR_FULL_SCALE;
import static org.footwell.factory.clip.ClipFinding.STEPS_SKIPPED;
import static org.footwell.factory.clip.ClipFinding.TONES_DIFFER;
import static org.footwell.factory.clip.ClipFinding.TONE_NOT_STEADY;
import static org.footwell.factory.clip.ClipFinding.VOLTAGE_UNKNOWN;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.footwell.calculation.Run;
import org.footwell.factory.clip.ClipPointResult.Clipping;
import org.footwell.physics.Decibels;
import org.footwell.recording.Recording;
import org.footwell.signal.Harmonics;

/** What there is to say about the steps. */
final class ClipRemarks {

  /** All of these are common practice, no source. */
  private static final double STEADY_DB = 0.3;

  private static final double NEAR_FULL_SCALE = 0.98;
  private static final double SAME_TONE = 0.01;
  private static final double FALL_DB = 0.2;

  /** A clean step that rises by less than this part of the usual rise is held back. */
  private static final double HELD_BACK = 0.25;

  private static final double USUAL_RISE_DB = 0.3;

  /** With fewer harmonics in the band, much of what clipping makes lies above it. */
  private static final int FEW_HARMONICS = 4;

  /** Hum below this share of the limit of distortion is not worth a word. */
  private static final double NAMED_HUM = 0.1;

  private final ClipPointRequest q;
  private final CleanRange range;
  private final Run run;

  private ClipRemarks(ClipPointRequest q, CleanRange range, Run run) {
    this.q = q;
    this.range = range;
    this.run = run;
  }

  static void make(ClipPointRequest q, CleanRange range, Run run) {
    ClipRemarks remarks = new ClipRemarks(q, range, run);
    remarks.measuring();
    remarks.steps();
    remarks.rises();
    if (q.captures() != null) {
      remarks.captures();
    }
  }

  private void measuring() {
    if (q.bridged() && q.measuredDifferentially() == null) {
      run.find(MEASURING_UNKNOWN).at("/measured_differentially");
    } else if (q.bridged() && !q.measuredDifferentially()) {
      run.find(MEASURED_AGAINST_GROUND).at("/measured_differentially");
    }
    if (range.tones().stream().anyMatch(tone -> tone.outputV() == null)) {
      run.find(VOLTAGE_UNKNOWN).at(q.captures() != null ? "/full_scale_v" : "/readings");
    }
  }

  private void steps() {
    VolumeStepTone unclean = range.firstUnclean();
    if (range.none()) {
      run.find(NO_CLEAN_STEP)
          .at(at(unclean))
          .value(
              range.tones().stream()
                  .mapToDouble(VolumeStepTone::distortionPercent)
                  .min()
                  .orElseThrow())
          .limit(q.limitPercent());
      return;
    }
    if (range.first() > 0) {
      run.find(LOW_STEPS_UNCLEAN)
          .at(at(range.tones().get(range.first() - 1)))
          .value(range.tones().get(range.first()).step())
          .limit(q.limitPercent());
    }
    if (unclean == null) {
      run.find(CLIPPING_NOT_REACHED)
          .at(at(range.highest()))
          .value(range.highest().step())
          .limit(q.limitPercent());
      return;
    }
    if (unclean.step() - range.highest().step() > 1) {
      run.find(STEPS_SKIPPED).at(at(unclean)).value(unclean.step()).limit(range.highest().step());
    }
    if (unclean.clipping() == Clipping.ASYMMETRIC) {
      run.find(CLIPPING_ASYMMETRIC).at(at(unclean)).value(unclean.step());
    }
    VolumeStepTone again = range.cleanAgain();
    if (again != null) {
      run.find(CLEAN_AGAIN_ABOVE).at(at(again)).value(again.step()).limit(unclean.step());
    }
  }

  private void rises() {
    List<VolumeStepTone> tones = range.tones();
    double[] rises = new double[Math.max(0, tones.size() - 1)];
    for (int i = 0; i < rises.length; i++) {
      Double rise = rise(tones, i + 1);
      rises[i] = rise == null ? Double.NaN : rise;
      if (rise != null && rise < -FALL_DB) {
        run.find(LEVEL_FALLS_WITH_VOLUME)
            .at(at(tones.get(i + 1)))
            .value(-rise)
            .with("step", tones.get(i + 1).step());
      }
    }
    for (int i = 1; i < rises.length && i < range.last(); i++) {
      double perStep = rises[i] / width(tones, i + 1);
      double before = rises[i - 1] / width(tones, i);
      if (before > USUAL_RISE_DB && perStep < HELD_BACK * before && perStep >= -FALL_DB) {
        run.find(LEVEL_STOPS_RISING)
            .at(at(tones.get(i + 1)))
            .value(perStep)
            .limit(before)
            .with("step", tones.get(i + 1).step());
        return;
      }
    }
  }

  private static int width(List<VolumeStepTone> tones, int i) {
    return tones.get(i).step() - tones.get(i - 1).step();
  }

  /** Rise over the step before, dB, or null. */
  static Double rise(List<VolumeStepTone> tones, int i) {
    if (i == 0 || tones.get(i).levelDb() == null || tones.get(i - 1).levelDb() == null) {
      return null;
    }
    return tones.get(i).levelDb() - tones.get(i - 1).levelDb();
  }

  private void captures() {
    for (VolumeStepTone tone : range.tones()) {
      capture(tone);
    }
    hum();
    VolumeStepTone last = range.tones().get(range.tones().size() - 1);
    double tone = last.harmonics().fundamentalHz();
    range.tones().stream()
        .filter(other -> Math.abs(other.harmonics().fundamentalHz() / tone - 1) > SAME_TONE)
        .findFirst()
        .ifPresent(
            other ->
                run.find(TONES_DIFFER)
                    .at(at(other))
                    .value(other.harmonics().fundamentalHz())
                    .limit(tone)
                    .with("step", other.step()));
    Recording recording = q.captures().get(last.index()).recording();
    int size = Math.min(ToneReader.MOST_SAMPLES, recording.samples().size());
    double reach = Harmonics.highestHz(size, recording.rateHz());
    if (reach < q.bandEdgeHz() && (last.harmonics().each().size() + 2) * tone <= q.bandEdgeHz()) {
      run.find(BAND_CUT_BY_RATE).at("/band_edge_hz").value(reach).limit(q.bandEdgeHz());
    }
    int harmonics =
        range.tones().stream()
            .map(VolumeStepTone::harmonics)
            .filter(Objects::nonNull)
            .mapToInt(one -> one.each().size())
            .min()
            .orElseThrow();
    if (harmonics < FEW_HARMONICS) {
      run.find(HARMONICS_FEW).at("/captures").value(harmonics).limit(FEW_HARMONICS);
    }
  }

  /** Names hum once, where it is strongest against the tone. */
  private void hum() {
    range.tones().stream()
        .filter(tone -> tone.harmonics().hum() != null)
        .max(Comparator.comparingDouble(tone -> tone.percent(tone.harmonics().hum().rms())))
        .filter(tone -> tone.percent(tone.harmonics().hum().rms()) > NAMED_HUM * q.limitPercent())
        .ifPresent(
            tone ->
                run.find(HUM_SEEN)
                    .at(at(tone))
                    .value(tone.percent(tone.harmonics().hum().rms()))
                    .with("step", tone.step())
                    .with("frequency", tone.harmonics().hum().mainsHz()));
  }

  private void capture(VolumeStepTone tone) {
    if (tone.peak() >= NEAR_FULL_SCALE && tone.peak() <= 1) {
      run.find(RECORDER_NEAR_FULL_SCALE)
          .at(at(tone))
          .value(Decibels.ofAmplitude(tone.peak()))
          .with("step", tone.step());
    }
    if (tone.floorPercent() > q.limitPercent()) {
      run.find(NOISE_HIDES_DISTORTION)
          .at(at(tone))
          .value(tone.floorPercent())
          .limit(q.limitPercent())
          .with("step", tone.step());
    }
    if (tone.unsteadyDb() > STEADY_DB) {
      run.find(TONE_NOT_STEADY)
          .at(at(tone))
          .value(tone.unsteadyDb())
          .limit(STEADY_DB)
          .with("step", tone.step());
    }
    int size = q.captures().get(tone.index()).recording().samples().size();
    if (size > ToneReader.MOST_SAMPLES) {
      run.find(CAPTURE_TRIMMED)
          .at(at(tone))
          .value(size)
          .limit(ToneReader.MOST_SAMPLES)
          .with("step", tone.step());
    }
  }

  private String at(VolumeStepTone tone) {
    return (q.captures() != null ? "/captures/" : "/readings/") + tone.index();
  }
}
