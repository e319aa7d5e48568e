package org.footwell.calculation;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The quantities that requests and results speak of, each declared once in {@code
 * parts/vocabulary.properties} under its name: the range a request may give it in, and a sentence
 * that says what it means. A field of a record takes both from here by its name, unless it says
 * otherwise itself.
 */
public final class Vocabulary {

  private static final String PLACE = "/org/footwell/parts/vocabulary.properties";

  private static final String NUMBER = "-?[\\d.]+";

  /** A range or the only numbers there are, if either is said, and the sentence. */
  private static final Pattern ENTRY =
      Pattern.compile(
          "(?:(N) to (N): |(N(?:, N)* or N): )?(\\S.*)".replace("N", NUMBER), Pattern.DOTALL);

  private static final Pattern BETWEEN_NUMBERS = Pattern.compile(", | or ");

  private static final Map<String, Quantity> QUANTITIES = read();

  private Vocabulary() {}

  /**
   * What a name stands for.
   *
   * @param least smallest number a request may give, as it is written, or null
   * @param most largest, or null
   * @param only the numbers it may be where it may be no others; else empty
   * @param sentence what it means, with the unit
   */
  public record Quantity(String least, String most, List<String> only, String sentence) {}

  /** The quantity of a name in snake_case, if it is one of them. */
  public static Optional<Quantity> of(String name) {
    return Optional.ofNullable(QUANTITIES.get(name));
  }

  /** All of them by name. */
  public static Map<String, Quantity> all() {
    return QUANTITIES;
  }

  private static Map<String, Quantity> read() {
    Properties lines = new Properties();
    try (InputStream in = Vocabulary.class.getResourceAsStream(PLACE)) {
      lines.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, Quantity> quantities = new HashMap<>();
    lines.forEach((name, entry) -> quantities.put((String) name, quantity((String) entry)));
    return Map.copyOf(quantities);
  }

  private static Quantity quantity(String entry) {
    Matcher parts = ENTRY.matcher(entry);
    if (!parts.matches()) {
      throw new IllegalStateException("no quantity: " + entry);
    }
    List<String> only =
        parts.group(3) == null ? List.of() : List.of(BETWEEN_NUMBERS.split(parts.group(3)));
    return new Quantity(parts.group(1), parts.group(2), only, parts.group(4));
  }
}
