package org.footwell.growth;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.footwell.Calculations;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Refused;
import org.footwell.growth.Ladder.Cost;
import org.footwell.growth.Ladder.Rung;

/**
 * What every calculation costs as its request grows from the example of its card to the largest that is
 * answered, and how soon after its deadline the dearest is stopped. Arguments: where the plot is written,
 * if anywhere; then ids of calculations, if not all of them are to be measured.
 */
public final class CostGrowth {

  /** What is quicker is not worth stopping, ms. */
  private static final double QUICK_MS = 20;

  private static final int SHARE_OF_TIME = 10;
  private static final int TRIES = 3;

  private final List<Measured> all = new ArrayList<>();
  private final List<String> bounded = new ArrayList<>();
  private String dearest = "none 0";
  private String latest = "none 0";
  private double dearestMs;
  private double latestMs;

  /** A ladder with its costs. */
  record Measured(Ladder ladder, List<Cost> costs) {
    Cost last() {
      return costs.get(costs.size() - 1);
    }

    /** Not always the largest: what more a request asks for can leave less to search. */
    Cost dearest() {
      return costs.stream().max(Comparator.comparing(Cost::ms)).orElseThrow();
    }

    boolean grew() {
      return costs.size() > 1;
    }

    /** The power of the size with which the time grew over the last three sizes. */
    double exponent() {
      Cost from = costs.get(Math.max(0, costs.size() - 3));
      return Math.log(last().ms() / from.ms())
          / Math.log((double) last().size() / from.size());
    }
  }

  public static void main(String[] args) throws IOException {
    List<String> only = args.length > 1 ? List.of(args).subList(1, args.length) : List.of();
    CostGrowth growth = new CostGrowth();
    growth.measure(only);
    growth.bounds();
    if (args.length > 0 && !args[0].isEmpty()) {
      Files.writeString(Path.of(args[0]), GrowthPlot.of(growth.all));
    }
    growth.deadlines();
    System.out.println("dearest " + growth.dearest);
    System.out.println("latest " + growth.latest);
  }

  private void measure(List<String> only) {
    System.out.println("calculation               size         ms         kB  exponent  what grows");
    Ladders ladders = new Ladders(bounded::add);
    for (Calculation<?, ?> calculation : Calculations.all()) {
      if (only.isEmpty() || only.contains(calculation.card().id())) {
        add(ladders.values(calculation));
        if (Ladders.takesRecordings(calculation)) {
          add(Ladders.samples(calculation));
        }
      }
    }
    if (only.isEmpty() || only.contains("van")) {
      add(ladders.packagesOfVan());
    }
    if (only.isEmpty() || only.contains("tolerance")) {
      add(Ladders.tolerance("sound-level"));
      add(Ladders.tolerance("plan-review"));
    }
  }

  private void add(Ladder ladder) {
    Measured measured = new Measured(ladder, ladder.costs());
    all.add(measured);
    for (Cost cost : measured.costs()) {
      boolean last = cost.equals(measured.last());
      print(
          "%-20s %9d %10.2f%s %10.0f  %8s  %s",
          ladder.id(),
          cost.size(),
          cost.ms(),
          cost.stopped() ? "+" : " ",
          cost.kb(),
          last && measured.grew() ? "%.2f".formatted(measured.exponent()) : "",
          last ? ladder.grows() + " (size: " + ladder.unit() + ")" : "");
    }
    if (measured.dearest().ms() > dearestMs) {
      dearestMs = measured.dearest().ms();
      dearest = ladder.id() + " " + dearestMs;
    }
  }

  private static void print(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values).stripTrailing());
  }

  private void bounds() {
    System.out.println("\nnot as large as its constraint allows, and what a larger one is refused for");
    bounded.forEach(System.out::println);
  }

  /** The dearest of each with a tenth of its time: how long after that it is stopped. */
  private void deadlines() {
    System.out.println("\ncalculation           deadline ms   stopped after, ms   beyond it, ms");
    all.stream()
        .sorted(Comparator.comparing(measured -> -measured.dearest().ms()))
        .filter(measured -> measured.dearest().ms() > QUICK_MS)
        .forEach(this::deadline);
  }

  private static String how(Asking<?, ?> asking, Object request) {
    try {
      return Ladder.answers(asking, request) ? "answered all the same" : "";
    } catch (Refused refused) {
      return "refused: " + refused.getMessage();
    }
  }

  /** The quickest of a few, since other work on the machine only delays it. */
  private void deadline(Measured measured) {
    Ladder ladder = measured.ladder();
    Rung dearest = ladder.rungs().get(measured.costs().indexOf(measured.dearest()));
    Duration within = Duration.ofNanos((long) (measured.dearest().ms() * 1e6 / SHARE_OF_TIME));
    Asking<?, ?> asking = Asking.of(ladder.calculation(), within);
    double took = Double.POSITIVE_INFINITY;
    String how = "";
    for (int i = 0; i < TRIES; i++) {
      long start = System.nanoTime();
      how = how(asking, dearest.request());
      took = Math.min(took, (System.nanoTime() - start) / 1e6);
    }
    double deadline = within.toNanos() / 1e6;
    print(
        "%-20s %12.1f %19.1f %15.1f  %s",
        ladder.id(), deadline, took, took - deadline, how);
    if (took - deadline > latestMs) {
      latestMs = took - deadline;
      latest = ladder.id() + " " + latestMs;
    }
  }
}
