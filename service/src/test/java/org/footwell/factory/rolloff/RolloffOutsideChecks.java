package org.footwell.factory.rolloff;

import java.util.List;
import org.footwell.physics.ThirdOctaves;
import org.footwell.recording.Recording;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;

class RolloffOutsideChecks extends OutsideChecks {

  private double[] samples;

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        OutsideCheck.of("bass-rolloff", "band level, dB", "scipy-noise-bands.csv")
            .printed("level_db")
            .computed(this::levelDb)
            .within(0.01),
        OutsideCheck.of("bass-rolloff", "level of a shelf, dB", "scipy-low-shelves.csv")
            .printed("level_db")
            .computed(row -> LowShelf.levelDb(row.number("gain_db"), row.number("ratio")))
            .within(1e-7));
  }

  /** The samples stand in the first row only. */
  private double levelDb(Row row) {
    if (!row.text("samples").equals("-")) {
      String[] texts = row.text("samples").split(" ", -1);
      samples = new double[texts.length];
      for (int n = 0; n < samples.length; n++) {
        samples[n] = Double.parseDouble(texts[n]);
      }
    }
    float[] single = new float[samples.length];
    for (int n = 0; n < single.length; n++) {
      single[n] = (float) samples[n];
    }
    double[] bands = ThirdOctaves.between(25, 2000).toArray();
    int band = (int) Math.round(10 * Math.log10(row.number("frequency_hz") / bands[0]));
    return BandTable.levels(Recording.of(8000, single), bands).get(band);
  }
}
