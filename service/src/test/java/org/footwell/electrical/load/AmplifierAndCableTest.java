package org.footwell.electrical.load;

import static org.footwell.electrical.load.Requests.across;
import static org.footwell.electrical.load.Requests.answer;
import static org.footwell.electrical.load.Requests.bears;
import static org.footwell.electrical.load.Requests.cable;
import static org.footwell.electrical.load.Requests.coil;
import static org.footwell.electrical.load.Requests.measured;
import static org.footwell.electrical.load.Requests.minimum;
import static org.footwell.electrical.load.Requests.network;
import static org.footwell.electrical.load.Requests.on;
import static org.footwell.electrical.load.Requests.result;
import static org.footwell.electrical.load.Requests.sentence;
import static org.footwell.electrical.load.Requests.through;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Finding;
import org.footwell.calculation.Verdict;
import org.footwell.parts.Amplifier;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.Cable;
import org.footwell.parts.CableBuilder;
import org.footwell.parts.ConductorMaterial;
import org.footwell.parts.VoiceCoil;
import org.junit.jupiter.api.Test;

class AmplifierAndCableTest {

  private static final double TINY = 1e-12;

  @Test
  void ratedLoadBelowTheMinimumStops() {
    Answer<WiringLoadResult> answer = answer(on(minimum(2), "4||4||4"));
    assertEquals(Verdict.STOP, answer.verdict());
    assertEquals(List.of("load-below-minimum"), Answers.codes(answer));
    Finding finding = answer.findings().get(0);
    assertEquals("/amplifier/minimum_ohm", finding.pointer());
    assertEquals(4.0 / 3, finding.value(), TINY);
    assertEquals(2, finding.limit());
    assertEquals(
        "The rated load of 1.333 ohm is too low: connected like this the amplifier"
            + " allows no less than 2 ohm. It may overheat, shut down or fail. Wire the coils"
            + " for a higher load, or take another amplifier.",
        finding.inFull());
  }

  @Test
  void ratedLoadAtTheMinimumIsAllowedDownToTheLastDigit() {
    // Seven coils of 7 ohm are 1 ohm, whatever the rounding of six parallel connections.
    Answer<WiringLoadResult> answer = answer(on(minimum(1), "7||7||7||7||7||7||7"));
    assertEquals(Verdict.NOTE, answer.verdict());
    assertEquals(List.of("lowest-modulus"), Answers.codes(answer));
    assertEquals(Verdict.OK, answer(on(minimum(1), "4||4||4")).verdict());
  }

  @Test
  void bridgedLoadIsHeldAgainstTheBridgedMinimumOrItsHalfAgainstTheChannels() {
    assertEquals(Verdict.STOP, answer(across(bears(2.0, 4.0), "4||8")).verdict());
    Amplifier halves = minimum(2);
    Answer<WiringLoadResult> low = answer(across(halves, "2"));
    assertEquals(Verdict.STOP, low.verdict());
    assertEquals(4, low.findings().get(0).limit());
    assertEquals(1, low.result().halfLoadOhm(), TINY);
    assertEquals(Verdict.OK, answer(across(halves, "8")).verdict());
    assertNull(result(on(minimum(2), "4")).halfLoadOhm());
  }

  @Test
  void bridgedMinimumBelowTwiceTheChannelsIsDoubted() {
    Answer<WiringLoadResult> answer = answer(across(bears(4.0, 4.0), "8"));
    assertEquals(List.of("bridged-minimum-doubtful"), Answers.codes(answer));
    assertEquals(
        "The minimum bridged load is given as 4 ohm, but each half of the bridge would then see"
            + " less than its own minimum; twice that is 8 ohm. Check both figures in the"
            + " amplifier's documents.",
        answer.findings().get(0).inFull());
  }

  @Test
  void thinCableCostsLevelAndDamping() {
    // 10 m of 0.75 mm²: 20 m·26 ohm/km = 0.52 ohm; 20·lg(2.52/2) = 2.007 dB; 2/0.52 = 3.846
    Answer<WiringLoadResult> answer = answer(through(cable(10.0, 0.75, null), "4||4"));
    assertEquals(0.52, answer.result().cableOhm(), TINY);
    assertEquals(2.0074, answer.result().cableLossDb(), 0.0001);
    assertEquals(3.8462, answer.result().dampingFactor(), 0.0001);
    assertEquals(List.of("cable-loss-high", "damping-factor-low"), Answers.codes(answer));
    assertEquals(
        "The cable costs 2.007 dB, more than 0.5 dB. Take a thicker or shorter one.",
        sentence(answer, "cable-loss-high"));
    assertEquals(
        "The damping factor is 3.846; below about 10 the response near the driver's resonance"
            + " starts to change.",
        sentence(answer, "damping-factor-low"));
  }

