package org.footwell.electrical.load;

import static org.footwell.electrical.load.Requests.answer;
import static org.footwell.electrical.load.Requests.coil;
import static org.footwell.electrical.load.Requests.inBand;
import static org.footwell.electrical.load.Requests.network;
import static org.footwell.electrical.load.Requests.ofDriver;
import static org.footwell.electrical.load.Requests.result;
import static org.footwell.electrical.load.Requests.sentence;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Card;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Shape;
import org.footwell.calculation.Verdict;
import org.footwell.electrical.load.WiringLoadResult.BandLoad;
import org.footwell.electrical.load.WiringLoadResult.CoilShare;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.VoiceCoil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WiringLoadTest {

  private static final double TINY = 1e-12;

  private static double[] powers(WiringLoadResult result) {
    return result.coils().stream().mapToDouble(CoilShare::powerShare).toArray();
  }

  private static double[] voltages(WiringLoadResult result) {
    return result.coils().stream().mapToDouble(CoilShare::voltageShare).toArray();
  }

  /** The numbers of the worked example in docs/method/wiring-load.md, worked by hand. */
  @Test
  void workedExample() {
    WiringLoadRequest request =
        new WiringLoadRequest(
            "(left_a+left_b)||(right_a+right_b)",
            List.of(
                new VoiceCoil("left_a", 4.0, 3.4, null, "left", null),
                new VoiceCoil("left_b", 4.0, 3.4, null, "left", null),
                new VoiceCoil("right_a", 4.0, 3.4, null, "right", null),
                new VoiceCoil("right_b", 4.0, 3.4, null, "right", null)),
            AmplifierBuilder.builder()
                .minimumOhm(2.0)
                .minimumBridgedOhm(4.0)
                .outputOhm(0.01)
                .build(),
            true,
            Requests.cable(3, 4, null),
            40.0);
    Answer<WiringLoadResult> answer = answer(request);
    WiringLoadResult result = answer.result();
    assertEquals(4, result.loadOhm(), TINY);
    assertEquals(3.2, result.lowestModulusOhm(), TINY);
    assertEquals(3.4, result.meterReadingOhm(), TINY);
    assertEquals(0.0297, result.cableOhm(), TINY); // 2·3 m·4.95 ohm/km
    assertEquals(3.4297, result.meterReadingWithCableOhm(), TINY);
    assertEquals(4.0297, result.loadWithCableOhm(), TINY);
    assertEquals(0.06425, result.cableLossDb(), 0.00001); // 20·lg(4.0297/4)
    assertEquals(80.48, result.dampingFactor(), 0.005); // 4/0.0497
    assertEquals(12.385, result.currentAtLowestModulusA(), 0.0005); // 40/3.2297
    assertEquals(17.515, result.peakCurrentA(), 0.0005);
    assertEquals(2, result.halfLoadOhm(), TINY);
    assertTrue(result.evenSharing());
    for (CoilShare coil : result.coils()) {
      assertEquals(0.25, coil.powerShare(), TINY);
      assertEquals(0.5, coil.voltageShare(), TINY);
    }
    assertEquals(List.of("lowest-modulus", "current-to-expect"), Answers.codes(answer));
    assertEquals(Verdict.NOTE, answer.verdict());
    assertEquals(
        "At 40 V the network may draw 12.39 A RMS, 17.52 A peak, where its impedance is lowest.",
        sentence(answer, "current-to-expect"));
    assertEquals(
        "A rated load of 4 ohm may fall to 3.2 ohm at some frequencies (80 %, IEC 60268-5). The"
            + " amplifier's minimum of 4 ohm is meant for rated loads, so this is as it should be;"
            + " only the current gets higher there.",
        sentence(answer, "lowest-modulus"));
  }

  @ParameterizedTest
  @CsvSource({
    "4, 4",
    "4+4, 8",
    "4||4, 2",
    "(4+4)||(4+4), 4",
    "4+4||4, 6", // parallel binds tighter
    "(4+4)||4, 2.6666666666666667",
    "4||4||4||4, 1",
    "' ( 4 + 4 )\t||\n( .5 + 7.5 ) ', 4",
    "((((8)))) || 8, 4",
    "0.1||1000, 0.09999000099990001",
  })
  void loadsByHand(String network, double ohm) {
    assertEquals(ohm, result(network(network)).loadOhm(), TINY);
  }

  @Test
  void namesAndImpedancesMayBeMixedAndCoilsWithoutNameGoByTheirPlace() {
    WiringLoadResult result = result(network("8||mid.l-1+2", coil("mid.l-1", 8)));
    assertEquals(6, result.loadOhm(), TINY);
    assertEquals(
        List.of("coil 1", "mid.l-1", "coil 3"),
        result.coils().stream().map(CoilShare::name).toList());
  }

  @Test
  void unevenSharingSaysWhoTakesWhat() {
    // 4 + 8 in series: power as the impedances, voltage too.
    Answer<WiringLoadResult> series = answer(network("4+8"));
    assertEquals(1.0 / 3, powers(series.result())[0], TINY);
    assertEquals(1.0 / 3, voltages(series.result())[0], TINY);
    // 4 parallel to (4+4): 2/3 in the single coil, 1/6 in each of the others.
    Answer<WiringLoadResult> mixed = answer(network("4||(4+4)"));
    assertEquals(2.0 / 3, powers(mixed.result())[0], TINY);
    assertEquals(1.0 / 6, powers(mixed.result())[1], TINY);
    assertEquals(1, voltages(mixed.result())[0], TINY);
    assertEquals(0.5, voltages(mixed.result())[2], TINY);
    assertFalse(mixed.result().evenSharing());
    assertEquals(Verdict.WARNING, mixed.verdict());
    assertEquals(
        "The coils do not share the power evenly: coil 1 takes 66.67 % and coil 2 takes"
            + " 16.67 %, where an even share would be 33.33 %. In full: coil 1 66.67 %, coil"
            + " 2 16.67 %, coil 3 16.67 %. Wire coils alike in series or in parallel only, if"
            + " all are to play alike.",
        sentence(mixed, "uneven-sharing"));
  }

  @Test
  void equalPowerInUnlikeNetworksIsEven() {
    // 8 || 8 beside nothing, and 3 coils of 3 ohm in parallel, whose last digits need not agree.
    assertTrue(result(network("8||8")).evenSharing());
    assertTrue(result(network("3||3||3")).evenSharing());
  }

  @Test
  void oneCoilLeftOpenIsAllowedAndSaidToChangeTheDriver() {
    Answer<WiringLoadResult> answer =
        answer(network("sub_a", ofDriver("sub", "sub_a", 4), ofDriver("sub", "sub_b", 4)));
    assertEquals(4, answer.result().loadOhm(), TINY);
    assertEquals(List.of("coil-left-open"), Answers.codes(answer));
    assertEquals("/coils/1", answer.findings().get(0).pointer());
    assertEquals(
        "The coil sub_b of the driver sub is left open, which changes the driver: with 1 of 2"
            + " coils its Qes is about 2 times that with all of them and it is about 3.01 dB less"
            + " sensitive per watt, so a box for all coils no longer fits. Do not short the open"
            + " coil.",
        answer.findings().get(0).inFull());
  }

  @Test
  void driverOfWhichNoCoilIsUsedIsNotConnected() {
    Answer<WiringLoadResult> answer =
        answer(
            network("4", ofDriver("sub", "sub_a", 4), ofDriver("sub", "sub_b", 4), coil("mid", 8)));
    assertEquals(List.of("driver-not-connected", "driver-not-connected"), Answers.codes(answer));
    assertEquals(
        "sub is listed but not connected: the network uses none of its coils. Put its"
            + " coils into the network, or take it off the list.",
        answer.findings().get(0).inFull());
    assertEquals(
        "coil mid is listed but not connected: the network uses none of its coils. Put"
            + " its coils into the network, or take it off the list.",
        answer.findings().get(1).inFull());
  }

  @Test
  void bandsOfAPassiveCrossoverDoNotAddUp() {
    WiringLoadResult result =
        result(
            network(
                "(low_l||low_r)||high",
                inBand("low", "low_l", 4),
                inBand("low", "low_r", 4),
                inBand("high", "high", 6)));
    assertEquals(2, result.loadOhm(), TINY);
    assertEquals(1.6, result.lowestModulusOhm(), TINY);
    assertEquals(List.of(new BandLoad("low", 2), new BandLoad("high", 6)), result.bands());
    assertTrue(result.evenSharing());
    assertEquals(1, powers(result)[2], TINY);
  }

  @Test
  void wholeTwoWaySpeakersMayBeInSeries() {
    WiringLoadResult result =
        result(
            network(
                "(low_l||high_l)+(low_r||high_r)",
                inBand("low", "low_l", 4),
                inBand("high", "high_l", 8),
                inBand("low", "low_r", 4),
                inBand("high", "high_r", 8)));
    assertEquals(List.of(new BandLoad("low", 8), new BandLoad("high", 16)), result.bands());
    assertEquals(
        List.of("low_l", "high_l", "low_r", "high_r"),
        result.coils().stream().map(CoilShare::name).toList());
  }

  @Test
  void workingsShowEveryStepOfTheNetwork() {
    List<String> steps =
        Answers.withWorkings(new WiringLoad(), network("(4+4)||8")).workings().stream()
            .map(step -> step.quantity() + " = " + step.value())
            .toList();
    assertEquals(
        List.of(
            "load_ohm = 8.0",
            "load_ohm = 4.0",
            "power_share = 0.5",
            "share = 0.25",
            "share = 0.5",
            "share = 0.25",
            "share = 0.5",
            "power_share = 0.5",
            "lowest_modulus_ohm = 3.2",
            "coils.0.rated_ohm = 4.0",
            "coils.0.power_share = 0.25",
            "coils.0.voltage_share = 0.5"),
        steps);
  }

  @Test
  void exampleOfTheCardIsAnsweredWithoutAWarning() throws IOException {
    Card<WiringLoadRequest, WiringLoadResult> card = new WiringLoad().card();
    Object given = new ObjectMapper().readValue(card.example(), Object.class);
    WiringLoadRequest request = new Engine().bind(WiringLoadRequest.class, given, false);
    assertEquals(Verdict.NOTE, answer(request).verdict());
    assertEquals(4, result(request).loadOhm(), TINY);
    assertTrue(Shape.of(card.request()).flat());
  }
}
