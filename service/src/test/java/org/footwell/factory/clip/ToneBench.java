package org.footwell.factory.clip;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.footwell.RequestUnderTest;
import org.footwell.factory.clip.ClipPointRequest.Capture;
import org.footwell.factory.clip.ClipPointRequest.OutputLoad;
import org.footwell.factory.clip.ClipPointRequest.Reading;
import org.footwell.factory.clip.ClipPointResult.StepFigures;
import org.footwell.recording.Recording;

/** Captures of a made-up output that holds its voltage. */
final class ToneBench extends RequestUnderTest<ClipPointRequest, ClipPointResult> {

  static final double RATE_HZ = 48_000;
  static final double TONE_HZ = 97.3;

  private final List<Capture> captures = new ArrayList<>();
  final List<Reading> readings = new ArrayList<>();
  final ClipPointRequestBuilder draft =
      ClipPointRequestBuilder.builder()
          .bandEdgeHz(2000.0)
          .terminals(OutputLoad.OPEN)
          .measuredDifferentially(true);

  /** Noise in the captures that follow: RMS, full scale being 1. */
  double noise;

  int samples = 24_000;
  double toneMadeHz = TONE_HZ;
  private final Random random = new Random(1);

  ToneBench() {
    super(new ClipPoint());
  }

  ToneBench step(int step, double amplitude, double top, double bottom) {
    float[] wave = new float[samples];
    for (int n = 0; n < wave.length; n++) {
      double sine = amplitude * Math.sin(2 * Math.PI * toneMadeHz * n / RATE_HZ + 0.4);
      wave[n] = (float) (Math.max(-bottom, Math.min(top, sine)) + noise * random.nextGaussian());
    }
    return step(step, wave);
  }

  ToneBench step(int step, float... wave) {
    return step(step, Recording.of(RATE_HZ, wave));
  }

  ToneBench step(int step, Recording recording) {
    captures.add(new Capture(step, recording));
    draft.captures(captures);
    return this;
  }

  ToneBench reading(int step, double percent, Double volts) {
    return reading(new Reading(step, percent, volts, null, null));
  }

  ToneBench reading(Reading reading) {
    readings.add(reading);
    draft.readings(readings);
    return this;
  }

  @Override
  public ClipPointRequest request() {
    return draft.build();
  }

  StepFigures first() {
    return result().steps().get(0);
  }
}
