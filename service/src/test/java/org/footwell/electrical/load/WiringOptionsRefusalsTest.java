package org.footwell.electrical.load;

import static org.footwell.electrical.load.Options.answer;
import static org.footwell.electrical.load.Options.coils;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Fault;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.Rails;
import org.footwell.parts.Ratings;
import org.footwell.parts.VoiceCoil;
import org.junit.jupiter.api.Test;

class WiringOptionsRefusalsTest {

  private static final List<VoiceCoil> TWO = List.of(coils(null, 4, 2));

  private static List<Fault> faults(WiringOptionsRequest request) {
    return Answers.faults(new WiringOptions(), request);
  }

  private static Fault onlyFault(WiringOptionsRequest request) {
    List<Fault> faults = faults(request);
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0);
  }

  private static Fault onlyFault(VoiceCoil... coils) {
    return onlyFault(Options.of(0.1, null, null, coils));
  }

  private static WiringOptionsRequest with(boolean bridged, AmplifierBuilder amplifier) {
    return WiringOptionsRequestBuilder.builder()
        .coils(TWO)
        .bridged(bridged)
        .amplifier(amplifier.minimumOhm(0.1).build())
        .build();
  }

  @Test
  void eightAlikeAreAnsweredAndNineAreNot() {
    assertEquals(
        522, answer(Options.of(0.1, null, null, coils(null, 4, 8))).result().networkCount());
    Fault fault = onlyFault(coils(null, 4, 5), coils("sub", 4, 4));
    assertEquals("too-many-coils", fault.code());
    assertEquals("/coils", fault.pointer());
    assertEquals("9 coils of one impedance", fault.given());
    assertEquals("at most 8 of one rated impedance, or 6 in all when they differ", fault.allowed());
    assertEquals(
        "9 coils of one impedance are too many to list every network of them; allowed are at most 8"
            + " of one rated impedance, or 6 in all when they differ. 8 of one impedance make 522"
            + " networks, 6 that differ 5504; 9 and 7 would make 1532 and 78416, more than anyone"
            + " could choose from. Wire some of them together first and enter each such group as"
            + " one coil.",
        fault.detail());
  }

  @Test
  void sixThatDifferAreAnsweredAndSevenAreNot() {
    assertEquals(
        5504,
        answer(Options.of(List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0), 0.1)).result().networkCount());
    assertEquals(
        "7 coils of different impedances", onlyFault(coils(null, 4, 6), coils(null, 8, 1)).given());
  }

  @Test
  void namesAreUsedOnceEvenThoseMadeOfANumber() {
    Fault twice = onlyFault(coils("sub", 4, 1), coils("sub", 8, 1));
    assertEquals("duplicate", twice.code());
    assertEquals("/coils/1/name", twice.pointer());
    Fault made = onlyFault(coils("sub", 4, 2), coils("sub_2", 8, 1));
    assertEquals("/coils/1/name", made.pointer());
    assertEquals("sub_2", made.given());
  }

  @Test
  void aWindowThatEndsBelowItsBeginningIsEmpty() {
    Fault fault = onlyFault(Options.of(4, 2.0, null, coils(null, 4, 2)));
    assertEquals("window-empty", fault.code());
    assertEquals("/maximum_ohm", fault.pointer());
    assertEquals(
        "No load is in the window: the largest wanted, 2.0 ohm, must be at least 4 ohm, the"
            + " smallest the amplifier allows as connected.",
        fault.detail());
    WiringOptionsRequest bridged =
        WiringOptionsRequestBuilder.builder()
            .coils(TWO)
            .amplifier(Options.from(2))
            .maximumOhm(3.0)
            .bridged(true)
            .build();
    assertEquals("at least 4 ohm", onlyFault(bridged).allowed());
  }

  @Test
  void theSmallestLoadIsForTheCallerToSay() {
    for (Boolean bridged : List.of(false, true)) {
      WiringOptionsRequest request =
          WiringOptionsRequestBuilder.builder()
              .coils(TWO)
              .amplifier(Options.RATED)
              .maximumOhm(8.0)
              .bridged(bridged)
              .build();
      assertEquals("required", onlyFault(request).code());
      assertEquals("/amplifier/minimum_ohm", onlyFault(request).pointer());
    }
    WiringOptionsRequest single =
        WiringOptionsRequestBuilder.builder()
            .coils(TWO)
            .amplifier(Requests.bears(null, 4.0))
            .bridged(false)
            .build();
    assertEquals("/amplifier/minimum_ohm", onlyFault(single).pointer());
    WiringOptionsRequest ofBridge =
        WiringOptionsRequestBuilder.builder()
            .coils(TWO)
            .amplifier(Requests.bears(null, 4.0))
            .bridged(true)
            .build();
    assertEquals(4, answer(ofBridge).result().smallestLoadOhm(), 0);
  }

  private static AmplifierBuilder onRails(Rails rails) {
    return AmplifierBuilder.builder().rails(rails);
  }

  @Test
  void anAmplifierIsDescribedInOneWay() {
    AmplifierBuilder both =
        AmplifierBuilder.builder(Options.RATED).rails(Options.onRails(30, null).rails());
    Fault fault = onlyFault(with(false, both));
    assertEquals("at-most-one-of", fault.code());
    assertEquals("/amplifier/ratings", fault.pointer());
  }

  @Test
  void anAmplifierThatCannotBeIsRefusedWhereItStands() {
    AmplifierBuilder allDrop = onRails(new Rails(20.0, 14.4, null, 20.0, null, null));
    assertEquals("/amplifier/rails/rail_v", onlyFault(with(false, allDrop)).pointer());
    AmplifierBuilder oneLoad =
        AmplifierBuilder.builder(
            Options.rated(new Ratings.Point(4.0, 100.0), new Ratings.Point(4.0, 100.0)));
    assertEquals("/amplifier/ratings/points", onlyFault(with(false, oneLoad)).pointer());
    AmplifierBuilder single =
        onRails(new Rails(14.4, 14.4, Rails.Kind.SINGLE_SUPPLY_BRIDGE, 2.0, null, null));
    Fault bridgeOfBridges = onlyFault(with(true, single));
    assertEquals("bridge-of-bridges", bridgeOfBridges.code());
    assertEquals("/bridged", bridgeOfBridges.pointer());
  }

  @Test
  void allThatIsWrongIsSaidAtOnce() {
    WiringOptionsRequest request =
        new WiringOptionsRequest(
            List.of(coils("sub", 4, 9), coils("sub_1", 4, 1)),
            AmplifierBuilder.builder(
                    Options.rated(new Ratings.Point(4.0, 100.0), new Ratings.Point(4.0, 100.0)))
                .minimumOhm(4.0)
                .build(),
            false,
            2.0,
            null);
    assertEquals(
        List.of("duplicate", "too-many-coils", "window-empty", "loads-without-spread"),
        faults(request).stream().map(Fault::code).toList());
  }

  @Test
  void everyNumberOutOfItsBoundsIsNamed() {
    WiringOptionsRequest request =
        WiringOptionsRequestBuilder.builder()
            .coils(List.of(coils("2nd", 0.01, 0)))
            .amplifier(Requests.bears(0.0, -1.0))
            .maximumOhm(1e6)
            .listCount(0)
            .build();
    List<String> pointers = faults(request).stream().map(Fault::pointer).sorted().toList();
    assertEquals(
        List.of(
            "/amplifier/minimum_bridged_ohm",
            "/amplifier/minimum_ohm",
            "/coils/0/coil_count",
            "/coils/0/name",
            "/coils/0/rated_ohm",
            "/list_count",
            "/maximum_ohm"),
        pointers);
    List<String> missing =
        faults(WiringOptionsRequestBuilder.builder().build()).stream()
            .map(Fault::pointer)
            .sorted()
            .toList();
    assertEquals(List.of("/amplifier", "/coils"), missing);
    assertTrue(
        faults(WiringOptionsRequestBuilder.builder().coils(List.of()).build()).stream()
            .anyMatch(fault -> fault.pointer().equals("/coils")));
  }
}
