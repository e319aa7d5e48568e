package org.footwell.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.footwell.heat.AmplifierHeatResult.ChannelHeat;
import org.footwell.reference.ReferenceTable;
import org.footwell.reference.ReferenceTable.Row;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Runs the circuit simulator on the push-pull stage and holds the calculation against it. */
@Tag("workbench")
class PushPullCircuitIT {

  private static final Path SCRIPT =
      Path.of("src/test/resources/reference/ngspice/run-push-pull.sh");

  private static List<Row> simulated;

  @BeforeAll
  static void simulate() throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder("bash", SCRIPT.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), "is ngspice installed?");
    String table =
        output.lines().filter(line -> !line.startsWith("#")).collect(Collectors.joining("\n"));
    simulated = CsvReader.builder().ofNamedCsvRecord(table).stream().map(Row::new).toList();
  }

  @Test
  void currentAndHeatAreThoseOfTheCircuit() {
    for (Row row : simulated) {
      ChannelHeat ours = HeatOutsideChecks.circuit(row);
      within(0.001, row.number("rail_current_a"), ours.sine().railCurrentA(), row);
      within(0.001, row.number("output_w"), ours.sine().outputPowerW(), row);
      within(0.001, row.number("heat_w"), ours.sine().heatW(), row);
    }
  }

  @Test
  void theCommittedTableIsWhatTheSimulatorSays() {
    List<Row> committed = ReferenceTable.load("push-pull-ngspice.csv").rows();
    assertEquals(committed.size(), simulated.size());
    for (int i = 0; i < committed.size(); i++) {
      for (String column : simulated.get(i).cells().getHeader()) {
        double now = simulated.get(i).number(column);
        within(0.001, now, committed.get(i).number(column), committed.get(i));
      }
    }
  }

  private static void within(double ratio, double expected, double actual, Row row) {
    assertEquals(expected, actual, ratio * Math.abs(expected), row::toString);
  }
}
