package org.footwell.electrical.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.electrical.load.WiringLoadResult.CoilShare;
import org.footwell.electrical.load.WiringOptionsResult.CoilPower;
import org.footwell.electrical.load.WiringOptionsResult.Option;
import org.footwell.parts.VoiceCoil;

class WiringOptionsProperties {

  private static final double CLOSE = 1e-9;
  private static final int TRIES = 200;

  /** Up to five coils of a few impedances, so that some are alike, with and without names. */
  @Provide
  Arbitrary<List<VoiceCoil>> coils() {
    Arbitrary<Double> ohm = Arbitraries.of(2.0, 3.2, 4.0, 8.0, 0.1, 1000.0, 7.123456789012345);
    Arbitrary<Boolean> named = Arbitraries.of(true, false);
    return Combinators.combine(ohm, named)
        .as((ratedOhm, withName) -> Options.coils(withName ? "x" : null, ratedOhm, 1))
        .list()
        .ofMinSize(1)
        .ofMaxSize(5)
        .map(WiringOptionsProperties::numbered);
  }

  private static List<VoiceCoil> numbered(List<VoiceCoil> coils) {
    List<VoiceCoil> numbered = new ArrayList<>();
    for (VoiceCoil one : coils) {
      String name = one.name() == null ? null : "c" + numbered.size();
      numbered.add(Options.coils(name, one.ratedOhm(), 1));
    }
    return numbered;
  }

  private static WiringOptionsResult result(List<VoiceCoil> coils, boolean withAmplifier) {
    return Options.answer(
            Options.of(
                0.1, null, withAmplifier ? Options.RATED : null, coils.toArray(VoiceCoil[]::new)))
        .result();
  }

  @Property(tries = TRIES)
  void everyNetworkIsReadBackAsTheSameLoadAndShares(@ForAll("coils") List<VoiceCoil> coils) {
    for (Option option : result(coils, true).options()) {
      WiringLoadResult back =
          Requests.result(Requests.network(option.network(), Options.fedBack(option)));
      assertEquals(option.loadOhm(), back.loadOhm(), 0);
      assertEquals(option.evenSharing(), back.evenSharing());
      assertEquals(coils.size(), back.coils().size());
      for (int i = 0; i < coils.size(); i++) {
        CoilPower there = option.coils().get(i);
        CoilShare here = back.coils().get(i);
        assertEquals(there.name(), here.name());
        assertEquals(there.ratedOhm(), here.ratedOhm(), 0);
        assertEquals(there.powerShare(), here.powerShare(), 0);
        assertEquals(there.voltageShare(), here.voltageShare(), 0);
      }
    }
  }

  @Property(tries = TRIES)
  void everyCoilIsUsedOnceAndTheSharesAddUpToOne(@ForAll("coils") List<VoiceCoil> coils) {
    List<Double> ohms = coils.stream().map(VoiceCoil::ratedOhm).sorted().toList();
    for (Option option : result(coils, true).options()) {
      assertEquals(ohms, option.coils().stream().map(CoilPower::ratedOhm).sorted().toList());
      assertEquals(1, option.coils().stream().mapToDouble(CoilPower::powerShare).sum(), CLOSE);
      assertEquals(
          option.cleanPowerW(),
          option.coils().stream().mapToDouble(CoilPower::cleanPowerW).sum(),
          CLOSE * option.cleanPowerW());
      assertTrue(option.evenness() > 0 && option.evenness() <= 1);
    }
  }

  @Property(tries = TRIES)
  void evenSharingComesFirstThenPower(
      @ForAll("coils") List<VoiceCoil> coils, @ForAll boolean withAmplifier) {
    List<Option> options = result(coils, withAmplifier).options();
    for (int i = 1; i < options.size(); i++) {
      Option better = options.get(i - 1);
      Option worse = options.get(i);
      assertTrue(better.evenSharing() || !worse.evenSharing());
      if (better.evenSharing() != worse.evenSharing()) {
        continue;
      }
      if (withAmplifier) {
        assertTrue(better.cleanPowerW() >= worse.cleanPowerW() * (1 - 2 * CLOSE));
      } else {
        assertTrue(better.loadOhm() <= worse.loadOhm() * (1 + 2 * CLOSE));
      }
    }
  }

  @Property(tries = TRIES)
  void theOrderOfTheCoilsChangesNothingButNames(@ForAll("coils") List<VoiceCoil> coils) {
    List<VoiceCoil> reversed = new ArrayList<>(coils);
    Collections.reverse(reversed);
    List<Option> there = result(coils, true).options();
    List<Option> back = result(reversed, true).options();
    assertEquals(
        there.stream().map(Option::loadOhm).toList(), back.stream().map(Option::loadOhm).toList());
    assertEquals(
        there.stream().map(Option::evenness).toList(),
        back.stream().map(Option::evenness).toList());
  }

  /** Between 1 and 10 ohm no network of four is out of the widest window, nor is its dual. */
  @Provide
  Arbitrary<List<Double>> ohms() {
    return Arbitraries.doubles().between(1, 10).list().ofMinSize(1).ofMaxSize(4);
  }

  /** Exchanging series and parallel turns every load R of coils r into 10/R of coils 10/r. */
  @Property(tries = TRIES)
  void everyLoadHasItsDual(@ForAll("ohms") List<Double> ohms) {
    List<Double> loads = sortedLoads(ohms, ohm -> ohm);
    List<Double> duals = sortedLoads(ohms.stream().map(ohm -> 10 / ohm).toList(), ohm -> 10 / ohm);
    assertEquals(loads.size(), duals.size());
    for (int i = 0; i < loads.size(); i++) {
      assertEquals(loads.get(i), duals.get(i), CLOSE * loads.get(i));
    }
  }

  private static List<Double> sortedLoads(List<Double> ohms, UnaryOperator<Double> of) {
    WiringOptionsResult result = Options.answer(Options.of(ohms, 0.1)).result();
    assertEquals(result.networkCount(), result.options().size());
    return result.options().stream().map(Option::loadOhm).map(of).sorted().toList();
  }

  @Property(tries = TRIES)
  void countsAddUpWhateverTheWindow(
      @ForAll("coils") List<VoiceCoil> coils,
      @ForAll @DoubleRange(min = 0.1, max = 50) double minimumOhm,
      @ForAll @DoubleRange(min = 1, max = 20) double width) {
    WiringOptionsResult result =
        Options.answer(
                WiringOptionsRequestBuilder.builder(
                        Options.of(
                            minimumOhm,
                            minimumOhm * width,
                            Options.RATED,
                            coils.toArray(VoiceCoil[]::new)))
                    .listCount(7)
                    .build())
            .result();
    assertEquals(
        result.networkCount(),
        result.belowWindowCount() + result.inWindowCount() + result.aboveWindowCount());
    assertEquals(result.inWindowCount(), result.options().size() + result.notListedCount());
    for (Option option : result.options()) {
      assertTrue(option.loadOhm() >= minimumOhm * (1 - 2 * CLOSE));
      assertTrue(option.loadOhm() <= minimumOhm * width * (1 + 2 * CLOSE));
    }
  }
}
