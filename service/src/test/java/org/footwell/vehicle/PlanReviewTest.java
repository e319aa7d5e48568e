package org.footwell.vehicle;

import static org.footwell.vehicle.PlanDraft.channel;
import static org.footwell.vehicle.PlanDraft.crossover;
import static org.footwell.vehicle.PlanDraft.driver;
import static org.footwell.vehicle.PlanDraft.finding;
import static org.footwell.vehicle.PlanDraft.said;
import static org.footwell.vehicle.PlanDraft.sheet;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Verdict;
import org.footwell.vehicle.PlanReviewResult.FedLine;
import org.footwell.vehicle.PlanReviewResult.SupplyLine;
import org.footwell.vehicle.chain.EngineState;
import org.footwell.vehicle.chain.Limit;
import org.junit.jupiter.api.Test;

/** What plans are told that went wrong when fitters tried: one state, and the truth about it. */
class PlanReviewTest {

  private static final String LR_3000 =
      "{\"kind\":\"linkwitz_riley\",\"order\":4,\"frequency_hz\":3000}";

  /** Two doors and a tweeter, all active, on one amplifier at a held 13.8 V. */
  private static PlanDraft active() {
    return Codes.plan("tweeter-only-active");
  }

  /** Requests that drive the codes are small plans to start from. */
  private static final class Codes {
    static PlanDraft plan(String code) {
      return PlanDraft.ofFile("src/test/resources/codes/plan-review/" + code + ".json");
    }
  }

  @Test
  void aTweeterWithoutAnyHighPassIsAStop() {
    Answer<PlanReviewResult> bare = active().without("/channels/2/high_pass").review();
    assertEquals(Verdict.STOP, bare.verdict());
    assertEquals("tweeter-unprotected", bare.findings().get(0).code());
    assertEquals("/drivers/2", bare.findings().get(0).pointer());
  }

  @Test
  void whereOnlyAnActiveHighPassGuardsATweeterTheCapacitorIsNamed() {
    // Half of 3 kHz into 4 ohm: 10⁶/(2π·1500·4) = 26.53 µF; |1/(1 − j/2)|² = 1/1.25, 26.57°.
    Answer<PlanReviewResult> answer = active().review();
    assertEquals(26.53, driver(answer.result(), "top").protectionUf(), 0.01);
    Finding named = finding(answer, "tweeter-only-active");
    assertTrue(named.text().contains("26.53 µF"), named.text());
    assertTrue(named.text().contains("0.9691 dB"), named.text());
    assertTrue(named.text().contains("26.57 degrees"), named.text());
    // Once it is fitted as the plan says, the chain counts it and nothing is to be said.
    Answer<PlanReviewResult> fitted =
        active()
            .without("/channels/2/network")
            .with(
                "/channels/2/branches",
                "[{\"band\":\"high\",\"network\":\"top\","
                    + "\"elements\":[{\"place\":\"series\",\"capacitance_uf\":26.5}]}]")
            .review();
    assertFalse(said(fitted).contains("note tweeter-only-active"), said(fitted).toString());
    assertNull(driver(fitted.result(), "top").protectionUf());
    assertTrue(
        channel(fitted.result(), "top").lowestOhm() > channel(answer.result(), "top").lowestOhm());
  }

  @Test
  void aTweeterIsJudgedAsTheTweeterItIs() {
    // A tweeter's window begins at 2·fs = 2,300 Hz or above, a woofer's at fs.
    PlanDraft plan =
        active()
            .with("/channels/2/high_pass", LR_3000.replace("3000", "2500"))
            .with("/channels/0/low_pass", LR_3000.replace("3000", "2500"))
            .with("/crossovers", "[{\"lower\":\"left\",\"upper\":\"top\",\"frequency_hz\":2500}]");
    PlanReviewResult result = plan.review().result();
    assertTrue(crossover(result, "top").lowestHz() >= 2300 - 1e-9);
    assertFalse(said(plan.review()).contains("warning crossover-too-low"));
  }