  @Test
  void warmCableHasMoreResistance() {
    // 80 K above 20 °C: 1 + 0.00393·80 = 1.3144
    double cold = result(through(cable(5.0, 2.5, null), "4")).cableOhm();
    double warm = result(through(cable(5.0, 2.5, 100.0), "4")).cableOhm();
    assertEquals(0.0798, cold, TINY);
    assertEquals(0.0798 * 1.3144, warm, TINY);
  }

  @Test
  void copperCladAluminiumHasMoreResistance() {
    // A tenth of copper by volume: 0.0798 ohm over 0.1 + 0.9*0.588
    Cable clad =
        CableBuilder.builder()
            .oneWayM(5.0)
            .areaMm2(2.5)
            .material(ConductorMaterial.COPPER_CLAD_ALUMINIUM)
            .build();
    assertEquals(0.0798 / 0.629, result(through(clad, "4")).cableOhm(), TINY);
    Cable wrong = CableBuilder.builder(clad).conductivity(1.0).build();
    List<Fault> faults = Answers.faults(new WiringLoad(), through(wrong, "4"));
    assertEquals(
        List.of("conductivity-not-of-material"), faults.stream().map(Fault::code).toList());
    assertEquals("/cable/conductivity", faults.get(0).pointer());
  }

  @Test
  void theHalvesOfABridgeHaveTwiceTheOutputImpedanceOfOne() {
    assertEquals(100, result(across(source(0.02), "4")).dampingFactor(), 1e-9);
  }

  @Test
  void sizeThatIsNoneOfTheTableIsNoted() {
    Answer<WiringLoadResult> answer = answer(through(cable(1.0, 2.0, null), "4"));
    assertEquals(List.of("cable-size-not-standard"), Answers.codes(answer));
    assertEquals(
        "2 mm² is not a size of IEC 60228 class 5; the resistance was taken from the line through"
            + " the nearest sizes.",
        answer.findings().get(0).inFull());
  }

  @Test
  void dampingFactorNeedsSomethingThatDrives() {
    assertNull(result(network("4")).dampingFactor());
    assertNull(result(on(source(0), "4")).dampingFactor());
    assertEquals(200, result(on(source(0.02), "4")).dampingFactor(), 1e-9);
  }

  private static Amplifier source(double outputOhm) {
    return AmplifierBuilder.builder().outputOhm(outputOhm).build();
  }

  @Test
  void meterReadingNeedsEveryResistance() {
    assertEquals(
        7,
        result(network("a+b", measured("a", 4, 3.4), measured("b", 4, 3.6))).meterReadingOhm(),
        TINY);
    assertNull(result(network("4+4")).meterReadingOhm());
    Answer<WiringLoadResult> answer = answer(network("a+b+4", measured("a", 4, 3.4), coil("b", 4)));
    assertNull(answer.result().meterReadingOhm());
    assertEquals(
        "What a multimeter should show cannot be said: the DC resistance is not given for b,"
            + " coil 3.",
        sentence(answer, "meter-reading-unknown"));
  }

  @Test
  void meterReadingIsNotGivenForAPassiveSplit() {
    Answer<WiringLoadResult> answer =
        answer(
            network(
                "w||t",
                new VoiceCoil("w", 4.0, 3.4, null, null, "low"),
                new VoiceCoil("t", 4.0, 3.4, null, null, "high")));
    assertNull(answer.result().meterReadingOhm());
    assertEquals(List.of("meter-reading-split"), Answers.codes(answer));
  }

  @Test
  void resistanceThatCannotBelongToTheCoilIsDoubted() {
    Answer<WiringLoadResult> answer = answer(network("a", measured("a", 4, 6.8)));
    assertEquals(
        "The DC resistance of a is 1.7 times its rated impedance; 0.6 to 1.1 times is usual. Check"
            + " that both figures are for this one coil.",
        sentence(answer, "re-unlike-rated"));
    assertEquals(Verdict.OK, answer(network("a", measured("a", 4, 3.2))).verdict());
  }
}
