package org.footwell.acoustic.driver;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * A made-up catalogue of drivers: consistent records, rounded as data sheets are, every tenth with
 * one planted fault. The same seed gives the same catalogue. All drivers are invented.
 */
public final class CatalogueSample {

  /** Columns in order. */
  public static final List<String> COLUMNS =
      List.of(
          "part_id",
          "rated_ohm",
          "re_ohm",
          "fs_hz",
          "qms",
          "qes",
          "qts",
          "vas_l",
          "sd_cm2",
          "nominal_mm",
          "xmax_mm",
          "bl_tm",
          "mms_g",
          "cms_mm_per_n",
          "rms_kg_per_s",
          "le_mh",
          "sensitivity.level_db_spl",
          "sensitivity.basis",
          "continuous_power_w",
          "peak_power_w",
          "outside_mm",
          "cutout_mm",
          "mounting_depth_mm",
          "mass_g",
          "price");

  /** What data sheets reckon with: ρ in kg/m³ and c in m/s. */
  private static final double[][] AIRS = {
    {1.18, 345}, {1.2, 343}, {1.21, 343}, {1.2041, 343.2}, {1.2, 344}
  };

  private static final int FAULT_EVERY = 10;

  /**
   * One record.
   *
   * @param cells by column, empty where the data sheet says nothing
   * @param fault what is wrong with it, or null
   */
  public record Row(Map<String, String> cells, PlantedFault fault) {
    public String partId() {
      return cells.get("part_id");
    }
  }

  private final Random random;

  private CatalogueSample(long seed) {
    this.random = new Random(seed);
  }

  public static List<Row> rows(int count, long seed) {
    CatalogueSample sample = new CatalogueSample(seed);
    List<Row> rows = new ArrayList<>(count);
    PlantedFault[] faults = PlantedFault.values();
    for (int i = 0; i < count; i++) {
      boolean faulty = i % FAULT_EVERY == FAULT_EVERY - 1;
      rows.add(sample.row(i, faulty ? faults[i / FAULT_EVERY % faults.length] : null));
    }
    return rows;
  }

