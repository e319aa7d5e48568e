package org.footwell.acoustic.loudness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.Answers;
import org.footwell.acoustic.loudness.EqualLoudnessResult.Band;

class EqualLoudnessProperties {

  @Property
  void louderIsLouderAtEveryFrequency(@ForAll @DoubleRange(min = 20, max = 89) double phon) {
    for (Band band : bands(phon, phon + 1)) {
      assertTrue(band.listeningLevelDbSpl() > band.tunedLevelDbSpl());
    }
  }

  @Property
  void goingBackUndoesTheChange(
      @ForAll @DoubleRange(min = 20, max = 90) double one,
      @ForAll @DoubleRange(min = 20, max = 90) double other) {
    List<Band> there = bands(one, other);
    List<Band> back = bands(other, one);
    for (int i = 0; i < there.size(); i++) {
      assertEquals(0, there.get(i).balanceDb() + back.get(i).balanceDb(), 1e-9);
    }
  }

  @Property
  void belowTheTunedLevelBassIsLiftedTheMoreTheLowerItIs(
      @ForAll @DoubleRange(min = 20, max = 80) double listening) {
    List<Band> bands = bands(81, listening);
    for (int i = 1; i < bands.size(); i++) {
      if (bands.get(i).frequencyHz() <= 500) {
        assertTrue(bands.get(i - 1).balanceDb() > bands.get(i).balanceDb());
      }
    }
  }

  private static List<Band> bands(double tuned, double listening) {
    EqualLoudnessRequest request = new EqualLoudnessRequest(tuned, listening, 20.0, 12500.0, null);
    return Answers.of(new EqualLoudness(), request).result().bands();
  }
}
