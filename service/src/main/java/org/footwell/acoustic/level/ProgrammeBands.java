package org.footwell.acoustic.level;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.footwell.acoustic.level.SoundLevelRequest.Band;
import org.footwell.calculation.Check;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Refusing;
import org.footwell.physics.ThirdOctaves;

/** A spectrum has one level in a band. */
@Check.Of(
    value = "*.frequency_hz",
    says =
        "No frequency_hz is there twice; a nominal one and the exact one it stands for are the same.")
final class ProgrammeBands implements Check<List<Band>> {

  @Override
  public void check(List<Band> spectrum, Refusing to) {
    Set<Double> seen = new HashSet<>();
    for (int i = 0; i < spectrum.size(); i++) {
      double frequency = spectrum.get(i).frequencyHz();
      if (!seen.add(ThirdOctaves.exactHz(frequency))) {
        to.refuse(CoreFault.DUPLICATE).at("/" + i + "/frequency_hz").given(frequency + " Hz");
      }
    }
  }
}
