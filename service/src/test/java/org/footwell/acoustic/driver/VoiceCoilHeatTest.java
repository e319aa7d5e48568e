package org.footwell.acoustic.driver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.footwell.Answers;
import org.footwell.acoustic.driver.VoiceCoilHeatRequest.Conductor;
import org.footwell.acoustic.driver.VoiceCoilHeatRequest.Heating;
import org.footwell.acoustic.driver.VoiceCoilHeatRequest.Heating.Held;
import org.footwell.calculation.Answer;
import org.footwell.reference.OutsideCheck;
import org.footwell.reference.OutsideChecks;
import org.footwell.reference.ReferenceTable.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VoiceCoilHeatTest extends OutsideChecks {

  private static final VoiceCoilHeat CALCULATION = new VoiceCoilHeat();

  @Override
  public List<OutsideCheck> checks() {
    return List.of(
        check("coil_c", VoiceCoilHeatResult::coilC),
        check("magnet_c", VoiceCoilHeatResult::magnetC),
        check("hot_ohm", VoiceCoilHeatResult::hotOhm),
        check("power_w", VoiceCoilHeatResult::powerW),
        check("limit_after_s", VoiceCoilHeatResult::limitAfterS)
            .rows(row -> !row.text("limit_after_s").isEmpty())
            .withinRelative(1e-5));
  }

  private static OutsideCheck check(String column, ToDoubleFunction<VoiceCoilHeatResult> value) {
    return OutsideCheck.of("voice-coil-heat", column, "scipy-voice-coil-heat.csv")
        .printed(column)
        .computed(row -> value.applyAsDouble(answer(row).result()))
        .withinRelative(1e-7);
  }

  private static Answer<VoiceCoilHeatResult> answer(Row row) {
    return Answers.of(
        CALCULATION,
        new VoiceCoilHeatRequest(
            row.number("re_ohm"),
            row.number("re_temperature_c"),
            row.text("conductor").equals("copper") ? Conductor.COPPER : Conductor.ALUMINIUM,
            row.number("temperature_c"),
            null,
            new Heating(
                row.number("mean_power_w"),
                row.text("held").equals("power") ? Held.POWER : Held.VOLTAGE,
                row.number("coil_magnet_k_per_w"),
                row.number("magnet_air_k_per_w"),
                row.number("coil_s"),
                row.number("magnet_s"),
                row.number("duration_s")),
            row.number("largest_coil_c")));
  }

  private static Answer<VoiceCoilHeatResult> measured(double hotOhm, Conductor conductor) {
    return Answers.of(
        CALCULATION, new VoiceCoilHeatRequest(4.0, null, conductor, null, hotOhm, null, null));
  }

  private static Answer<VoiceCoilHeatResult> heated(
      double watts, Held held, Double seconds, Double limitC) {
    Heating heating = new Heating(watts, held, 1.6, 1.1, 12.0, 1500.0, seconds);
    return Answers.of(
        CALCULATION, new VoiceCoilHeatRequest(3.4, null, null, null, null, heating, limitC));
  }

  @Test
  void theHandExampleOfTheMethodPage() {
    VoiceCoilHeatResult measured = measured(5.0, Conductor.COPPER).result();
    assertEquals(83.625, measured.coilC(), 1e-9);
    assertEquals(63.625, measured.riseK(), 1e-9);
    assertEquals(1.938, measured.compressionDb(), 5e-4);
    VoiceCoilHeatResult end = heated(60, Held.VOLTAGE, null, null).result();
    assertEquals(132.38, end.coilC(), 5e-3);
    assertEquals(41.62, end.powerW(), 5e-3);
    assertEquals(65.78, end.magnetC(), 5e-3);
    assertEquals(3.177, end.compressionDb(), 5e-4);
  }

  /** Resistivities of the pure metals at 293 and 400 K, 10⁻⁸ Ω·m, of the CRC handbook, from memory. */
  @ParameterizedTest
  @CsvSource({"COPPER, 1.678, 2.402, 3", "ALUMINIUM, 2.650, 3.87, 6"})
  void pureMetalsOfAHandbookAreAsWarmWithinAFewPercentOfTheirRise(
      Conductor conductor, double cold, double hot, double percent) {
    double rise = measured(4.0 * hot / cold, conductor).result().riseK();
    assertEquals(400 - 293.15, rise, percent / 100 * (400 - 293.15));
  }

  @Test
  void aMeasuredResistanceOfItsOwnAnswerGivesTheSameTemperature() {
    VoiceCoilHeatResult heated = heated(40, Held.VOLTAGE, 300.0, null).result();
    var back = new VoiceCoilHeatRequest(3.4, null, null, null, heated.hotOhm(), null, null);
    VoiceCoilHeatResult measured = Answers.of(CALCULATION, back).result();
    assertEquals(heated.coilC(), measured.coilC(), 1e-9);
    assertNull(measured.magnetC());
    assertNull(measured.balance());
  }

  @Test
  void aLongTimeEndsInTheBalanceOfTheQuadraticWithoutAnythingLeftToSay() {
    for (Held held : Held.values()) {
      Answer<VoiceCoilHeatResult> late = heated(30, held, 86_400.0, null);
      assertEquals(late.result().balance().coilC(), late.result().coilC(), 1e-6);
      assertEquals(late.result().balance().magnetC(), late.result().magnetC(), 1e-6);
      assertEquals(List.of(), Answers.codes(late));
    }
  }

  @Test
  void theLimitIsReachedWhenTheClockSaysSo() {
    for (Held held : Held.values()) {
      double seconds = heated(60, held, null, 100.0).result().limitAfterS();
      assertEquals(100, heated(60, held, seconds, null).result().coilC(), 1e-6);
    }
  }

  @Test
  void aLimitIsJudgedNowOrAnnounced() {
    assertEquals(
        List.of("coil-above-limit", "coil-compresses"),
        Answers.codes(heated(60, Held.VOLTAGE, null, 120.0)));
    assertEquals(
        List.of("coil-reaches-limit-later", "coil-still-warming"),
        Answers.codes(heated(60, Held.VOLTAGE, 10.0, 120.0)));
    assertNull(heated(60, Held.VOLTAGE, null, 140.0).result().limitAfterS());
  }

  @Test
  void theStiffestDriversAllowedAreAnsweredBeforeTheDeadline() {
    Heating stiff = new Heating(10.0, Held.VOLTAGE, 0.2, 30.0, 0.3, 60.0, 86_400.0);
    Heating slow = new Heating(2.0, Held.VOLTAGE, 30.0, 30.0, 0.3, 50_000.0, 86_400.0);
    for (Heating heating : List.of(stiff, slow)) {
      VoiceCoilHeatResult result =
          Answers.of(
                  CALCULATION,
                  new VoiceCoilHeatRequest(4.0, null, null, null, null, heating, 100.0))
              .result();
      assertTrue(result.limitAfterS() > 0);
    }
  }
}
