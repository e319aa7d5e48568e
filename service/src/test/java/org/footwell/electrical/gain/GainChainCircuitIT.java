package org.footwell.electrical.gain;

import static org.footwell.reference.CircuitScript.assertWithin;

import java.io.IOException;
import java.util.List;
import org.footwell.reference.CircuitScript;
import org.footwell.reference.ReferenceTable.Row;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Runs the circuit simulator on a chain and holds the calculation against it. */
@Tag("workbench")
class GainChainCircuitIT {

  private static final double RATIO = 0.001;

  private static List<Row> simulated;

  @BeforeAll
  static void simulate() throws IOException, InterruptedException {
    simulated = CircuitScript.rows("run-gain-chain.sh");
  }

  @Test
  void voltageAndNoiseAreThoseOfTheCircuit() {
    for (Row row : simulated) {
      GainChainResult ours = GainOutsideChecks.circuit(row);
      assertWithin(RATIO, row, "output_v", ours.stages().get(2).outputV());
      assertWithin(RATIO, row, "noise_uv", ours.noiseUv());
    }
  }

  @Test
  void theCommittedTableIsWhatTheSimulatorSays() {
    CircuitScript.assertCommitted("gain-chain-ngspice.csv", simulated, RATIO);
  }
}
