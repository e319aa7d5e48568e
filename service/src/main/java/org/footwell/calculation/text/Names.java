package org.footwell.calculation.text;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;

/** How Java names become the names a caller meets. */
public final class Names {

  private static final int NEAR = 4;
  private static final int LEAST_ALIKE = 3;

  /** The names of an enum's constants, made once: a batch asks in every row. */
  private static final ClassValue<String[]> OF_CONSTANTS =
      new ClassValue<>() {
        @Override
        protected String[] computeValue(Class<?> type) {
          return Arrays.stream(type.getEnumConstants())
              .map(constant -> ((Enum<?>) constant).name().toLowerCase(Locale.ROOT))
              .toArray(String[]::new);
        }
      };

  private Names() {}

  /** The name of a constant: {@code ONE_WATT} is {@code one_watt}. */
  @SuppressWarnings("EnumOrdinal") // the names stand in the order of the constants themselves
  public static String of(Enum<?> constant) {
    return OF_CONSTANTS.get(constant.getDeclaringClass())[constant.ordinal()];
  }

  /** An id, which is written without blanks, as people read it. */
  public static String spelt(String id) {
    return id.replace('_', ' ');
  }

  /** A constant as people read it where it has no words of its own. */
  public static String spelt(Enum<?> constant) {
    return spelt(of(constant));
  }

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

  /** A question with the known name that is most like a misspelt one, or nothing. */
  public static Phrase didYouMean(String wrong, Collection<String> known) {
    return nearest(wrong, known)
        .map(near -> Phrase.of(CoreWords.DID_YOU_MEAN).own("name", near))
        .orElse(Phrase.nothing());
  }

  /**
   * The known name that is most like a misspelt one, if any is near: the shortest that only has
   * more at its end, as {@code fs_hz} for {@code fs}; else the one with the fewest letters to
   * change; else one that starts alike, its unit apart, as {@code tuning_hz} for {@code tuned}.
   */
  public static Optional<String> nearest(String wrong, Collection<String> known) {
    String plain = wrong.strip().toLowerCase(Locale.ROOT);
    String start = plain.length() <= 60 ? plain : plain.substring(0, 60);
    return known.stream()
        .filter(name -> name.startsWith(start + "_"))
        .min(Comparator.comparingInt(String::length))
        .or(() -> fewestChanges(start, known))
        .or(() -> startingAlike(start, known));
  }

  private static Optional<String> fewestChanges(String wrong, Collection<String> known) {
    DamerauLevenshteinDistance distance = new DamerauLevenshteinDistance(NEAR);
    record Near(String name, int far) {}
    return known.stream()
        .map(name -> new Near(name, distance.apply(wrong, name)))
        .filter(near -> near.far() >= 0 && near.far() <= Math.max(1, near.name().length() / 3))
        .min(Comparator.comparingInt(Near::far))
        .map(Near::name);
  }

  private static Optional<String> startingAlike(String wrong, Collection<String> known) {
    record Near(String name, int alike) {}
    return known.stream()
        .map(name -> new Near(name, alike(wrong, name)))
        .filter(near -> near.alike() >= LEAST_ALIKE)
        .filter(near -> 2 * near.alike() >= wrong.length())
        .filter(near -> 2 * near.alike() >= stem(near.name()).length())
        .max(Comparator.comparingInt(Near::alike))
        .map(Near::name);
  }

  /** How many letters are the same from the start. */
  private static int alike(String one, String other) {
    int i = 0;
    while (i < Math.min(one.length(), other.length()) && one.charAt(i) == other.charAt(i)) {
      i++;
    }
    return i;
  }

  /** A name without what follows its last underscore. */
  private static String stem(String name) {
    int last = name.lastIndexOf('_');
    return last < 0 ? name : name.substring(0, last);
  }
}
