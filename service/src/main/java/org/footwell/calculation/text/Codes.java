package org.footwell.calculation.text;

import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The codes of enums, made once: a batch asks for them in every row. */
final class Codes {

  private static final Map<Coded, String> KNOWN = new ConcurrentHashMap<>();

  private Codes() {}

  /** The name of a constant in kebab case. */
  static String of(Coded constant) {
    String known = KNOWN.get(constant);
    return known != null
        ? known
        : KNOWN.computeIfAbsent(
            constant, coded -> coded.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }
}