  @Test
  void sheetLevelHeadlineAndExposureAreOneState() {
    PlanReviewResult result = PlanDraft.van().review().result();
    // Every channel alone, as the sheet trims it, in its own band: the headline is their sum with
    // phases, never above all in phase and near the sum of powers.
    double powers = 0;
    double inPhase = 0;
    for (PlanReviewResult.ChannelLine line : result.channels()) {
      powers += Math.pow(10, line.levelDbSpl() / 10);
      inPhase += Math.pow(10, line.levelDbSpl() / 20);
    }
    assertEquals(10 * Math.log10(powers), result.levelDbSpl(), 2.5);
    assertTrue(result.levelDbSpl() < 20 * Math.log10(inPhase));
    assertEquals(8 / Math.pow(2, (result.levelDba() - 85) / 3), result.exposureAllowedH(), 1e-9);
    assertEquals(result.levelDbSpl(), result.seats().get(0).levelDbSpl(), 1e-12);
    // What is advised, set as advised, changes nothing.
    PlanDraft set = PlanDraft.van();
    set.with("/settings", "[]");
    for (PlanReviewResult.SetupLine line : result.setupSheet()) {
      set.with(
          "/settings/-",
          "{\"channel\":\"%s\",\"gain_v\":%s,\"trim_db\":%s,\"delay_ms\":%s,\"polarity\":%d}"
              .formatted(
                  line.id(), line.gainTargetV(), line.trimDb(), line.delayMs(), line.polarity()));
    }
    PlanReviewResult again = set.review().result();
    assertEquals(result.levelDbSpl(), again.levelDbSpl(), 1e-9);
    assertEquals(result.levelDba(), again.levelDba(), 1e-9);
    assertEquals(sheet(result, "bass").gainTargetV(), sheet(again, "bass").gainTargetV(), 1e-9);
  }

  @Test
  void withTheTrimsOfTheSheetEveryChannelIsAsLoudInItsOwnBand() {
    // Two alike doors at unlike distances beyond the critical one, behind unlike cables: as loud.
    PlanReviewResult result =
        Codes.plan("loud")
            .with("/channels/0/cable", "{\"one_way_m\":8,\"area_mm2\":1}")
            .review()
            .result();
    assertEquals(channel(result, "left").levelDbSpl(), channel(result, "right").levelDbSpl(), 0.2);
    assertEquals(0, channel(result, "left").trimDb(), 0);
    assertTrue(channel(result, "right").trimDb() < -0.2);
  }

  @Test
  void aSubsonicFilterDoesNotMoveTheBassAsIfItWereFlightTime() {
    PlanDraft plan =
        PlanDraft.van()
            .with(
                "/channels/5/high_pass",
                "{\"kind\":\"butterworth\",\"order\":4,\"frequency_hz\":35}");
    PlanReviewResult result = plan.review().result();
    PlanReviewResult.CrossoverLine line = crossover(result, "front_left");
    assertTrue(line.lossDb() >= line.flightLossDb(), line.toString());
    assertTrue(line.flightLossDb() > -4, line.toString());
    assertTrue(line.lossDb() > -1, line.toString());
    assertEquals(
        channel(result, "bass").flightDelayMs() + line.movedMs(),
        channel(result, "bass").delayMs(),
        0.5 / 48 + 1e-9);
  }

  @Test
  void aThinCableCostsCleanPower() {
    PlanReviewResult thick = Codes.plan("loud").review().result();
    PlanReviewResult thin = Codes.plan("sag-costs-power").review().result();
    FedLine before = thick.supply().get(0).amplifiers().get(0);
    FedLine after = thin.supply().get(0).amplifiers().get(0);
    assertTrue(after.voltageV() < before.voltageV());
    assertTrue(after.cleanPowerW() < before.cleanPowerW());
    assertTrue(channel(thin, "left").cleanPowerW() < channel(thick, "left").cleanPowerW());
    // A full sine on 2·60 W at 14.4 V is the resistance that draws its rated input there.
    double rated = 14.4 * 1 + 2 * 60 / 0.78;
    double loop = thin.cables().get(0).loopOhm();
    assertEquals(13.8 / (loop + 14.4 * 14.4 / rated), thin.supply().get(0).sineCurrentA(), 1e-9);
  }

  @Test
  void everySituationHasItsVoltage() {
    PlanReviewResult result = PlanDraft.van().review().result();
    assertEquals(
        List.of(EngineState.CRUISING, EngineState.IDLING, EngineState.ENGINE_OFF),
        result.supply().stream().map(SupplyLine::situation).toList());
    SupplyLine off = result.supply().get(2);
    // The battery rests at 12.4 V behind 7 milliohm, and 4 A go elsewhere.
    assertEquals(12.4 - 0.007 * (4 + off.currentA()), off.batteryV(), 1e-9);
    assertEquals(14.2, result.supply().get(0).batteryV(), 0);
  }

