package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.NetworkFault.ZERO_RESISTANCE_LOOP;

import java.util.List;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.LadderElement;

/** What a ladder must have so that currents and voltages are finite. */
@Check.Of(
    says =
        "Some resistance is in every loop of a coil with a capacitor that goes to extremes at its"
            + " resonance, and of a coil with the amplifier.")
final class ResistanceInLoops implements Check<List<LadderElement>> {

  @Override
  public void check(List<LadderElement> elements, Refusing to) {
    // Whether direct current finds a way from the amplifier to here without any resistance.
    boolean bare = true;
    for (int i = 0; i < elements.size(); i++) {
      LadderElement element = elements.get(i);
      if (element.lossless() && element.shunt() != element.inParallel()) {
        // In the way a parallel pair, across it a series pair: both go to extremes at resonance.
        refuse(i, Loop.COIL_AND_CAPACITOR, to);
      } else if (bare && element.shunt() && !element.empty() && element.dcOhm() == 0) {
        refuse(i, Loop.AMPLIFIER_AND_COIL, to);
      }
      bare &= !element.empty() && (element.shunt() || element.dcOhm() == 0);
    }
  }

  private static void refuse(int element, Loop loop, Refusing to) {
    to.refuse(ZERO_RESISTANCE_LOOP)
        .at("/" + element + "/coil_ohm")
        .given(0)
        .allowed(Phrase.of(PassiveWords.RESISTANCE_IN_THE_LOOP))
        .with("loop", loop);
  }
}
