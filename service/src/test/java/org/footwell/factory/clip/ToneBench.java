package org.footwell.factory.clip;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.factory.clip.ClipPointRequest.Capture;
import org.footwell.factory.clip.ClipPointRequest.OutputLoad;
import org.footwell.factory.clip.ClipPointRequest.Reading;
import org.footwell.factory.clip.ClipPointResult.StepFigures;
import org.footwell.recording.Recording;

/** A request in the making: captures of a made-up output that holds its voltage. */
final class ToneBench {

  static final double RATE_HZ = 48_000;
  static final double TONE_HZ = 97.3;

  final List<Capture> captures = new ArrayList<>();
  List<Reading> readings;
  Double toneHz;
  Double toneDbfs;
  Double bandEdgeHz = 2000.0;
  Double limitPercent;
  Double fullScaleV;
  Double probeRatio;
  OutputLoad terminals = OutputLoad.OPEN;
  Double loadOhm;
  Boolean differential = true;
  Boolean bridged;

  /** Noise in the captures that follow: RMS, full scale being 1. */
  double noise;

  int samples = 24_000;
  double toneMadeHz = TONE_HZ;
  private final Random random = new Random(1);

  ToneBench step(int step, double amplitude, double top, double bottom) {
    float[] wave = new float[samples];
    for (int n = 0; n < wave.length; n++) {
      double sine = amplitude * Math.sin(2 * Math.PI * toneMadeHz * n / RATE_HZ + 0.4);
      wave[n] = (float) (Math.max(-bottom, Math.min(top, sine)) + noise * random.nextGaussian());
    }
    return step(step, wave);
  }

  ToneBench step(int step, float... wave) {
    captures.add(new Capture(step, Recording.of(RATE_HZ, wave)));
    return this;
  }

  ToneBench reading(int step, double percent, Double volts) {
    readings = readings == null ? new ArrayList<>() : readings;
    readings.add(new Reading(step, percent, volts, null, null));
    return this;
  }

  ClipPointRequest request() {
    return ClipPointRequestBuilder.builder()
        .captures(captures.isEmpty() ? null : captures)
        .readings(readings)
        .toneHz(toneHz)
        .toneDbfs(toneDbfs)
        .bandEdgeHz(bandEdgeHz)
        .limitPercent(limitPercent)
        .fullScaleV(fullScaleV)
        .probeRatio(probeRatio)
        .terminals(terminals)
        .loadOhm(loadOhm)
        .measuredDifferentially(differential)
        .bridged(bridged)
        .build();
  }

  Answer<ClipPointResult> answer() {
    return Answers.of(new ClipPoint(), request());
  }

  List<String> codes() {
    return Answers.codes(answer());
  }

  StepFigures first() {
    return answer().result().steps().get(0);
  }

  List<String> faults() {
    return Answers.faults(new ClipPoint(), request()).stream().map(ToneBench::text).toList();
  }

  private static String text(Fault fault) {
    return fault.pointer() + " " + fault.code();
  }
}