  @Test
  void theLowestLoadIsThatOfTheFinishedLoudspeaker() {
    // Both branches hang on one output: below either alone, and the cable is not in it.
    String woofer = "{\"place\":\"series\",\"inductance_mh\":0.02,\"coil_ohm\":0.05}";
    String tweeter = "{\"place\":\"series\",\"capacitance_uf\":22}";
    String branches =
        "[{\"band\":\"low\",\"network\":\"left\",\"elements\":[%s]},"
            + "{\"band\":\"high\",\"network\":\"top\",\"elements\":[%s]}]";
    PlanDraft both =
        active()
            .without("/channels/2")
            .without("/channels/0/network")
            .with("/channels/0/branches", branches.formatted(woofer, tweeter));
    PlanReviewResult result = both.review().result();
    PlanReviewResult alone =
        active()
            .without("/channels/0/network")
            .with(
                "/channels/0/branches",
                "[{\"band\":\"low\",\"network\":\"left\",\"elements\":[%s]}]".formatted(woofer))
            .review()
            .result();
    assertTrue(
        channel(result, "left").lowestOhm() < channel(alone, "left").lowestOhm() - 0.1,
        channel(result, "left").toString());
    assertEquals(4, channel(result, "left").loadOhm(), 1e-12);
  }

  @Test
  void leftAndRightInOppositePolarityIsFoundOnce() {
    Answer<PlanReviewResult> answer = Codes.plan("opposite-polarity").review();
    Finding found = answer.findings().get(0);
    assertEquals("opposite-polarity", found.code());
    assertEquals(List.of("/channels/0", "/channels/1"), found.places());
    assertEquals(
        1, answer.findings().stream().filter(f -> f.code().equals("opposite-polarity")).count());
  }

  @Test
  void theDemoVanIsSoundAndSaysEverythingOnce() {
    Answer<PlanReviewResult> answer = PlanDraft.van().review();
    assertEquals(Verdict.NOTE, answer.verdict(), said(answer).toString());
    assertEquals(said(answer).stream().distinct().toList(), said(answer));
    assertNull(answer.result().notJudged());
  }

  @Test
  void withoutALimiterTheGainComesDownToWhatTheDriversBear() {
    PlanDraft plan = Codes.plan("loud").with("/new_parts/0/driver/continuous_power_w", "2");
    PlanReviewResult result = plan.review().result();
    assertEquals(Limit.HEAT, channel(result, "left").gainHeldBy());
    // The louder of both is trimmed, so that it gets less; the other one gets just its power.
    double most =
        Math.max(driver(result, "left").meanPowerW(), driver(result, "right").meanPowerW());
    assertEquals(2, most, 1e-6);
    PlanReviewResult limited =
        plan.with("/channels/0/rms_limiter", "true")
            .with("/channels/1/rms_limiter", "true")
            .review()
            .result();
    assertEquals(0, channel(limited, "left").gainReductionDb(), 0);
    assertEquals(2, driver(limited, "left").meanPowerW(), 1e-6);
    assertEquals(Limit.HEAT, limited.largest().heldBy());
    assertTrue(limited.largest().driveDb() < 0);
  }

  @Test
  void aDriverMovesNoFartherThanItsTravelWithTheGainAdvised() {
    PlanReviewResult result = Codes.plan("gain-below-clip").review().result();
    assertEquals(Limit.MOVEMENT, channel(result, "left").gainHeldBy());
    double most =
        Math.max(driver(result, "left").displacementMm(), driver(result, "right").displacementMm());
    assertEquals(2.6, most, 1e-6);
    assertTrue(driver(result, "left").sineDisplacementMm() > 0);
  }

  @Test
  void coilsInSeriesGetTheirPartOfTheVoltageAndAreAsLoudForTheSamePower() {
    // Two coils of 4 ohm: in series on 8 ohm half the voltage each, a quarter of the power of the
    // same
    // voltage in parallel on 2 ohm. A stiff amplifier shows just that.
    String amplifier =
        "{\"id\":\"out\",\"output_count\":4,\"minimum_ohm\":1,\"rails\":"
            + "{\"rail_v\":30,\"supply_v\":13.8,\"drop_v\":2}}";
    PlanDraft series =
        Codes.plan("loud")
            .with("/amplifiers/0/outputs/0", amplifier)
            .with("/new_parts/0/coil_count", "2")
            .with("/channels/0/network", "\"left.1 + left.2\"")
            .with("/channels/1/network", "\"right.1 || right.2\"");
    PlanReviewResult result = series.review().result();
    assertEquals(8, channel(result, "left").loadOhm(), 1e-12);
    assertEquals(2, channel(result, "right").loadOhm(), 1e-12);
    assertEquals(-20 * Math.log10(2), channel(result, "right").trimDb(), 0.02);
    assertEquals(0, channel(result, "left").trimDb(), 0);
  }

