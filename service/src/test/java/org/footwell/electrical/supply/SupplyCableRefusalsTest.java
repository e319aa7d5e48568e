package org.footwell.electrical.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Fault;
import org.footwell.electrical.supply.SupplyCableRequest.Branch;
import org.footwell.electrical.supply.SupplyCableRequest.ReturnPath;
import org.junit.jupiter.api.Test;

class SupplyCableRefusalsTest {

  private static List<Fault> faults(CableDraft draft) {
    return Answers.faults(new SupplyCable(), draft.request());
  }

  private static Fault only(CableDraft draft) {
    List<Fault> faults = faults(draft);
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0);
  }

  @Test
  void aPermittedDropOfNothingCannotBeMet() {
    CableDraft draft = new CableDraft();
    draft.permittedDropV = 0.0;
    Fault fault = only(draft);
    assertEquals("permitted-drop-zero", fault.code());
    assertEquals("/permitted_drop_v", fault.pointer());
    assertEquals(
        "A drop of 0.0 V cannot be met: every cable drops something. Permit more than 0 V.",
        fault.detail());
  }

  @Test
  void aPermittedDropOfTheWholeSupplyIsRefused() {
    CableDraft draft = new CableDraft();
    draft.permittedDropV = 13.8;
    assertEquals("permitted-drop-above-supply", only(draft).code());
  }

  @Test
  void aCurrentThatWouldDropMoreThanTheSupplyCannotFlow() {
    CableDraft draft = new CableDraft();
    draft.areaMm2 = 1.5;
    draft.currentA = 200.0;
    // 5 m · 13.3 ohm/km · 1.1179 = 0.07434 ohm, 14.87 V
    Fault fault = only(draft);
    assertEquals("drop-above-supply", fault.code());
    assertEquals("/area_mm2", fault.pointer());
  }

  @Test
  void aPowerThatCannotPassTheCableIsRefusedWithTheReason() {
    CableDraft draft = new CableDraft().power(1000, 1);
    draft.areaMm2 = 1.5;
    // 13.8²/(4·0.07434035) = 640.4 W
    Fault fault = only(draft);
    assertEquals("power-cannot-pass", fault.code());
    assertEquals(
        "Through 1.5 mm2, a loop of 0.07434 ohm, no current brings 1000 W to the load: from 13.8 V"
            + " at most 640.4 W get through, the square of the voltage over four times the"
            + " resistance.",
        fault.detail());
  }

  @Test
  void contactsThatDropTooMuchByThemselvesAreNamed() {
    CableDraft draft = new CableDraft();
    draft.contactsOhm = 0.02;
    Fault fault = only(draft);
    assertEquals("fixed-resistance-too-high", fault.code());
    assertEquals("/contacts_ohm", fault.pointer());
  }

  @Test
  void aBodyOutsideTheLoopIsRefused() {
    CableDraft draft = new CableDraft();
    draft.returnPath = ReturnPath.CABLE;
    draft.bodyOhm = 0.001;
    assertEquals("body-not-in-loop", only(draft).code());
  }

  @Test
  void everythingImpossibleIsSaidAtOnce() {
    CableDraft draft = new CableDraft();
    draft.branches =
        List.of(
            new Branch("a", null, null, 1.0, 0.0, null, null, null),
            new Branch("b", 10.0, null, 1.0, 13.4, null, null, null));
    draft.returnPath = ReturnPath.CABLE;
    draft.bodyOhm = 0.001;
    assertEquals(
        List.of(
            "",
            "/body_ohm",
            "/branches/0",
            "/branches/0/permitted_drop_v",
            "/branches/1/permitted_drop_v"),
        faults(draft).stream().map(Fault::pointer).toList());
  }

  @Test
  void aLengthOfNothingAndAnUnknownMaterialAreRefused() {
    CableDraft draft = new CableDraft();
    draft.oneWayM = 0.0;
    draft.material = null;
    assertEquals(
        List.of("/material", "/one_way_m"),
        faults(draft).stream().map(Fault::pointer).sorted().toList());
  }
}
