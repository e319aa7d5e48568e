package org.footwell.analysis.tolerance;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The usual tolerances of numbers from data sheets, tape measures and meters: {@code
 * usual-tolerances.properties}, by the name of the field.
 */
final class UsualTolerances {

  /** How far to either side, whether in percent, the distribution, and where that comes from. */
  private static final Pattern LINE =
      Pattern.compile("([\\d.]+)( %)? (normal|uniform|triangular): (\\S.*)");

  /**
   * A usual tolerance.
   *
   * @param plusMinus in percent of the number, or in its unit
   * @param source where it comes from
   */
  record Usual(double plusMinus, boolean percent, Distribution distribution, String source) {}

  private static final Map<String, Usual> BY_NAME = read();

  private UsualTolerances() {}

  /** All of them by the name of the field, with that of its group where that is needed. */
  static Map<String, Usual> all() {
    return BY_NAME;
  }

  /**
   * The one of a number in a request.
   *
   * @param path dotted
   */
  static Optional<Usual> of(String path) {
    String[] parts = path.split("\\.", -1);
    String name = parts[parts.length - 1];
    String inGroup = parts.length > 1 ? parts[parts.length - 2] + "." + name : name;
    return Optional.ofNullable(BY_NAME.getOrDefault(inGroup, BY_NAME.get(name)));
  }

  private static Map<String, Usual> read() {
    Properties lines = new Properties();
    try (InputStream in =
        UsualTolerances.class.getResourceAsStream("usual-tolerances.properties")) {
      lines.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, Usual> usual = new HashMap<>();
    lines.forEach((name, line) -> usual.put((String) name, usual((String) line)));
    return Map.copyOf(usual);
  }

  private static Usual usual(String line) {
    Matcher parts = LINE.matcher(line);
    if (!parts.matches()) {
      throw new IllegalStateException("no tolerance: " + line);
    }
    return new Usual(
        Double.parseDouble(parts.group(1)),
        parts.group(2) != null,
        Distribution.valueOf(parts.group(3).toUpperCase(Locale.ROOT)),
        parts.group(4));
  }
}
