package org.footwell.electrical.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Fault;
import org.footwell.parts.ReturnPath;
import org.junit.jupiter.api.Test;

class SupplyCableRefusalsTest {

  private static List<Fault> faults(CableDraft draft) {
    return Answers.faults(new SupplyCable(), draft.build());
  }

  private static Fault only(CableDraft draft) {
    List<Fault> faults = faults(draft);
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0);
  }

  @Test
  void aPermittedDropOfNothingCannotBeMet() {
    Fault fault = only(Cables.standard().permittedDropV(0.0));
    assertEquals("permitted-drop-zero", fault.code());
    assertEquals("/permitted_drop_v", fault.pointer());
    assertEquals(
        "A drop of 0.0 V cannot be met: every cable drops something. Permit more than 0 V.",
        fault.detail());
  }

  @Test
  void aPermittedDropOfTheWholeSupplyIsRefused() {
    assertEquals(
        "permitted-drop-above-supply", only(Cables.standard().permittedDropV(13.8)).code());
  }

  @Test
  void aCurrentThatWouldDropMoreThanTheSupplyCannotFlow() {
    CableDraft draft = Cables.standard().areaMm2(1.5).currentA(200.0);
    // 5 m · 13.3 ohm/km · 1.1179 = 0.07434 ohm, 14.87 V
    Fault fault = only(draft);
    assertEquals("drop-above-supply", fault.code());
    assertEquals("/cable/area_mm2", fault.pointer());
  }

  @Test
  void aPowerThatCannotPassTheCableIsRefusedWithTheReason() {
    // 13.8²/(4·0.07434035) = 640.4 W
    Fault fault = only(Cables.power(1000, 1).areaMm2(1.5));
    assertEquals("power-cannot-pass", fault.code());
    assertEquals(
        "Through 1.5 mm², a loop of 0.07434 ohm, no current brings 1000 W to the load: from 13.8 V"
            + " at most 640.4 W get through, the square of the voltage over four times the"
            + " resistance.",
        fault.detail());
  }

  @Test
  void contactsThatDropTooMuchByThemselvesAreNamed() {
    Fault fault = only(Cables.standard().contactsOhm(0.02));
    assertEquals("fixed-resistance-too-high", fault.code());
    assertEquals("/contacts_ohm", fault.pointer());
  }

  @Test
  void aBodyOutsideTheLoopIsRefused() {
    CableDraft draft = Cables.standard().returnPath(ReturnPath.CABLE).bodyOhm(0.001);
    assertEquals("body-not-in-loop", only(draft).code());
  }

  @Test
  void everythingImpossibleIsSaidAtOnce() {
    CableDraft draft =
        Cables.standard()
            .branches(
                List.of(
                    SupplyCableRequestBranchBuilder.builder()
                        .name("a")
                        .cable(Cables.metres(1))
                        .permittedDropV(0.0)
                        .build(),
                    Cables.branch("b", 10, 13.4)))
            .returnPath(ReturnPath.CABLE)
            .bodyOhm(0.001);
    assertEquals(
        List.of(
            "/branches/0",
            "",
            "/body_ohm",
            "/branches/0/permitted_drop_v",
            "/branches/1/permitted_drop_v"),
        faults(draft).stream().map(Fault::pointer).toList());
    draft.currentA(null).branches(List.of(Cables.branch("a", 5, 0), Cables.branch("b", 10, 13.4)));
    assertEquals(
        List.of("/body_ohm", "/branches/0/permitted_drop_v", "/branches/1/permitted_drop_v"),
        faults(draft).stream().map(Fault::pointer).toList());
  }

  @Test
  void nothingThinnerThanTheAmpacityTableIsChecked() {
    Fault fault = only(Cables.standard().areaMm2(1.0));
    assertEquals("not-allowed", fault.code());
    assertEquals("/cable/area_mm2", fault.pointer());
  }

  @Test
  void aLengthOfNothingAndAnUnknownMaterialAreRefused() {
    CableDraft draft = Cables.standard().oneWayM(0.0).material(null);
    assertEquals(
        List.of("/cable/material", "/cable/one_way_m"),
        faults(draft).stream().map(Fault::pointer).sorted().toList());
  }
}
