package org.footwell.vehicle.packages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.footwell.Answers;
import org.footwell.electrical.load.WiringOptions;
import org.footwell.electrical.load.WiringOptionsRequestBuilder;
import org.footwell.electrical.load.WiringOptionsResult;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.VoiceCoilBuilder;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Strings in parallel are all networks that share evenly: held against the search of all networks. */
class WiringsTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void everyLoadOfEvenSharingIsThatOfAWiring(int coils) {
    WiringOptionsResult all =
        Answers.of(
                new WiringOptions(),
                WiringOptionsRequestBuilder.builder()
                    .coils(
                        List.of(VoiceCoilBuilder.builder().ratedOhm(4.0).coilCount(coils).build()))
                    .amplifier(AmplifierBuilder.builder().minimumOhm(0.1).build())
                    .listCount(100)
                    .build())
            .result();
    TreeSet<Double> even = new TreeSet<>();
    all.options().stream()
        .filter(one -> one.evenSharing())
        .forEach(o -> even.add(rounded(o.loadOhm())));
    SlotLayout.Slot slot =
        new SlotLayout.Slot(
            0,
            null,
            null,
            List.of(0),
            List.of(new SlotLayout.Site(0, -1, IntStream.range(0, coils).boxed().toList())),
            false,
            true);
    TreeSet<Double> ours = new TreeSet<>();
    for (int inSeries : Filling.wirings(slot, 1)) {
      ours.add(rounded(4.0 * inSeries * inSeries / coils));
    }
    assertEquals(even, ours);
  }

  private static double rounded(double ohm) {
    return Math.round(ohm * 1e9) / 1e9;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 4})
  void aNetworkNamesEveryCoilOnce(int inSeries) {
    List<String> expected =
        List.of(
            "a.1 || a.2 || b.1 || b.2", "(a.1 + a.2) || (b.1 + b.2)", "", "a.1 + a.2 + b.1 + b.2");
    assertEquals(expected.get(inSeries - 1), Filling.network(List.of("a", "b"), 2, inSeries));
  }
}
