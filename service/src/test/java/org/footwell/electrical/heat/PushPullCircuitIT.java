package org.footwell.electrical.heat;

import static org.footwell.reference.CircuitScript.assertWithin;

import java.io.IOException;
import java.util.List;
import org.footwell.electrical.heat.AmplifierHeatResult.Draw;
import org.footwell.reference.CircuitScript;
import org.footwell.reference.ReferenceTable.Row;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Runs the circuit simulator on the push-pull stage and holds the calculation against it. */
@Tag("workbench")
class PushPullCircuitIT {

  private static final double RATIO = 0.001;

  private static List<Row> simulated;

  @BeforeAll
  static void simulate() throws IOException, InterruptedException {
    simulated = CircuitScript.rows("run-push-pull.sh");
  }

  @Test
  void currentAndHeatAreThoseOfTheCircuit() {
    for (Row row : simulated) {
      Draw ours = HeatOutsideChecks.circuit(row).sine();
      assertWithin(RATIO, row, "rail_current_a", ours.railCurrentA());
      assertWithin(RATIO, row, "output_w", ours.outputPowerW());
      assertWithin(RATIO, row, "heat_w", ours.heatW());
    }
  }

  @Test
  void theCommittedTableIsWhatTheSimulatorSays() {
    CircuitScript.assertCommitted("push-pull-ngspice.csv", simulated, RATIO);
  }
}
