package org.footwell.calculation;

import java.util.Map;

/** The units that names of fields end in. */
final class Units {

  private static final Map<String, String> BY_ENDING =
      Map.ofEntries(
          Map.entry("m_per_s", "m/s"),
          Map.entry("kg_per_s", "kg/s"),
          Map.entry("mm_per_n", "mm/N"),
          Map.entry("kg_per_m3", "kg/m³"),
          Map.entry("ohm", "ohm"),
          Map.entry("v", "V"),
          Map.entry("w", "W"),
          Map.entry("a", "A"),
          Map.entry("ah", "Ah"),
          Map.entry("hz", "Hz"),
          Map.entry("db", "dB"),
          Map.entry("db_spl", "dB SPL"),
          Map.entry("dba", "dBA"),
          Map.entry("dbc", "dBC"),
          Map.entry("dbfs", "dBFS"),
          Map.entry("us", "µs"),
          Map.entry("ms", "ms"),
          Map.entry("s", "s"),
          Map.entry("h", "h"),
          Map.entry("mm", "mm"),
          Map.entry("m", "m"),
          Map.entry("mm2", "mm²"),
          Map.entry("cm2", "cm²"),
          Map.entry("m2", "m²"),
          Map.entry("cm3", "cm³"),
          Map.entry("l", "l"),
          Map.entry("g", "g"),
          Map.entry("kg", "kg"),
          Map.entry("deg", "degrees"),
          Map.entry("c", "°C"),
          Map.entry("k", "K"),
          Map.entry("percent", "%"),
          Map.entry("octaves", "octaves"),
          Map.entry("samples", "samples"),
          Map.entry("uf", "µF"),
          Map.entry("mh", "mH"),
          Map.entry("tm", "T·m"));

  private Units() {}

  /** The unit of a field, empty for a ratio and what else has none. */
  static String of(String name) {
    for (int from = name.indexOf('_'); from >= 0; from = name.indexOf('_', from + 1)) {
      String unit = BY_ENDING.get(name.substring(from + 1));
      if (unit != null) {
        return unit;
      }
    }
    return "";
  }
}
