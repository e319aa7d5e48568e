package org.footwell.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.footwell.calculation.text.Names;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The environment variables of this service, read strictly: no misspelt one is overlooked. */
final class Variables {

  private static final Logger LOG = LoggerFactory.getLogger(Variables.class);

  private static final String PREFIX = "FOOTWELL_";

  private final Map<String, String> environment;
  private final Set<String> known = new LinkedHashSet<>();
  private final List<String> faults = new ArrayList<>();

  Variables(Map<String, String> environment) {
    this.environment = environment;
  }

  /** The value of a variable, by its name behind the prefix. */
  String text(String name, String standard) {
    known.add(name);
    return environment.getOrDefault(PREFIX + name, standard);
  }

  /** The value of a variable as a reader understands it; what the reader throws is a fault. */
  <T> T read(String name, String standard, Function<String, T> reader) {
    try {
      return reader.apply(text(name, standard));
    } catch (IllegalArgumentException wrong) {
      wrong.getMessage().lines().forEach(line -> faults.add(PREFIX + name + " " + line));
      return reader.apply(standard);
    }
  }

  /** Two of which only one may be given. */
  void oneOf(String one, String other) {
    if (environment.containsKey(PREFIX + one) && environment.containsKey(PREFIX + other)) {
      faults.add("only one of " + PREFIX + one + " and " + PREFIX + other + " may be given");
    }
  }

  int number(String name, int standard, int least, int most) {
    String text = text(name, null);
    if (text == null) {
      return standard;
    }
    try {
      int value = Integer.parseInt(text);
      if (value >= least && value <= most) {
        return value;
      }
    } catch (NumberFormatException notANumber) {
      // told below, together with the range
    }
    faults.add(
        PREFIX + name + " must be a whole number from " + least + " to " + most + ", not " + text);
    return standard;
  }

  /**
   * To be called when all are read.
   *
   * @throws IllegalArgumentException with every fault, a line each; a variable that nobody asked for
   *     is one where it is nearly the name of a setting. Others with the prefix may belong to programs
   *     that call the service, or come from an orchestrator.
   */
  void requireNoFaults() {
    environment.keySet().stream()
        .filter(name -> name.regionMatches(true, 0, PREFIX, 0, PREFIX.length()))
        .filter(name -> !name.startsWith(PREFIX) || !known.contains(behindPrefix(name)))
        .sorted(Comparator.naturalOrder())
        .forEach(this::unknown);
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException(String.join("\n", faults));
    }
  }

  private void unknown(String name) {
    Optional<String> near = nearest(behindPrefix(name));
    if (near.isPresent()) {
      faults.add(name + " is no setting. Did you mean " + PREFIX + near.get() + "?");
    } else {
      LOG.warn("{} is no setting of the service and changes nothing", name);
    }
  }

  private Optional<String> nearest(String wrong) {
    List<String> names = known.stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
    return Names.nearest(wrong, names).map(name -> name.toUpperCase(Locale.ROOT));
  }

  private static String behindPrefix(String name) {
    return name.substring(PREFIX.length());
  }
}
