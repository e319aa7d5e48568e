package org.footwell.calculation;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;

/** How Java names become the names a caller meets. */
public final class Names {

  private static final int NEAR = 4;

  private Names() {}

  /** {@code cableMm2} becomes {@code cable_mm2}. */
  public static String snake(String camel) {
    StringBuilder out = new StringBuilder(camel.length() + 4);
    for (int i = 0; i < camel.length(); i++) {
      char c = camel.charAt(i);
      if (Character.isUpperCase(c)) {
        out.append('_').append(Character.toLowerCase(c));
      } else {
        out.append(c);
      }
    }
    return out.toString();
  }

  /** A sentence with the known name that is most like a misspelt one, or nothing. */
  public static String didYouMean(String wrong, Collection<String> known) {
    return nearest(wrong, known).map(near -> " Did you mean " + near + "?").orElse("");
  }

  /** The known name that is most like a misspelt one, if any is near. */
  public static Optional<String> nearest(String wrong, Collection<String> known) {
    DamerauLevenshteinDistance distance = new DamerauLevenshteinDistance(NEAR);
    String start = wrong.length() <= 60 ? wrong : wrong.substring(0, 60);
    record Near(String name, int far) {}
    return known.stream()
        .map(name -> new Near(name, distance.apply(start, name)))
        .filter(near -> near.far() >= 0 && near.far() <= Math.max(1, near.name().length() / 3))
        .min(Comparator.comparingInt(Near::far))
        .map(Near::name);
  }
}