  /** Writes a catalogue as CSV. */
  public static void write(List<Row> rows, Path file) throws IOException {
    try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
        CsvWriter csv = CsvWriter.builder().build(out)) {
      csv.writeRecord(COLUMNS);
      for (Row row : rows) {
        csv.writeRecord(
            COLUMNS.stream().map(column -> row.cells().getOrDefault(column, "")).toList());
      }
    }
  }

  /** Writes 5,000 rows into the file named. */
  public static void main(String[] arguments) throws IOException {
    write(rows(5000, 1), Path.of(arguments[0]));
  }

  private Row row(int number, PlantedFault fault) {
    Map<String, Double> exact = new LinkedHashMap<>();
    double kind = random.nextDouble();
    if (kind < 0.15) {
      tweeter(exact);
    } else if (kind < 0.65) {
      woofer(exact);
    } else {
      subwoofer(exact);
    }
    complete(exact);
    boolean perVolt = random.nextInt(3) > 0;
    if (fault != null) {
      perVolt = fault.prepare(exact, perVolt);
    }
    level(exact, perVolt);
    Map<String, String> cells = new LinkedHashMap<>();
    cells.put("part_id", "part-" + number);
    print(exact, cells);
    cells.put("sensitivity.basis", perVolt ? "two_point_eight_three_volt" : "one_watt");
    if (fault != null) {
      fault.plant(cells);
    } else if (random.nextInt(4) == 0) {
      leaveOut(cells);
    }
    return new Row(cells, fault);
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private double one(double... of) {
    return of[random.nextInt(of.length)];
  }

  private void tweeter(Map<String, Double> d) {
    d.put("nominal_mm", one(25, 28));
    d.put("sd_cm2", between(5.5, 8.5));
    d.put("mms_g", d.get("sd_cm2") * between(0.04, 0.06));
    d.put("fs_hz", between(600, 1400));
    d.put("rated_ohm", one(4, 8));
    d.put("qes", between(0.6, 1.8));
    d.put("qms", between(1.5, 4));
    d.put("xmax_mm", between(0.2, 1));
    d.put("le_mh", between(0.02, 0.06));
    d.put("continuous_power_w", one(20, 40, 60));
    d.put("mass_g", between(60, 250));
    d.put("outside_mm", between(45, 60));
    d.put("mounting_depth_mm", between(10, 25));
  }

  private void woofer(Map<String, Double> d) {
    cone(d, one(100, 130, 165, 200), between(0.07, 0.15));
    d.put("fs_hz", between(5500, 9000) / d.get("nominal_mm") + 15);
    d.put("qes", between(0.35, 0.9));
    d.put("qms", between(3, 9));
    d.put("xmax_mm", between(2, 7));
    d.put("continuous_power_w", one(40, 60, 80, 100, 120));
  }

  private void subwoofer(Map<String, Double> d) {
    cone(d, one(250, 300, 380), between(0.2, 0.4));
    d.put("fs_hz", between(22, 34));
    d.put("qes", between(0.4, 0.8));
    d.put("qms", between(4, 10));
    d.put("xmax_mm", between(6, 20));
    d.put("continuous_power_w", one(150, 250, 400, 800));
  }

  private void cone(Map<String, Double> d, double nominal, double massPerArea) {
    double diameter = nominal * between(0.78, 0.88);
    d.put("nominal_mm", nominal);
    d.put("sd_cm2", Math.PI / 400 * diameter * diameter);
    d.put("mms_g", d.get("sd_cm2") * massPerArea);
    d.put("rated_ohm", one(2, 4, 4, 8));
    d.put("le_mh", d.get("rated_ohm") * between(0.05, 0.4));
    d.put("mass_g", nominal * nominal * between(0.04, 0.06));
    d.put("outside_mm", nominal * between(1, 1.08));
    d.put("mounting_depth_mm", nominal * between(0.35, 0.5));
  }

  /** Derived independently of the service: in SI, from the definitions. */
  private void complete(Map<String, Double> d) {
    double[] air = AIRS[random.nextInt(AIRS.length)];
    double w = 2 * Math.PI * d.get("fs_hz");
    double mass = d.get("mms_g") / 1000;
    double area = d.get("sd_cm2") / 1e4;
    double compliance = 1 / (w * w * mass);
    double re = d.get("rated_ohm") * between(0.78, 0.92);
    double qes = d.get("qes");
    double qms = d.get("qms");
    d.put("re_ohm", re);
    d.put("cms_mm_per_n", compliance * 1000);
    d.put("rms_kg_per_s", w * mass / qms);
    d.put("bl_tm", Math.sqrt(w * mass * re / qes));
    d.put("qts", 1 / (1 / qes + 1 / qms));
    d.put("vas_l", air[0] * air[1] * air[1] * area * area * compliance * 1000);
    d.put("peak_power_w", 2 * d.get("continuous_power_w"));
    d.put("cutout_mm", d.get("outside_mm") * between(0.85, 0.93));
    d.put("price", between(20, 400));
  }

  /** Pressure of a piston in half space at 1 m, and what a measured average strays from it. */
  private void level(Map<String, Double> d, boolean perVolt) {
    double volts = perVolt ? 2.83 : Math.sqrt(d.get("rated_ohm"));
    double force = d.get("bl_tm") * volts / d.get("re_ohm");
    double acceleration = force / (d.get("mms_g") / 1000);
    double pascal = 1.2 * acceleration * d.get("sd_cm2") / 1e4 / (2 * Math.PI);
    double stray = Math.max(-1, Math.min(1, 0.4 * random.nextGaussian()));
    d.put("sensitivity.level_db_spl", 20 * Math.log10(pascal / 20e-6) + stray);
  }

  private static void print(Map<String, Double> exact, Map<String, String> cells) {
    for (String column : COLUMNS) {
      Double value = exact.get(column);
      if (value != null) {
        cells.put(column, printed(column, value));
      }
    }
  }

  /** As data sheets print it. */
  static String printed(String column, double value) {
    return switch (column) {
      case "fs_hz", "nominal_mm", "rated_ohm", "continuous_power_w", "peak_power_w", "outside_mm" ->
          fixed(value, 0);
      case "cutout_mm", "mounting_depth_mm", "mass_g" -> fixed(value, 0);
      case "re_ohm", "bl_tm", "xmax_mm", "sensitivity.level_db_spl" -> fixed(value, 1);
      case "qms", "qes", "qts", "cms_mm_per_n", "rms_kg_per_s", "le_mh", "price" -> fixed(value, 2);
      default -> threeDigits(value);
    };
  }

  private static String fixed(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  static String threeDigits(double value) {
    return new BigDecimal(value).round(new MathContext(3, RoundingMode.HALF_UP)).toPlainString();
  }

  /** Some data sheets say less. */
  private void leaveOut(Map<String, String> cells) {
    for (String column : COLUMNS.subList(2, COLUMNS.size())) {
      if (!column.startsWith("sensitivity.") && random.nextInt(4) == 0) {
        cells.remove(column);
      }
    }
    if (random.nextInt(4) == 0) {
      cells.keySet().removeIf(column -> column.startsWith("sensitivity."));
    }
  }
}
