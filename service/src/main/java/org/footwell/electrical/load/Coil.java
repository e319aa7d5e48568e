package org.footwell.electrical.load;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Run;
import org.footwell.parts.VoiceCoil;

/**
 * One voice coil of a network.
 *
 * @param name empty for one without
 * @param reOhm or null when it is not known
 * @param driver or null when it is a driver of its own
 * @param band or null when no crossover splits the network
 * @param at JSON Pointer to where the request lists it, or to the network that gives its impedance
 */
record Coil(String name, double ratedOhm, Double reOhm, String driver, String band, String at) {

  /** A coil of which only the rated impedance counts. */
  static Coil rated(String name, double ratedOhm, String at) {
    return new Coil(name, ratedOhm, null, null, null, at);
  }

  /** Each coil of a list, those alike with a number behind their name; refuses names that clash. */
  static List<Coil> each(List<VoiceCoil> listed, Run run) {
    List<Coil> all = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (int i = 0; i < listed.size(); i++) {
      VoiceCoil coil = listed.get(i);
      for (int n = 1; n <= coil.coilCount(); n++) {
        String name = name(coil, n);
        String at = "/coils/" + i;
        if (!name.isEmpty() && !taken.add(name)) {
          run.refuse(CoreFault.DUPLICATE).at(at + "/name").given(name);
        }
        all.add(new Coil(name, coil.ratedOhm(), coil.reOhm(), coil.driver(), coil.band(), at));
      }
    }
    return all;
  }

  private static String name(VoiceCoil coil, int number) {
    if (coil.name() == null) {
      return "";
    }
    return coil.coilCount() == 1 ? coil.name() : coil.name() + "_" + number;
  }
}
