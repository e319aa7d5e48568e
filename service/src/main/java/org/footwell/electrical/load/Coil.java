package org.footwell.electrical.load;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
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

  /** Each coil of a list, those alike with a number behind their name. */
  static List<Coil> each(List<VoiceCoil> listed) {
    List<Coil> all = new ArrayList<>();
    for (int i = 0; i < listed.size(); i++) {
      VoiceCoil coil = listed.get(i);
      String at = "/coils/" + i;
      for (String name : names(coil)) {
        all.add(new Coil(name, coil.ratedOhm(), coil.reOhm(), coil.driver(), coil.band(), at));
      }
    }
    return all;
  }

  /** The names of the coils alike of an entry, each empty where it has none. */
  static List<String> names(VoiceCoil coil) {
    String name = coil.name();
    int count = coil.coilCount();
    return IntStream.rangeClosed(1, count)
        .mapToObj(n -> name == null ? "" : count == 1 ? name : name + "_" + n)
        .toList();
  }
}
