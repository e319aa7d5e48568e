package org.footwell.factory.clip;

import java.util.List;
import org.footwell.factory.clip.ClipPointResult.StepFigures;
import org.footwell.recording.Recording;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class ClipOutsideChecks extends OutsideChecks {

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        held("distortion_percent", "all_percent").computed(row -> held(row).distortionPercent()),
        held("even_percent", "even_percent").computed(row -> held(row).evenPercent()),
        held("odd_percent", "odd_percent").computed(row -> held(row).oddPercent()),
        // A fit cannot take the noise out: where there are no even harmonics it finds 0.06 % of
        // noise.
        noisy("even_percent").computed(row -> noisy(row).evenPercent()).within(0.07),
        noisy("odd_percent").computed(row -> noisy(row).oddPercent()).within(0.03),
        OutsideCheck.of("clip-point", "RMS of the fundamental", "scipy-harmonic-fits.csv")
            .printed("fundamental_rms")
            .computed(row -> Math.pow(10, noisy(row).recordedLevelDb() / 20) / Math.sqrt(2))
            .withinRelative(5e-4));
  }

  private static OutsideCheck held(String quantity, String column) {
    // A wave held within a sample is not sampled finely: a thousandth of a percent remains.
    return OutsideCheck.of("clip-point", quantity, "scipy-clipped-sines.csv")
        .printed(column)
        .within(0.002);
  }

  private static OutsideCheck noisy(String quantity) {
    return OutsideCheck.of("clip-point", quantity + ", with noise", "scipy-harmonic-fits.csv")
        .printed(quantity);
  }

  private static StepFigures held(Row row) {
    double top = 0.9 * row.number("top");
    double bottom = 0.9 * row.number("bottom");
    ToneBench bench = new ToneBench().step(1, 0.9, top, bottom);
    return bench.first();
  }

  private static StepFigures noisy(Row row) {
    String[] texts = row.text("samples").split(" ", -1);
    float[] samples = new float[texts.length];
    for (int n = 0; n < samples.length; n++) {
      samples[n] = Float.parseFloat(texts[n]);
    }
    ToneBench bench = new ToneBench();
    bench.step(1, Recording.of(8000, samples));
    return bench.first();
  }
}
