package org.footwell.acoustic.enclosure;

import static org.footwell.reference.CircuitScript.assertWithin;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import org.footwell.acoustic.enclosure.lowend.BoxPoint;
import org.footwell.physics.Decibels;
import org.footwell.reference.CircuitScript;
import org.footwell.reference.ReferenceTable;
import org.footwell.reference.ReferenceTable.Row;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Runs the circuit simulator on driver and box and holds the calculations against it. */
@Tag("workbench")
class BoxCircuitIT {

  private static final double RATIO = 0.001;
  private static final double DECIBELS = Decibels.ofAmplitude(1 + RATIO);
  private static final double DEGREES = 0.06;

  private static List<Row> simulated;

  @BeforeAll
  static void simulate() throws IOException, InterruptedException {
    simulated = CircuitScript.rows("run-boxes.sh");
  }

  @Test
  void soundDisplacementAndAirSpeedAreThoseOfTheCircuits() {
    for (Row row : simulated) {
      BoxPoint ours = BoxCircuits.at(row);
      assertEquals(row.number("level_db_spl"), ours.levelDbSpl(), DECIBELS, row::toString);
      double turn = row.number("phase_deg") - ours.phaseDeg();
      assertEquals(0, Math.IEEEremainder(turn, 360), DEGREES, row::toString);
      assertWithin(RATIO, row, "displacement_mm", ours.displacementMm());
      if (BoxCircuits.isVented(row)) {
        assertWithin(RATIO, row, "port_m_per_s", ours.portVelocityMPerS());
      }
    }
  }

  @Test
  void theCommittedTableIsWhatTheSimulatorSays() {
    List<Row> committed = ReferenceTable.load("boxes-ngspice.csv").rows();
    assertEquals(committed.size(), simulated.size());
    for (int i = 0; i < simulated.size(); i++) {
      assertEquals(committed.get(i).text("circuit"), simulated.get(i).text("circuit"));
      for (String column :
          List.of("frequency_hz", "level_db_spl", "phase_deg", "displacement_mm", "port_m_per_s")) {
        assertWithin(RATIO, simulated.get(i), column, committed.get(i).number(column));
      }
    }
  }
}
