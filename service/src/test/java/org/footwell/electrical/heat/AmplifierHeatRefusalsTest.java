package org.footwell.electrical.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Fault;
import org.footwell.electrical.heat.AmplifierHeatRequest.ChannelStage;
import org.footwell.parts.ClassD;
import org.footwell.parts.OutputClass;
import org.junit.jupiter.api.Test;

class AmplifierHeatRefusalsTest {

  private static ChannelStage channel(OutputClass type, Double quiescent, ClassD classD) {
    return AmplifierHeatRequestChannelStageBuilder.builder()
        .outputClass(type)
        .railV(30.0)
        .dropV(2.0)
        .loadOhm(4.0)
        .quiescentCurrentA(quiescent)
        .classD(classD)
        .build();
  }

  @Test
  void boundsAreNamedWithTheirFields() {
    ChannelStage beyond = Requests.classB(0, 2, 0, 91);
    AmplifierHeatRequest request =
        Requests.standard(beyond)
            .supplyV(0.0)
            .amplifier(Requests.converter(1.01, false))
            .supplyCableOhm(-0.1)
            .noiseCrestFactorDb(3.0)
            .sineSwingRatio(0.0)
            .build();
    List<Fault> faults = Answers.faults(new AmplifierHeat(), request);
    assertEquals(
        List.of(
            "/amplifier/converter_efficiency",
            "/channels/0/load_ohm",
            "/channels/0/phase_deg",
            "/channels/0/rail_v",
            "/noise_crest_factor_db",
            "/sine_swing_ratio",
            "/supply_cable_ohm",
            "/supply_v"),
        faults.stream().map(Fault::pointer).sorted().toList());
    Fault efficiency =
        faults.stream()
            .filter(fault -> fault.pointer().equals("/amplifier/converter_efficiency"))
            .findFirst()
            .orElseThrow();
    assertEquals("1.01", efficiency.given());
    assertEquals("a number from 0.1 to 1", efficiency.allowed());
  }

  @Test
  void constantPowerBeyondWhatTheCableCarriesIsImpossible() {
    ChannelStage channel = Requests.times(20, Requests.classB(30, 2, 4, 0));
    // 20 · 157.283 W = 3145.7 W; a quarter of 13.8²/0.02 is 2380.5 W.
    List<Fault> faults = Answers.faults(new AmplifierHeat(), Requests.behind(0.02, true, channel));
    assertEquals("draw-impossible", faults.get(0).code());
    assertEquals("/supply_cable_ohm", faults.get(0).pointer());
    assertEquals("0.02", faults.get(0).given());
    assertTrue(faults.get(0).detail().contains("3146 W (sine)"), faults.get(0)::detail);
    assertTrue(faults.get(0).detail().contains("no more than 2381 W"), faults.get(0)::detail);
    assertEquals("at most 0.01513 ohm", faults.get(0).allowed()); // 13.8²/4/3145.7
    // Unregulated, the same goes through: 228 A and 9.2 V left.
    double left = Requests.result(Requests.behind(0.02, false, channel)).total().sine().terminalV();
    assertEquals(9.241, left, 5e-4);
    Fault shorted = Requests.onlyFault(Requests.behind(0.07, false, channel));
    assertEquals("draw-impossible", shorted.code());
  }

  @Test
  void eachClassNeedsItsOwnLossesAndNoOthers() {
    ClassD losses = new ClassD(5.0, 0.1, null);
    assertFault("needed-for-class", "/channels/0/quiescent_current_a", OutputClass.CLASS_AB);
    assertFault("needed-for-class", "/channels/0/class_d", OutputClass.CLASS_D);
    Fault quiescent = Requests.onlyFault(Requests.of(channel(OutputClass.CLASS_B, 0.1, null)));
    assertEquals("not-for-class", quiescent.code());
    Fault both = Requests.onlyFault(Requests.of(channel(OutputClass.CLASS_D, 0.1, losses)));
    assertEquals("/channels/0/quiescent_current_a", both.pointer());
    Fault classD = Requests.onlyFault(Requests.of(channel(OutputClass.CLASS_B, null, losses)));
    assertEquals("/channels/0/class_d", classD.pointer());
  }

  private static void assertFault(String code, String pointer, OutputClass type) {
    Fault fault = Requests.onlyFault(Requests.of(channel(type, null, null)));
    assertEquals(code, fault.code());
    assertEquals(pointer, fault.pointer());
  }

  @Test
  void classDIsDescribedInOneWay() {
    Fault neither =
        Requests.onlyFault(Requests.of(Requests.classD(40, 4, 0, new ClassD(5.0, null, null))));
    assertEquals("exactly-one-of", neither.code());
    assertEquals("/channels/0/class_d", neither.pointer());
    Fault twice =
        Requests.onlyFault(Requests.of(Requests.classD(40, 4, 0, new ClassD(5.0, 0.1, 0.9))));
    assertEquals("exactly-one-of", twice.code());
  }

  @Test
  void anEfficiencyThatTheIdleLossForbidsIsRefused() {
    ClassD losses = new ClassD(20.0, null, 0.95);
    Fault fault = Requests.onlyFault(Requests.of(Requests.classD(40, 4, 0, losses)));
    assertEquals("efficiency-below-idle-loss", fault.code());
    assertEquals("/channels/0/class_d/full_power_efficiency", fault.pointer());
    assertEquals("at most 0.909", fault.allowed()); // 200/220
  }

  @Test
  void aDropThatEatsTheRailIsRefused() {
    Fault fault = Requests.onlyFault(Requests.of(Requests.classB(3, 3, 4, 0)));
    assertEquals("not-ascending", fault.code());
    assertEquals("/channels/0/rail_v", fault.pointer());
  }
}
