package org.footwell.factory.rolloff;

import static org.footwell.factory.rolloff.RolloffFault.BAND_LEVEL_MISSING;

import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Phrase;
import org.footwell.factory.rolloff.BassRolloffRequest.BandAtStep;
import org.footwell.physics.ThirdOctaves;

/** Levels are a table. */
@Check.Of(
    value = {"*.volume_step", "*.frequency_hz"},
    says =
        "Every band is there once at every volume_step; a nominal frequency_hz is the exact one.")
final class LevelsComplete implements Check<List<BandAtStep>> {

  @Override
  public void check(List<BandAtStep> levels, Refusing to) {
    TreeMap<Integer, Set<Double>> rows = new TreeMap<>();
    TreeSet<Double> bands = new TreeSet<>();
    for (int i = 0; i < levels.size(); i++) {
      BandAtStep one = levels.get(i);
      double exact = ThirdOctaves.exactHz(one.frequencyHz());
      bands.add(exact);
      if (!rows.computeIfAbsent(one.volumeStep(), step -> new TreeSet<>()).add(exact)) {
        to.refuse(CoreFault.DUPLICATE).at("/" + i).given(band(one.frequencyHz(), one.volumeStep()));
      }
    }
    rows.forEach(
        (step, row) ->
            bands.stream()
                .filter(band -> !row.contains(band))
                .forEach(
                    band ->
                        to.refuse(BAND_LEVEL_MISSING)
                            .given(band((double) Math.round(band), step))));
  }

  private static Phrase band(double frequencyHz, int step) {
    return Phrase.of(StepWords.BAND_AT_STEP).with("frequency", frequencyHz).with("step", step);
  }
}
