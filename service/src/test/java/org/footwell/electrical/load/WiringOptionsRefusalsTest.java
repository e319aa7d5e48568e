package org.footwell.electrical.load;

import static org.footwell.electrical.load.Options.answer;
import static org.footwell.electrical.load.Options.coils;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Fault;
import org.footwell.electrical.amplifier.DescribedAmplifier;
import org.footwell.electrical.amplifier.Rails;
import org.footwell.electrical.amplifier.Ratings;
import org.footwell.electrical.load.WiringOptionsRequest.Coils;
import org.footwell.electrical.load.WiringOptionsRequest.Window;
import org.junit.jupiter.api.Test;

class WiringOptionsRefusalsTest {

  private static final Window ANY = Options.from(0.1);
  private static final List<Coils> TWO = List.of(coils(null, 4, 2));

  private static List<Fault> faults(WiringOptionsRequest request) {
    return Answers.faults(new WiringOptions(), request);
  }

  private static Fault onlyFault(WiringOptionsRequest request) {
    List<Fault> faults = faults(request);
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0);
  }

  private static Fault onlyFault(Coils... coils) {
    return onlyFault(Options.of(0.1, null, null, coils));
  }

  private static WiringOptionsRequest with(boolean bridged, DescribedAmplifier amplifier) {
    return WiringOptionsRequestBuilder.builder()
        .coils(TWO)
        .window(ANY)
        .bridged(bridged)
        .amplifier(amplifier)
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
    assertEquals("/window/maximum_ohm", fault.pointer());
    assertEquals(
        "No load is in the window: the largest wanted, 2.0 ohm, must be at least 4 ohm, the"
            + " smallest the amplifier allows as connected.",
        fault.detail());
    WiringOptionsRequest bridged =
        WiringOptionsRequestBuilder.builder()
            .coils(TWO)
            .window(new Window(2.0, null, 3.0))
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
              .window(new Window(null, null, 8.0))
              .bridged(bridged)
              .build();
      assertEquals("required", onlyFault(request).code());
      assertEquals("/window/minimum_ohm", onlyFault(request).pointer());
    }
    WiringOptionsRequest single =
        WiringOptionsRequestBuilder.builder()
            .coils(TWO)
            .window(new Window(null, 4.0, null))
            .bridged(false)
            .build();
    assertEquals("/window/minimum_ohm", onlyFault(single).pointer());
    WiringOptionsRequest ofBridge =
        WiringOptionsRequestBuilder.builder()
            .coils(TWO)
            .window(new Window(null, 4.0, null))
            .bridged(true)
            .build();
    assertEquals(4, answer(ofBridge).result().smallestLoadOhm(), 0);
  }

  @Test
  void anAmplifierIsDescribedInOneWay() {
    Fault neither = onlyFault(with(false, new DescribedAmplifier(null, null)));
    assertEquals("exactly-one-of", neither.code());
    assertEquals("/amplifier", neither.pointer());
    DescribedAmplifier both =
        new DescribedAmplifier(Options.onRails(30, null).rails(), Options.RATED.ratings());
    assertEquals("more than one of them", onlyFault(with(false, both)).given());
  }

  @Test
  void anAmplifierThatCannotBeIsRefusedWhereItStands() {
    DescribedAmplifier allDrop =
        new DescribedAmplifier(new Rails(20.0, 14.4, null, 20.0, null, null), null);
    assertEquals("/amplifier/rails/drop_v", onlyFault(with(false, allDrop)).pointer());
    DescribedAmplifier oneLoad =
        Options.rated(new Ratings.Point(4.0, 100.0), new Ratings.Point(4.0, 100.0));
    assertEquals("/amplifier/ratings/points", onlyFault(with(false, oneLoad)).pointer());
    DescribedAmplifier single =
        new DescribedAmplifier(
            new Rails(14.4, 14.4, Rails.Kind.SINGLE_SUPPLY_BRIDGE, 2.0, null, null), null);
    Fault bridgeOfBridges = onlyFault(with(true, single));
    assertEquals("bridge-of-bridges", bridgeOfBridges.code());
    assertEquals("/bridged", bridgeOfBridges.pointer());
  }

  @Test
  void allThatIsWrongIsSaidAtOnce() {
    WiringOptionsRequest request =
        new WiringOptionsRequest(
            List.of(coils("sub", 4, 9), coils("sub_1", 4, 1)),
            new Window(4.0, null, 2.0),
            false,
            new DescribedAmplifier(null, null),
            null);
    assertEquals(
        List.of("duplicate", "too-many-coils", "window-empty", "exactly-one-of"),
        faults(request).stream().map(Fault::code).toList());
  }

  @Test
  void everyNumberOutOfItsBoundsIsNamed() {
    WiringOptionsRequest request =
        WiringOptionsRequestBuilder.builder()
            .coils(List.of(coils("2nd", 0.01, 0)))
            .window(new Window(0.0, -1.0, 1e6))
            .listCount(0)
            .build();
    List<String> pointers = faults(request).stream().map(Fault::pointer).sorted().toList();
    assertEquals(
        List.of(
            "/coils/0/coil_count",
            "/coils/0/name",
            "/coils/0/rated_ohm",
            "/list_count",
            "/window/maximum_ohm",
            "/window/minimum_bridged_ohm",
            "/window/minimum_ohm"),
        pointers);
    List<String> missing =
        faults(WiringOptionsRequestBuilder.builder().build()).stream()
            .map(Fault::pointer)
            .sorted()
            .toList();
    assertEquals(List.of("/coils", "/window"), missing);
    assertTrue(
        faults(WiringOptionsRequestBuilder.builder().coils(List.of()).window(ANY).build()).stream()
            .anyMatch(fault -> fault.pointer().equals("/coils")));
  }
}
