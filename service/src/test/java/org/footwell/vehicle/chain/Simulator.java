package org.footwell.vehicle.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.footwell.physics.Phasor;

/** The circuit simulator on a netlist, with all digits it has. */
final class Simulator {

  private static final String RESULT = "result.txt";

  private Simulator() {}

  /**
   * What it says at one frequency.
   *
   * @param values of the quantities asked for, in their order
   */
  record Point(double hz, List<Phasor> values) {}

  /** Small-signal analysis at seven frequencies a decade from 20 Hz to 20 kHz. */
  static List<Point> sweep(List<String> netlist, List<String> quantities, Path folder)
      throws IOException, InterruptedException {
    List<Point> points = new ArrayList<>();
    for (String line : run(netlist, "ac dec 7 20 20000", quantities, folder)) {
      double[] cells = numbers(line);
      List<Phasor> values = new ArrayList<>();
      for (int i = 1; i < cells.length; i += 2) {
        values.add(new Phasor(cells[i], cells[i + 1]));
      }
      points.add(new Point(cells[0], values));
    }
    return points;
  }

  /** The operating point: the quantities in their order. */
  static double[] operatingPoint(List<String> netlist, List<String> quantities, Path folder)
      throws IOException, InterruptedException {
    double[] cells = numbers(run(netlist, "op", quantities, folder).get(0));
    double[] values = new double[quantities.size()];
    System.arraycopy(cells, cells.length - values.length, values, 0, values.length);
    return values;
  }

  private static List<String> run(
      List<String> netlist, String analysis, List<String> quantities, Path folder)
      throws IOException, InterruptedException {
    List<String> deck = new ArrayList<>(netlist);
    deck.addAll(
        List.of(
            ".options reltol=1e-12 vntol=1e-13 abstol=1e-13 itl1=1000",
            ".control",
            "set numdgt=15",
            "set wr_singlescale",
            analysis,
            "wrdata " + RESULT + " " + String.join(" ", quantities),
            "quit",
            ".endc",
            ".end"));
    Files.write(folder.resolve("deck.cir"), deck);
    Process ngspice =
        new ProcessBuilder("ngspice", "-b", "deck.cir")
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log").toFile())
            .start();
    assertTrue(ngspice.waitFor(60, TimeUnit.SECONDS), "ngspice does not end");
    String log = Files.readString(folder.resolve("log"));
    assertTrue(Files.exists(folder.resolve(RESULT)), log);
    List<String> lines = Files.readAllLines(folder.resolve(RESULT));
    assertEquals(0, ngspice.exitValue(), log);
    return lines;
  }

  private static double[] numbers(String line) {
    return Stream.of(line.trim().split("\\s+")).mapToDouble(Double::parseDouble).toArray();
  }
}
