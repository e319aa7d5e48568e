package org.footwell.calculation;

import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How the numbers of results come about that no {@link Formula} of a run ends in: what is added up,
 * picked from a list, rounded, searched or read off a model. Each package with such results has a
 * {@code workings.properties} with a line for each field, {@code ChannelLine.lowest_ohm = …}: a
 * formula in words and symbols whose terms are names of fields, of the same record first, then of
 * those around it and of the request. It follows from the definitions unless it says otherwise in
 * front.
 */
final class FieldAccounts {

  /** In front of what stands on the sources of the calculation. */
  private static final String BY_MODEL = "by the model: ";

  /** In front of what is common practice. */
  private static final String BY_PRACTICE = "by practice: ";

  /** What a field says. */
  record Account(String formula, boolean byModel, Source source) {

    static Account of(String line) {
      if (line.startsWith(BY_MODEL)) {
        return new Account(line.substring(BY_MODEL.length()), true, null);
      }
      return line.startsWith(BY_PRACTICE)
          ? new Account(line.substring(BY_PRACTICE.length()), false, Source.COMMON_PRACTICE)
          : new Account(line, false, Source.DEFINITION);
    }
  }

  /** The lines of each package, read at its first use. */
  private static final Map<String, Optional<ResourceBundle>> LINES = new ConcurrentHashMap<>();

  private FieldAccounts() {}

  /** What is said of a field of a record. */
  static Optional<Account> of(Class<?> record, String field) {
    String home = record.getPackageName();
    String key = record.getName().substring(home.length() + 1).replace('$', '.') + "." + field;
    return LINES
        .computeIfAbsent(home, FieldAccounts::read)
        .filter(lines -> lines.containsKey(key))
        .map(lines -> Account.of(lines.getString(key)));
  }

  private static Optional<ResourceBundle> read(String home) {
    try {
      return Optional.of(
          ResourceBundle.getBundle(
              home + ".workings",
              Locale.ROOT,
              ResourceBundle.Control.getNoFallbackControl(
                  ResourceBundle.Control.FORMAT_PROPERTIES)));
    } catch (MissingResourceException none) {
      return Optional.empty();
    }
  }
}