  @Test
  void massAndPriceAreThoseOfEverythingNewLessWhatGoesOut() {
    PlanReviewResult result =
        PlanDraft.van()
            .with(
                "/extras",
                "[{\"name\":\"adapter rings\",\"extra_count\":4,\"price\":12.5,\"mass_g\":150},"
                    + "{\"name\":\"labour\",\"price\":480}]")
            .review()
            .result();
    assertEquals(0, new BigDecimal("2130").compareTo(result.price()), result.price().toString());
    double in = 2 * 1250 + 2 * 180 + 340 + 2 * 780 + 2 * 5400 + 2900 + 3600 + 4 * 150;
    assertEquals(in - 2 * 620 - 2 * 410, result.massChangeG(), 1e-9);
  }

  @Test
  void whatIsNotKnownIsToldOnceWithItsFields() {
    Answer<PlanReviewResult> answer =
        PlanDraft.van()
            .without("/new_parts/2/driver/price")
            .without("/new_parts/2/driver/sensitivity")
            .without("/new_parts/2/driver/xmax_mm")
            .review();
    assertNull(answer.result().price());
    assertNull(answer.result().levelDbSpl());
    assertNull(channel(answer.result(), "centre").levelDbSpl());
    assertNotNull(channel(answer.result(), "bass").levelDbSpl());
    assertEquals(
        List.of("/new_parts/2/driver/sensitivity"), answer.result().notJudged().get(0).missing());
    assertEquals(1, said(answer).stream().filter(code -> code.equals("note not-judged")).count());
  }

  @Test
  void theBassStepIsStatedAndTheTargetMovesIt() {
    assertEquals(20 * Math.log10(0.5), PlanDraft.van().review().result().bassStepDb(), 1e-9);
    PlanReviewResult lifted =
        PlanDraft.van()
            .with("/target", "{\"roles\":[{\"role\":\"subwoofer\",\"level_db\":6}]}")
            .review()
            .result();
    assertEquals(6 + 20 * Math.log10(0.5), lifted.bassStepDb(), 1e-9);
    PlanReviewResult flat = PlanDraft.van().review().result();
    double before = channel(flat, "bass").trimDb() - channel(flat, "centre").trimDb();
    double after = channel(lifted, "bass").trimDb() - channel(lifted, "centre").trimDb();
    // The amplifiers draw more or less then, and so their voltages move a little.
    assertEquals(6, after - before, 0.02);
  }

  @Test
  void aMeasuredChannelIsHeldAgainstThePrediction() {
    Answer<PlanReviewResult> answer = Codes.plan("measured-level-off").review();
    double predicted = channel(answer.result(), "left").levelDbSpl();
    assertEquals(88 - predicted, sheet(answer.result(), "left").measured().levelOffDb(), 1e-9);
    assertEquals(3.3, sheet(answer.result(), "left").measured().expectedOhm(), 1e-12);
  }

  @Test
  void aCompromiseOfTheSeatsTakesFromTheMainSeatWhatItGivesToTheOther() {
    PlanReviewResult own = PlanDraft.van().review().result();
    PlanReviewResult all =
        PlanDraft.van()
            .with("/target", "{\"seats\":\"all\"}")
            .with("/seats/0/weight", "1")
            .review()
            .result();
    assertEquals(0, own.seats().get(0).spreadMs(), 0.021);
    assertTrue(own.seats().get(1).spreadMs() > 1, own.seats().get(1).toString());
    assertTrue(all.seats().get(0).spreadMs() > own.seats().get(0).spreadMs());
    assertTrue(all.seats().get(1).spreadMs() < own.seats().get(1).spreadMs());
    double worst =
        Math.min(all.seats().get(0).crossoverLossDb(), all.seats().get(1).crossoverLossDb());
    double ownWorst =
        Math.min(own.seats().get(0).crossoverLossDb(), own.seats().get(1).crossoverLossDb());
    assertTrue(worst >= ownWorst - 0.2, worst + " " + ownWorst);
  }
}
