package org.footwell.electrical.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Step;
import org.footwell.calculation.Verdict;
import org.footwell.electrical.supply.SupplyCableRequest.Branch;
import org.footwell.electrical.supply.SupplyCableRequest.ConstantPower;
import org.footwell.electrical.supply.SupplyCableResult.FuseSeries;
import org.footwell.electrical.supply.SupplyCableResult.LimitedBy;
import org.footwell.electrical.supply.SupplyCableResult.SizedBranch;
import org.footwell.electrical.supply.SupplyCableResult.SizedCable;
import org.footwell.parts.Cable;
import org.footwell.parts.CableBuilder;
import org.footwell.parts.ConductorMaterial;
import org.footwell.parts.ReturnPath;
import org.junit.jupiter.api.Test;

class SupplyCableTest {

  private static Finding finding(Answer<?> answer, String code) {
    return answer.findings().stream()
        .filter(one -> one.code().equals(code))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theWorkedExampleOfTheMethodPage() {
    SizedCable cable = Cables.result(Cables.standard().bodyOhm(0.001)).metric();
    // 5 m · 1.91 ohm/km · 1.1179
    assertEquals(0.010675945, cable.cableOhm(), 1e-12);
    assertEquals(10, cable.areaMm2());
    assertEquals(0.011675945, cable.loopOhm(), 1e-12);
    assertEquals(0.4670378, cable.dropV(), 1e-9);
    assertEquals(13.3329622, cable.endV(), 1e-9);
    assertEquals(18.681512, cable.lossW(), 1e-9);
    assertEquals(100 * 0.4670378 / 13.8, cable.dropPercent(), 1e-9);
    // No. 8 is 8.37 mm², the thickest not above 10: 80 A · 0.85
    assertEquals(68, cable.ampacityA(), 1e-12);
    // 40 A / 0.8
    assertEquals(50, cable.fuseA());
    assertEquals(FuseSeries.BLADE_OR_BOLT_DOWN, cable.fuseSeries());
    // 6 mm² would drop 40 A · 0.01944535 ohm = 0.778 V
    assertEquals(LimitedBy.DROP, cable.limitedBy());
    assertNull(cable.awg());
  }

  @Test
  void theGaugeIsTheSmallestOfItsOwnSeries() {
    SizedCable gauge = Cables.result(Cables.standard().bodyOhm(0.001)).gauge();
    // No. 8 would drop 0.557 V
    assertEquals("6", gauge.awg());
    assertEquals(13.3018, gauge.areaMm2(), 1e-4);
    assertEquals(102, gauge.ampacityA(), 1e-12);
  }

  @Test
  void aReturnCableDoublesTheConductor() {
    CableDraft draft = Cables.standard().returnPath(ReturnPath.CABLE).areaMm2(25.0);
    assertEquals(10 * 0.78 / 1000 * 1.1179, Cables.result(draft).metric().loopOhm(), 1e-12);
  }

  @Test
  void aBranchMayBeOfAnotherConductorAndCheckedAtItsSize() {
    Cable clad =
        CableBuilder.builder(Cables.metres(2))
            .areaMm2(6.0)
            .material(ConductorMaterial.COPPER_CLAD_ALUMINIUM)
            .build();
    Branch branch =
        SupplyCableRequestBranchBuilder.builder(Cables.branch("bass", 20, 0.3)).cable(clad).build();
    Answer<SupplyCableResult> answer = Cables.answer(Cables.branched(branch));
    SizedBranch bass = answer.result().branches().get(0);
    // 2 m of 3.3 ohm/km at 50 °C, over 0.629
    assertEquals(2 * 0.0033 * (1 + 0.00393 * 30) / 0.629, bass.metric().cableOhm(), 1e-12);
    assertNull(bass.gauge());
    assertTrue(
        answer.findings().stream()
            .anyMatch(
                finding ->
                    finding.code().equals("copper-clad")
                        && finding.pointer().equals("/branches/0/cable/material")));
  }

  @Test
  void copperCladAluminiumDropsMoreAndCarriesLess() {
    CableDraft draft = Cables.standard().areaMm2(25.0);
    SizedCable copper = Cables.result(draft).metric();
    draft.material(ConductorMaterial.COPPER_CLAD_ALUMINIUM);
    SizedCable clad = Cables.result(draft).metric();
    assertEquals(copper.dropV() / 0.629, clad.dropV(), 1e-12);
    assertEquals(136, copper.ampacityA(), 1e-12);
    assertEquals(136 * Math.sqrt(0.629), clad.ampacityA(), 1e-12);
    assertEquals("copper-clad", Cables.answer(draft).findings().get(0).code());
  }

  @Test
  void aConstantPowerDrawsMoreCurrentThroughAThinnerCable() {
    SizedCable cable = Cables.result(Cables.power(500, 0.8).bodyOhm(0.001)).metric();
    assertEquals(16, cable.areaMm2());
    // 625 W: 2·625/(13.8 + √(13.8² − 4·0.007763295·625))
    assertEquals(46.506590064, cable.currentA(), 1e-9);
    assertEquals(625, cable.currentA() * cable.endV(), 1e-9);
    assertTrue(cable.currentA() > 625 / 13.8);
  }

  @Test
  void aSizeIsRaisedForTheFuseWhereTheCurrentAloneWouldPass() {
    CableDraft draft = Cables.standard().engineSpace(false).permittedDropV(5.0).currentA(33.0);
    // 2.5 mm² carries 35 A, but the fuse must be 33/0.8 = 41.25 A or more: 50 A.
    SizedCable cable = Cables.result(draft).metric();
    assertEquals(LimitedBy.FUSE, cable.limitedBy());
    assertEquals(50, cable.fuseA());
    // 4 mm² counts as No. 12, 45 A; 6 mm² as No. 10, 60 A.
    assertEquals(6, cable.areaMm2());
  }

  @Test
  void aHotPlaceAsksForALargerFuse() {
    CableDraft draft = Cables.standard().areaMm2(35.0);
    assertEquals(50, Cables.result(draft).metric().fuseA());
    draft.fuseHeatFactor(0.8);
    // 40/(0.8·0.8) = 62.5
    assertEquals(70, Cables.result(draft).metric().fuseA());
  }

  @Test
  void aCurrentThatIsJustEightTenthsOfAFuseTakesThatFuse() {
    CableDraft draft = Cables.standard().areaMm2(35.0).currentA(24.0);
    assertEquals(30, Cables.result(draft).metric().fuseA());
    assertEquals(FuseSeries.BLADE, Cables.result(draft).metric().fuseSeries());
  }

  @Test
  void anOverloadedCableIsAStop() {
    CableDraft draft = Cables.standard().areaMm2(6.0).currentA(60.0).permittedDropV(3.0);
    Answer<SupplyCableResult> answer = Cables.answer(draft);
    assertEquals(Verdict.STOP, answer.verdict());
    Finding overloaded = finding(answer, "cable-overloaded");
    assertEquals(60, overloaded.value());
    assertEquals(51, overloaded.limit(), 1e-12);
    assertNull(answer.result().metric().fuseA());
    assertTrue(Answers.codes(answer).contains("no-fuse-fits"));
  }

  @Test
  void whereNoFuseFitsThatIsSaidAndNoneIsNamed() {
    CableDraft draft = Cables.standard().areaMm2(6.0).currentA(45.0).permittedDropV(3.0);
    Answer<SupplyCableResult> answer = Cables.answer(draft);
    assertEquals(Verdict.STOP, answer.verdict());
    assertEquals(
        "No standard fuse suits a cable of 6 mm²: for 45 A it must be rated 56.25 A or more, but"
            + " the cable carries only 51 A. Do not fit a larger fuse; take a thicker cable or"
            + " split the load.",
        finding(answer, "no-fuse-fits").inFull());
    assertNull(answer.result().metric().fuseA());
    assertFalse(Answers.codes(answer).contains("cable-overloaded"));
  }

  @Test
  void moreThanTheLargestFuseHasNoSize() {
    CableDraft draft =
        Cables.standard()
            .engineSpace(false)
            .insulationTemperatureC(200.0)
            .permittedDropV(5.0)
            .currentA(450.0);
    Answer<SupplyCableResult> answer = Cables.answer(draft);
    assertNull(answer.result().metric());
    assertNull(answer.result().gauge());
    assertEquals(List.of("no-size-fits", "no-fuse-fits"), Answers.codes(answer).subList(0, 2));
    assertEquals(562.5, finding(answer, "no-fuse-fits").value(), 1e-9);
  }

  @Test
  void aMetricSizeMayDoWhereNoGaugeDoes() {
    CableDraft draft = Cables.standard().currentA(200.0).permittedDropV(0.14);
    // 0000 drops about 200 A · 5 m · 0.18 ohm/km · 1.118 = 0.2 V, 185 mm² drops 0.1185 V.
    Answer<SupplyCableResult> answer = Cables.answer(draft);
    assertEquals(185, answer.result().metric().areaMm2());
    assertNull(answer.result().gauge());
    assertTrue(Answers.codes(answer).contains("no-gauge-fits"));
    assertTrue(Answers.codes(answer).contains("beyond-ampacity-table"));
    assertEquals(445 * 0.85, answer.result().metric().ampacityA(), 1e-12);
    assertEquals(Verdict.NOTE, answer.verdict());
  }

  @Test
  void aPowerThatNoStandardCableBringsThroughIsAStopWithTheReason() {
    CableDraft draft = Cables.power(40000, 1).oneWayM(20.0).permittedDropV(6.0);
    Answer<SupplyCableResult> answer = Cables.answer(draft);
    // 240 mm²: 20 m · 0.0801 ohm/km · 1.1179 = 0.001790876 ohm; 13.8²/(4·that)
    Finding none = finding(answer, "no-operating-point");
    assertEquals(Verdict.STOP, none.level());
    assertEquals(13.8 * 13.8 / (4 * 0.0017908758), none.limit(), 1e-3);
    assertEquals(40000, none.value());
  }

  @Test
  void branchesLoadTheMainCableTogetherAndStartAtItsLowestVoltage() {
    CableDraft draft =
        Cables.branched(
            Cables.branch("front", 20, 0.2),
            SupplyCableRequestBranchBuilder.builder()
                .name("bass")
                .constantPower(new ConstantPower(260.0, 0.8))
                .cable(Cables.metres(1))
                .permittedDropV(0.3)
                .build());
    SupplyCableResult result = Cables.result(draft);
    // 20 A + 325 W/(13.8 − 0.5 − 0.3 V) = 45 A
    assertEquals(45, result.metric().currentA(), 1e-12);
    SizedBranch bass = result.branches().get(1);
    assertEquals("bass", bass.name());
    assertEquals(13.3, bass.startV(), 1e-12);
    assertEquals(325, bass.metric().currentA() * bass.metric().endV(), 1e-9);
    SizedBranch front = result.branches().get(0);
    // 1.5 mm² would carry 25 A and its fuse, but drop 20 A · 0.0149 ohm = 0.297 V.
    assertEquals(2.5, front.metric().areaMm2());
    assertEquals(LimitedBy.DROP, front.metric().limitedBy());
    assertEquals(25, front.metric().fuseA());
    assertTrue(Answers.codes(Cables.answer(draft)).contains("branch-fuse-place"));
  }

  @Test
  void theMainFuseMustNotSitFartherThanTheLimit() {
    CableDraft draft = Cables.standard().fuseDistanceM(0.45);
    assertTrue(Answers.codes(Cables.answer(draft)).contains("main-fuse-place"));
    draft.fuseDistanceM(0.46);
    Answer<SupplyCableResult> answer = Cables.answer(draft);
    assertEquals("fuse-too-far", answer.findings().get(0).code());
    assertEquals(Verdict.STOP, answer.verdict());
    assertFalse(Answers.codes(answer).contains("main-fuse-place"));
  }

  @Test
  void everyAnswerDefersToTheVehicleMakerAndSaysHowToEarth() {
    CableDraft draft = Cables.standard();
    assertEquals(
        List.of("main-fuse-place", "blade-breaking-capacity", "earth-point", "rules-first"),
        Answers.codes(Cables.answer(draft)));
    assertEquals(Verdict.NOTE, Cables.answer(draft).verdict());
    draft.returnPath(ReturnPath.CABLE);
    assertTrue(Answers.codes(Cables.answer(draft)).contains("earth-return"));
    assertEquals(3, Cables.answer(draft).safety().size());
  }

  @Test
  void aDropAbovePermittedIsAWarning() {
    Answer<SupplyCableResult> answer = Cables.answer(Cables.standard().areaMm2(6.0));
    assertEquals("drop-exceeded", answer.findings().get(0).code());
    assertEquals(Verdict.WARNING, answer.verdict());
    assertEquals(40 * 0.01844535, finding(answer, "drop-exceeded").value(), 1e-9);
  }

  @Test
  void aConductorHotterThanItsInsulationIsAStop() {
    assertEquals(
        "conductor-too-hot",
        Cables.answer(Cables.standard().conductorTemperatureC(110.0)).findings().get(0).code());
  }

  @Test
  void sizesThatAreNeitherMetricNorGaugeAreSaidToBe() {
    CableDraft draft = Cables.standard().areaMm2(20.0);
    assertTrue(Answers.codes(Cables.answer(draft)).contains("size-not-standard"));
    draft.areaMm2(21.1);
    assertFalse(Answers.codes(Cables.answer(draft)).contains("size-not-standard"));
    // The area of No. 4 as people write it counts as No. 4.
    assertEquals(160 * 0.85, Cables.result(draft).metric().ampacityA(), 1e-12);
  }

  @Test
  void insulationBetweenTwoColumnsCountsAsTheLower() {
    CableDraft draft =
        Cables.standard().engineSpace(false).areaMm2(25.0).insulationTemperatureC(104.0);
    assertEquals(135, Cables.result(draft).metric().ampacityA());
    draft.insulationTemperatureC(70.0);
    assertEquals(105, Cables.result(draft).metric().ampacityA());
  }

  @Test
  void workingsNameTheLawTheAmpacityComesFrom() {
    List<Step> steps =
        Answers.withWorkings(new SupplyCable(), Cables.standard().build()).workings();
    assertTrue(
        steps.stream()
            .anyMatch(
                step ->
                    step.quantity().equals("table_ampacity_a")
                        && step.source().contains("33 CFR 183.425")
                        && step.value() == 80));
  }
}
