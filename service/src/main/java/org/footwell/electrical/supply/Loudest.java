package org.footwell.electrical.supply;

import java.util.List;
import java.util.Objects;

/**
 * What a cable carries at the loudest.
 *
 * @param sineA with a full sine on all channels, A; null when it is not known
 * @param lastingA what of it flows for seconds on end, A; null when nothing is said to
 * @param amplifierFuseA what the amplifier itself is fused with, A; null when it is not known
 */
record Loudest(Double sineA, Double lastingA, Double amplifierFuseA) {

  /** Of one amplifier, or of none that is known. */
  static Loudest of(Double amplifierFuseA, Double fullSineA, boolean sustained) {
    return new Loudest(fullSineA, sustained ? fullSineA : null, amplifierFuseA);
  }

  /** Of branches together; those of which nothing is known carry what they do for minutes. */
  static Loudest together(List<Loudest> branches, List<Double> currentsA) {
    return new Loudest(
        sum(branches.stream().map(Loudest::sineA).toArray(Double[]::new), currentsA),
        sum(branches.stream().map(Loudest::lastingA).toArray(Double[]::new), currentsA),
        null);
  }

  private static Double sum(Double[] known, List<Double> otherwise) {
    boolean any = false;
    double sum = 0;
    for (int i = 0; i < known.length; i++) {
      any |= known[i] != null;
      sum += Objects.requireNonNullElse(known[i], otherwise.get(i));
    }
    return any ? (Double) sum : null;
  }
}
