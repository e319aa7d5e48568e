package org.footwell.electrical.load;

import static org.footwell.electrical.load.LoadFault.BAND_MISSING;
import static org.footwell.electrical.load.LoadFault.BAND_SPLIT_IN_SERIES;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.footwell.calculation.Refusing;

/** Takes a network apart into the bands of its passive crossovers. */
final class Bands {

  /**
   * What loads the amplifier in one band.
   *
   * @param band null when the network is not split
   */
  record Band(String band, Network<Coil> network) {}

  private Bands() {}

  /** The bands in order of appearance, or the whole network as the only one. */
  static List<Band> of(Network<Coil> network) {
    List<String> names = names(network);
    if (names.isEmpty()) {
      return List.of(new Band(null, network));
    }
    return names.stream()
        .map(band -> new Band(band, network.only(c -> band.equals(c.band())).orElseThrow()))
        .toList();
  }

  private static List<String> names(Network<Coil> network) {
    return network.coils().stream()
        .flatMap(coil -> Stream.ofNullable(coil.band()))
        .distinct()
        .toList();
  }

  /** Refuses coils without a band beside others with one, or else bands that do not reach all. */
  static void check(Network<Coil> network, Refusing to) {
    if (names(network).isEmpty()) {
      return;
    }
    if (network.coils().stream().allMatch(coil -> coil.band() != null)) {
      refuseInterruptions(network, to);
    } else {
      refuseCoilsWithout(network, to);
    }
  }

  private static void refuseCoilsWithout(Network<Coil> network, Refusing to) {
    for (Coil coil : network.coils()) {
      if (coil.band() == null) {
        boolean listed = !coil.at().equals(NetworkReader.NETWORK);
        to.refuse(BAND_MISSING).at(listed ? coil.at() + "/band" : coil.at()).given(coil.name());
      }
    }
  }

  /** The bands that find a way through a part, and the first coil of it. */
  private record Part(Set<String> bands, Coil first) {}

  private static void refuseInterruptions(Network<Coil> network, Refusing to) {
    network.<Part>fold(
        coil -> new Part(Set.of(coil.band()), coil),
        parts -> {
          Part all = together(parts);
          parts.forEach(part -> refuseUnlessAll(all.bands(), part, to));
          return all;
        },
        Bands::together);
  }

  private static Part together(List<Part> parts) {
    Set<String> bands = new LinkedHashSet<>();
    parts.forEach(part -> bands.addAll(part.bands()));
    return new Part(bands, parts.get(0).first());
  }

  private static void refuseUnlessAll(Set<String> bands, Part part, Refusing to) {
    List<String> missing = new ArrayList<>(bands);
    missing.removeAll(part.bands());
    if (!missing.isEmpty()) {
      to.refuse(BAND_SPLIT_IN_SERIES)
          .at(NetworkReader.NETWORK)
          .given(part.first().name())
          .own("coil", part.first().name())
          .own("band", missing.get(0));
    }
  }
}
