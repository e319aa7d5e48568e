package org.footwell.electrical.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.DoubleStream;
import org.footwell.Answers;
import org.footwell.calculation.Fault;
import org.footwell.parts.ConductorMaterial;
import org.footwell.physics.Conductors;
import org.junit.jupiter.api.Test;

/** A conductor conducts as its material does. */
class ConductorBoundsTest {

  private static List<Fault> faults(ConductorMaterial material, double conductivity) {
    CableDraft draft = Cables.standard().material(material).conductivity(conductivity);
    return Answers.faults(new SupplyCable(), draft.build());
  }

  @Test
  void copperCladAluminiumIsNotCopper() {
    Fault fault = faults(ConductorMaterial.COPPER_CLAD_ALUMINIUM, 1).get(0);
    assertEquals("conductivity-not-of-material", fault.code());
    assertEquals("/cable/conductivity", fault.pointer());
    assertEquals(
        "No copper-clad aluminium conducts 1.0 times as well as copper: it is 0.55 to 0.7. Check"
            + " material and conductivity.",
        fault.detail());
  }

  @Test
  void copperIsNotAluminium() {
    assertEquals(
        "conductivity-not-of-material", faults(ConductorMaterial.COPPER, 0.629).get(0).code());
  }

  /** IEC 60028: 1 m of 1 mm² of annealed copper has 1/58 ohm at 20 °C. */
  @Test
  void gaugesAreCountedTenToSixteenPercentAboveSolidCopper() {
    double[] above =
        Gauge.sizes()
            .mapToDouble(Gauge::areaMm2)
            .filter(area -> area >= Ampacity.SMALLEST_MM2)
            .map(area -> Conductors.CLASS_5_OHM_PER_KM.at(area) / (1000.0 / 58 / area) - 1)
            .toArray();
    assertEquals(0.106, DoubleStream.of(above).min().orElseThrow(), 0.0005);
    assertEquals(0.157, DoubleStream.of(above).max().orElseThrow(), 0.0005);
  }
}
