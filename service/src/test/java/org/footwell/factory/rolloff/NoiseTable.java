package org.footwell.factory.rolloff;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.footwell.RequestUnderTest;
import org.footwell.factory.rolloff.BassRolloffRequest.BandAtStep;
import org.footwell.factory.rolloff.BassRolloffRequest.NoiseCapture;
import org.footwell.factory.rolloff.BassRolloffResult.StepLoss;
import org.footwell.recording.Recording;

/** What was measured of a source whose bass is held back by a shelf or by a plain cut. */
final class NoiseTable extends RequestUnderTest<BassRolloffRequest, BassRolloffResult> {

  static final double[] BANDS = {
    25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600,
    2000
  };

  static final double RATE_HZ = 8000;

  final List<BandAtStep> levels = new ArrayList<>();
  private final List<NoiseCapture> captures = new ArrayList<>();
  final BassRolloffRequestBuilder draft = BassRolloffRequestBuilder.builder();

  NoiseTable() {
    super(new BassRolloff());
  }

  /** A step whose bands up to 100 Hz lie {@code lossDb} lower than the rest. */
  NoiseTable cut(int step, double lossDb) {
    for (double band : BANDS) {
      level(step, band, step - 50 - (band <= 100 ? lossDb : 0));
    }
    return this;
  }

  /** A step whose bass is changed by a low shelf. */
  NoiseTable shelf(int step, double gainDb, double frequencyHz) {
    for (double band : BANDS) {
      level(step, band, step - 50 + LowShelf.levelDb(gainDb, band / frequencyHz));
    }
    return this;
  }

  NoiseTable level(int step, double band, double levelDb) {
    levels.add(new BandAtStep(step, band, levelDb));
    draft.levels(levels);
    return this;
  }

  /** A capture of white noise, its bass halved by a first-order high-pass shelf if asked for. */
  NoiseTable capture(int step, double seconds, double gainDb, double bassFactor, long seed) {
    Random random = new Random(seed);
    float[] samples = new float[(int) (seconds * RATE_HZ)];
    double slow = 0;
    double pole = Math.exp(-2 * Math.PI * 60 / RATE_HZ);
    double gain = 0.05 * Math.pow(10, gainDb / 20);
    for (int n = 0; n < samples.length; n++) {
      double white = random.nextGaussian();
      slow = pole * slow + (1 - pole) * white;
      samples[n] = (float) (gain * (white + (bassFactor - 1) * slow));
    }
    return capture(step, Recording.of(RATE_HZ, samples));
  }

  NoiseTable capture(int step, Recording recording) {
    captures.add(new NoiseCapture(step, recording));
    draft.captures(captures);
    return this;
  }

  @Override
  public BassRolloffRequest request() {
    return draft.build();
  }

  StepLoss step(int index) {
    return result().steps().get(index);
  }
}
