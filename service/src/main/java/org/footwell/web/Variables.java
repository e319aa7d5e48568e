package org.footwell.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import org.footwell.calculation.text.Names;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The environment variables of this service, read strictly: no misspelt one is overlooked. */
final class Variables {

  private static final Logger LOG = LoggerFactory.getLogger(Variables.class);

  private static final String PREFIX = "FOOTWELL_";

  private final Map<String, String> environment;
  private final Map<String, Known> known = new LinkedHashMap<>();
  private final List<String> faults = new ArrayList<>();
  private String meaning = "";

  /**
   * A variable that is a setting.
   *
   * @param meaning what it sets, and what it may be
   * @param standard what it is when it is not set
   */
  record Known(String name, String meaning, String standard) {}

  Variables(Map<String, String> environment) {
    this.environment = environment;
  }

  /** Says what the variable that is asked for next sets. */
  Variables about(String what) {
    meaning = what;
    return this;
  }

  /** The value of a variable, by its name behind the prefix. */
  String text(String name, String standard) {
    return value(name, standard, "");
  }

  private String value(String name, String standard, String allowed) {
    known.put(name, new Known(PREFIX + name, meaning + allowed, standard));
    meaning = "";
    return environment.getOrDefault(PREFIX + name, standard);
  }

  int number(String name, int standard, int least, int most) {
    String text = value(name, Integer.toString(standard), ", " + least + " to " + most);
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

  /** One of the constants of an enum, by its name as everywhere else. */
  <E extends Enum<E>> E choice(String name, E standard) {
    Map<String, E> byName = new LinkedHashMap<>();
    for (E one : standard.getDeclaringClass().getEnumConstants()) {
      byName.put(Names.of(one), one);
    }
    String names = String.join(", ", byName.keySet());
    String text = value(name, Names.of(standard), ": " + names);
    if (!byName.containsKey(text)) {
      faults.add(PREFIX + name + " must be one of " + names + ", not " + text);
    }
    return byName.getOrDefault(text, standard);
  }

  /** All that were asked for, in that order. */
  List<Known> known() {
    return List.copyOf(known.values());
  }

  /**
   * To be called when all are read.
   *
   * @throws IllegalArgumentException with every fault, a line each; a variable that nobody asked for
   *     is one where it is nearly the name of a setting. Others with the prefix may belong to programs
   *     that call the service, or come from an orchestrator.
   */
  void requireNoFaults() {
    for (String name : new TreeSet<>(environment.keySet())) {
      if (name.regionMatches(true, 0, PREFIX, 0, PREFIX.length())
          && !(name.startsWith(PREFIX) && known.containsKey(behindPrefix(name)))) {
        unknown(name);
      }
    }
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
    List<String> names =
        known.keySet().stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
    return Names.nearest(wrong, names).map(name -> name.toUpperCase(Locale.ROOT));
  }

  private static String behindPrefix(String name) {
    return name.substring(PREFIX.length());
  }
}
