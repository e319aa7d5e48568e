package org.footwell.electrical.load;

import static org.footwell.electrical.load.Requests.coil;
import static org.footwell.electrical.load.Requests.inBand;
import static org.footwell.electrical.load.Requests.network;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Fault;
import org.footwell.parts.VoiceCoil;
import org.footwell.parts.VoiceCoilBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WiringLoadRefusalsTest {

  private static List<Fault> faults(WiringLoadRequest request) {
    return Answers.faults(new WiringLoad(), request);
  }

  private static Fault only(WiringLoadRequest request) {
    List<Fault> faults = faults(request);
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0);
  }

  private static List<String> codes(WiringLoadRequest request) {
    return faults(request).stream().map(Fault::code).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '"',
      value = {
        "4+; 3; the end; an impedance, the name of a coil or (",
        "+4; 1; +; an impedance, the name of a coil or (",
        "4++4; 3; +; an impedance, the name of a coil or (",
        "4+||4; 3; |; an impedance, the name of a coil or (",
        "4&&4; 2; &; + or || or the end",
        "4ohm; 2; o; + or || or the end",
        "4.5.6; 4; .; + or || or the end",
        "4,5; 2; ,; + or || or the end (decimals take a point)",
        "4+-4; 3; -; an impedance, the name of a coil or (",
        "4e3; 2; e; + or || or the end",
        "4+4); 4; ); + or || or the end",
        "(4+4; 5; the end; + or ||, or ) for the ( at character 1",
        "4||((4+4)||2; 13; the end; + or ||, or ) for the ( at character 4",
        "(); 2; ); an impedance, the name of a coil or (",
        "(4)(4); 4; (; + or || or the end",
        "\" \"; 2; the end; an impedance, the name of a coil or (",
        "4+4Ω; 4; Ω; + or || or the end",
        "4+{given}; 3; {; an impedance, the name of a coil or (",
        "4%; 2; %; + or || or the end",
        "\"4+\u0000\"; 3; an unprintable character; an impedance, the name of a coil or (",
        "4+\ud83d\ude97; 3; \ud83d\ude97; an impedance, the name of a coil or (",
        "4+\ud83d; 3; an unprintable character; an impedance, the name of a coil or (",
      })
  void syntaxErrorsPointToTheCharacter(String text, String at, String found, String expected) {
    Fault fault = only(network(text));
    assertEquals("network-syntax", fault.code());
    assertEquals("/network", fault.pointer());
    assertEquals(at, fault.given());
    assertEquals(expected, fault.allowed());
    assertEquals(
        "At character "
            + at
            + " of the network there is "
            + found
            + " where "
            + expected
            + " was expected.",
        fault.detail());
  }

  @ParameterizedTest
  @CsvSource({"4 4, 2", "(4 4)||8, 3", "'(4+4)  (4+4)', 6", "a b, 2", "4 ohm, 2", "'4\u00a04', 2"})
  void spaceIsNeverTakenForSeries(String text, String at) {
    Fault fault = only(network(text));
    assertEquals("network-operator-missing", fault.code());
    assertEquals(
        "At character "
            + at
            + " of the network only a space stands between two parts: write + for"
            + " series or || for parallel, and names and numbers without spaces or units. In a URL"
            + " a bare + arrives as a space; write it as %2B.",
        fault.detail());
  }

  @ParameterizedTest
  @CsvSource({"4|4, 2", "4 | 4, 3", "|4, 1", "4|||4, 4", "(4|, 3"})
  void singleBarSaysHowParallelIsWritten(String text, String at) {
    Fault fault = only(network(text));
    assertEquals("network-single-bar", fault.code());
    assertEquals(
        "At character "
            + at
            + " of the network there is a single |; parallel is written ||, in a"
            + " URL %7C%7C.",
        fault.detail());
  }

  @ParameterizedTest
  @CsvSource({"4%7C%7C4, 2, %7C", "4%2b4, 2, %2b", "%284+4), 1, %28"})
  void textEncodedTwiceIsRecognised(String text, String at, String found) {
    Fault fault = only(network(text));
    assertEquals("network-encoded", fault.code());
    assertEquals(
        "At character "
            + at
            + " of the network there is "
            + found
            + ", a sign still encoded:"
            + " encode the text for a URL once and not twice, and in JSON not at all.",
        fault.detail());
  }

  @Test
  void thirtyTwoCoilsAreWorkedOutAndOneMoreIsRefused() {
    String most = String.join("+", Collections.nCopies(32, "4"));
    assertEquals(128, Answers.of(new WiringLoad(), network(most)).result().loadOhm(), 1e-9);
    Fault fault = only(network(most + "+4"));
    assertEquals("network-too-large", fault.code());
    assertEquals(
        "With the part at character 65 the network has more coils than can be worked out: at most"
            + " 32 are allowed.",
        fault.detail());
  }

  @Test
  void sixtyFourParenthesesAreReadAndOneMoreIsRefused() {
    String deep = "(".repeat(64) + "4" + ")".repeat(64);
    assertEquals(4, Answers.of(new WiringLoad(), network(deep)).result().loadOhm());
    Fault fault = only(network("(" + deep + ")"));
    assertEquals("network-too-deep", fault.code());
    assertEquals(
        "At character 65 the parentheses of the network are nested too deep: at most 64 within"
            + " each other are allowed.",
        fault.detail());
    assertEquals(List.of("network-too-deep"), codes(network("(".repeat(2000))));
  }

  @ParameterizedTest
  @ValueSource(strings = {"(", "4", "4+", "a", "%7C", " ", ")", "\ud83d\ude97"})
  void megabyteOfAnythingIsRefusedBeforeItIsRead(String part) {
    Fault fault = only(network(part.repeat(1_000_000 / part.length())));
    assertEquals("not-allowed", fault.code());
    assertEquals("network must be a text of 1 to 2000 characters.", fault.detail());
    assertTrue(fault.given().length() < 100, fault::given);
  }

  @Test
  void tenThousandCoilsAreRefused() {
    assertEquals(
        List.of("not-allowed"), codes(network(String.join("+", Collections.nCopies(10_000, "4")))));
    VoiceCoil[] coils = Collections.nCopies(10_000, coil("a", 4)).toArray(new VoiceCoil[0]);
    Fault fault = only(network("a", coils));
    assertEquals("/coils", fault.pointer());
    assertEquals("coils must be a list of 0 to 32 entries.", fault.detail());
  }

  @Test
  void impedancesOutOfRangeAreAllRefused() {
    List<Fault> faults = faults(network("0+4+1001+" + "9".repeat(400)));
    assertEquals(3, faults.size());
    assertEquals(
        "The coil of 0 ohm at character 1 of the network is out of range: a coil has"
            + " from 0.1 to 1000 ohm.",
        faults.get(0).detail());
    assertEquals("1001", faults.get(1).given());
    assertTrue(faults.get(2).given().endsWith("…"), faults.get(2)::given);
  }

  @Test
  void unknownNameIsRefusedWithTheNearest() {
    Fault near = only(network("sub_a+sub_bb", coil("sub_a", 4), coil("sub_b", 4)));
    assertEquals("unknown-coil", near.code());
    assertEquals("one of sub_a, sub_b", near.allowed());
    assertEquals(
        "sub_bb at character 7 of the network is not the name of any of the coils. Did you mean"
            + " sub_b?",
        near.detail());
    assertEquals(
        "tweeter at character 1 of the network is not the name of any of the coils.",
        only(network("tweeter")).detail());
  }

  @Test
  void coilUsedTwiceOrListedTwiceIsRefused() {
    Fault twice = only(network("a||a", coil("a", 4)));
    assertEquals("duplicate", twice.code());
    assertEquals("/network", twice.pointer());
    assertEquals("a is used more than once.", twice.detail());
    Fault listed = only(network("a", coil("a", 4), coil("a", 8)));
    assertEquals("/coils/1/name", listed.pointer());
  }

  @Test
  void everyFaultIsToldAtOnce() {
    assertEquals(
        List.of("unknown-coil", "coil-out-of-range", "duplicate"),
        codes(network("b+0+a+a", coil("a", 4))));
    // Coils of one list that are called alike are told with what form and bounds say.
    assertEquals(
        List.of("required", "duplicate"),
        codes(
            network(
                "a", coil("a", 4), coil("a", 8), VoiceCoilBuilder.builder().name("b").build())));
    // What several alike are called may clash with a name that stands in the list.
    VoiceCoil pair = VoiceCoilBuilder.builder().name("a").ratedOhm(4.0).coilCount(2).build();
    Fault made = only(network("a_1+a_2", pair, coil("a_2", 8)));
    assertEquals("/coils/1/name", made.pointer());
  }

  @Test
  void coilsWithoutABandAreRefusedWhenOthersHaveOne() {
    List<Fault> faults =
        faults(network("w||t||4||x", inBand("low", "w", 4), coil("t", 4), inBand("high", "x", 4)));
    assertEquals(2, faults.size());
    assertEquals("/coils/1/band", faults.get(0).pointer());
    assertEquals(
        "t has no band while other coils of the network have one: give the band of every coil, by"
            + " name in the list of coils, or of none.",
        faults.get(0).detail());
    assertEquals("/network", faults.get(1).pointer());
    assertEquals("coil 3", faults.get(1).given());
  }

  @Test
  void coilOfAnotherBandInSeriesIsRefused() {
    List<Fault> faults = faults(network("w+t", inBand("low", "w", 4), inBand("high", "t", 4)));
    assertEquals(2, faults.size());
    assertEquals("band-split-in-series", faults.get(0).code());
    assertEquals(
        "In the band high the way through w is open and interrupts what is in series with it:"
            + " coils can only be in series with coils of the same band, or whole speakers with"
            + " whole speakers of the same bands.",
        faults.get(0).detail());
    assertEquals(
        List.of("band-split-in-series"),
        codes(
            network(
                "(w||t)+x", inBand("low", "w", 4), inBand("high", "t", 4), inBand("low", "x", 4))));
  }

  @Test
  void namesAreHeldToTheirForm() {
    assertEquals(List.of("not-allowed"), codes(network("4", Requests.coil("4a", 4))));
    assertEquals(List.of("not-allowed"), codes(network("a", Requests.inBand("Low", "a", 4))));
    assertEquals(List.of("required"), codes(network(null)));
  }
}
