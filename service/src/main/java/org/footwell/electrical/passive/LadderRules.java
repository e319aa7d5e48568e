package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.NetworkFault.COIL_RESISTANCE_WITHOUT_COIL;
import static org.footwell.electrical.passive.NetworkFault.ELEMENT_EMPTY;
import static org.footwell.electrical.passive.NetworkFault.ZERO_RESISTANCE_LOOP;

import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.LadderElement;

/** What a ladder must be so that currents and voltages are finite. */
final class LadderRules {

  private LadderRules() {}

  /** Refuses elements without parts and loops without resistance. */
  static void check(List<LadderElement> elements, Run run) {
    // Whether direct current finds a way from the amplifier to here without any resistance.
    boolean bare = true;
    for (int i = 0; i < elements.size(); i++) {
      LadderElement element = elements.get(i);
      String at = "/elements/" + i;
      if (element.empty()) {
        run.refuse(ELEMENT_EMPTY)
            .at(at)
            .allowed(Allowed.fields(List.of("capacitance_uf", "inductance_mh", "resistance_ohm")));
        bare = false;
        continue;
      }
      if (element.inductanceMh() == null && element.coilOhm() > 0) {
        run.refuse(COIL_RESISTANCE_WITHOUT_COIL).at(at + "/coil_ohm").given(element.coilOhm());
      }
      if (element.lossless() && element.shunt() != element.inParallel()) {
        // In the way a parallel pair, across it a series pair: both go to extremes at resonance.
        refuseLoop(at, Loop.COIL_AND_CAPACITOR, run);
      } else if (bare && element.shunt() && element.dcOhm() == 0) {
        refuseLoop(at, Loop.AMPLIFIER_AND_COIL, run);
      }
      bare &= element.shunt() || element.dcOhm() == 0;
    }
  }

  private static void refuseLoop(String at, Loop loop, Run run) {
    run.refuse(ZERO_RESISTANCE_LOOP)
        .at(at + "/coil_ohm")
        .given(0)
        .allowed(Phrase.of(PassiveWords.RESISTANCE_IN_THE_LOOP))
        .with("loop", loop);
  }
}
