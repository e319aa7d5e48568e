package org.footwell.electrical.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.electrical.supply.Fuse.OpeningTime;
import org.footwell.electrical.supply.SupplyCableRequest.Branch;
import org.footwell.electrical.supply.SupplyCableResult.FuseSeries;
import org.footwell.electrical.supply.SupplyCableResult.SizedCable;
import org.junit.jupiter.api.Test;

/** Which fuses suit a cable, which is advised, and what sustained bass does to it. */
class FuseRangeTest {

  /** 17 A of music on 10 mm², which carries 68 A, and an amplifier that draws more at full level. */
  private static CableDraft draft(Double fullSineA, boolean sustained, Double ownA) {
    return Cables.standard().currentA(17.0).areaMm2(10.0).loudest(fullSineA, sustained, ownA);
  }

  private static Finding finding(Answer<?> answer, String code) {
    return answer.findings().stream()
        .filter(one -> one.code().equals(code))
        .findFirst()
        .orElseThrow(() -> new AssertionError(Answers.codes(answer)));
  }

  @Test
  void theRangeIsGivenAndItsSmallestFuseAdvised() {
    SizedCable cable = Cables.result(draft(null, false, null)).metric();
    assertEquals(17 / 0.8, cable.fuseLeastA(), 1e-9);
    assertEquals(25, cable.fuseA());
    assertEquals(60, cable.fuseLargestA()); // 68 A
  }

  @Test
  void aFullSineThatOpensItIsSaidWithItsTime() {
    Answer<SupplyCableResult> answer = Cables.answer(draft(52.0, false, null));
    assertEquals(25, answer.result().metric().fuseA());
    Finding said = finding(answer, "full-sine-opens-fuse");
    assertEquals(52, said.value());
    assertEquals(27.5, said.limit(), 1e-9);
    // 52 A are 208 % of 25 A: after the row for 350 % and before that for 200 %
    assertTrue(said.text().contains("after 0.04 to 5 s"), said::text);
  }

  @Test
  void sustainedBassAsksForAFuseThatBearsIt() {
    Answer<SupplyCableResult> answer = Cables.answer(draft(52.0, true, null));
    SizedCable cable = answer.result().metric();
    assertEquals(52 / 1.1, cable.fuseLeastA(), 1e-9);
    assertEquals(50, cable.fuseA());
    assertFalse(Answers.codes(answer).contains("full-sine-opens-fuse"));
    assertFalse(Answers.codes(answer).contains("full-sine-above-fuse"));
  }

  @Test
  void boltDownFusesAreNotJudgedByTheTimesOfBlades() {
    Answer<SupplyCableResult> answer =
        Cables.answer(draft(200.0, false, null).currentA(100.0).areaMm2(50.0));
    assertEquals(FuseSeries.BOLT_DOWN, answer.result().metric().fuseSeries());
    assertEquals(137.5, finding(answer, "full-sine-above-fuse").limit(), 1e-9);
  }

  @Test
  void aBladeFuseSlightlyOverItsRatingHasNoTime() {
    assertTrue(
        Answers.codes(Cables.answer(draft(30.0, false, null))).contains("full-sine-above-fuse"));
    assertFalse(
        Answers.codes(Cables.answer(draft(27.5, false, null))).contains("full-sine-above-fuse"));
  }

  @Test
  void aHotPlaceCountsForTheSineToo() {
    assertEquals(
        52 / (1.1 * 0.9),
        Cables.result(draft(52.0, true, null).fuseHeatFactor(0.9)).metric().fuseLeastA(),
        1e-9);
  }

  @Test
  void theAmplifiersOwnFusesAreCompared() {
    Finding larger = finding(Cables.answer(draft(52.0, false, 60.0)), "amplifier-fuse-larger");
    assertEquals(60, larger.value());
    assertEquals(25, larger.limit());
    assertTrue(larger.text().contains("The cable allows up to 60 A"), larger::text);
    Finding smaller = finding(Cables.answer(draft(null, false, 20.0)), "amplifier-fuse-smaller");
    assertEquals(20, smaller.value());
    assertFalse(
        Answers.codes(Cables.answer(draft(null, false, 25.0))).stream()
            .anyMatch(code -> code.startsWith("amplifier-fuse")));
  }

  @Test
  void branchesLoadTheMainCableWithWhatLasts() {
    Branch bass =
        SupplyCableRequestBranchBuilder.builder(Cables.branch("bass", 17, 0.3))
            .fullSineA(52.0)
            .sustainedBass(true)
            .build();
    Branch doors =
        SupplyCableRequestBranchBuilder.builder(Cables.branch("doors", 10, 0.3))
            .fullSineA(30.0)
            .build();
    Answer<SupplyCableResult> answer =
        Cables.answer(Cables.branched(bass, doors, Cables.branch("radio", 3, 0.3)));
    // 52 A last, with 10 A and 3 A of music beside them
    assertEquals(65 / 1.1, answer.result().metric().fuseLeastA(), 1e-9);
    assertEquals(52 / 1.1, answer.result().branches().get(0).metric().fuseLeastA(), 1e-9);
    assertEquals(10 / 0.8, answer.result().branches().get(1).metric().fuseLeastA(), 1e-9);
    // Full sines everywhere are 52 + 30 + 3 A.
    assertEquals(85, finding(answer, "full-sine-above-fuse").value(), 1e-9);
  }

  @Test
  void whatLastsMustBeStatedAndBelongsToTheBranches() {
    List<Fault> faults = Answers.faults(new SupplyCable(), draft(null, true, null).build());
    assertEquals("/full_sine_a", faults.get(0).pointer());
    CableDraft both = Cables.branched(Cables.branch("bass", 20, 0.2)).loudest(52.0, false, 40.0);
    assertEquals(
        List.of("at-most-one-of /amplifier_fuse_a", "at-most-one-of /full_sine_a"),
        Answers.faults(new SupplyCable(), both.build()).stream()
            .map(fault -> fault.code() + " " + fault.pointer())
            .toList());
  }

  @Test
  void openingTimesBetweenRowsAreBoundedByBoth() {
    assertNull(OpeningTime.at(1.34));
    assertEquals(0.25, OpeningTime.at(1.5).soonestS());
    assertEquals(600, OpeningTime.at(1.5).latestS());
    assertEquals(0.1, OpeningTime.at(7).latestS());
  }

  @Test
  void thirtyFiveAmperesIsAValue() {
    CableDraft draft = draft(null, false, null).currentA(26.0); // 32.5 A or more
    assertEquals(35, Cables.result(draft).metric().fuseA());
    assertEquals(FuseSeries.BLADE, Cables.result(draft).metric().fuseSeries());
  }

  @Test
  void above32VoltsTheFusesAreOfAnotherKind() {
    CableDraft draft = Cables.standard().supplyV(48.0);
    assertEquals(48, finding(Cables.answer(draft), "fuses-for-58-v").value());
    draft.supplyV(32.0);
    assertFalse(Answers.codes(Cables.answer(draft)).contains("fuses-for-58-v"));
  }
}
