package org.footwell.electrical.load;

import static org.footwell.electrical.load.Options.answer;
import static org.footwell.electrical.load.Options.coils;
import static org.footwell.electrical.load.Options.networks;
import static org.footwell.electrical.load.Requests.sentence;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Step;
import org.footwell.calculation.Verdict;
import org.footwell.electrical.load.WiringOptionsResult.CoilPower;
import org.footwell.electrical.load.WiringOptionsResult.Option;
import org.footwell.parts.Amplifier;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.Ratings;
import org.junit.jupiter.api.Test;

class WiringOptionsTest {

  private static final double TINY = 1e-9;

  private static double[] shares(Option option) {
    return option.coils().stream().mapToDouble(CoilPower::powerShare).toArray();
  }

  private static List<String> names(Option option) {
    return option.coils().stream().map(CoilPower::name).toList();
  }

  /** The numbers of docs/method/wiring-options.md, worked by hand. */
  @Test
  void workedExample() {
    WiringOptionsRequest request =
        Options.of(2, 16.0, Options.RATED, coils("left", 4, 2), coils("right", 4, 2));
    Answer<WiringOptionsResult> answer = answer(request);
    WiringOptionsResult result = answer.result();
    assertEquals(10, result.networkCount());
    assertEquals(2, result.belowWindowCount()); // 1 and 1.6 ohm
    assertEquals(0, result.aboveWindowCount());
    assertEquals(8, result.inWindowCount());
    assertEquals(3, result.evenCount());
    assertEquals(0, result.notListedCount());
    assertEquals(2, result.smallestLoadOhm(), 0);
    assertEquals("(left_1 + left_2) || (right_1 + right_2)", result.bestNetwork());
    assertEquals(4, result.bestLoadOhm(), TINY);
    assertEquals(1, result.bestEvenness(), TINY);
    assertEquals(100, result.bestCleanPowerW(), TINY);

    List<Option> options = result.options();
    assertEquals(8, options.size());
    assertEquals(result.bestNetwork(), options.get(0).network());
    assertTrue(options.get(0).evenSharing());
    assertEquals(25, options.get(0).coils().get(3).cleanPowerW(), TINY);
    assertEquals("left_1 || left_2 + right_1 || right_2", options.get(1).network());
    assertEquals("left_1 + left_2 + right_1 + right_2", options.get(2).network());
    assertEquals(16, options.get(2).loadOhm(), TINY);
    assertEquals(30.092, options.get(2).cleanPowerW(), 5e-4);
    assertEquals(25, options.get(2).cleanPowerLowW(), TINY); // 20²/16
    assertEquals(30.092, options.get(2).cleanPowerHighW(), 5e-4);

    Option uneven = options.get(3);
    assertEquals("left_1 || (left_2 + right_1 || right_2)", uneven.network());
    assertEquals(2.4, uneven.loadOhm(), TINY);
    assertEquals(143.237, uneven.cleanPowerW(), 5e-4);
    assertFalse(uneven.evenSharing());
    assertArrayEquals(new double[] {3 / 5.0, 4 / 15.0, 1 / 15.0, 1 / 15.0}, shares(uneven), TINY);
    assertEquals(1 / 9.0, uneven.evenness(), TINY);
    assertEquals(1 / 3.0, uneven.coils().get(2).voltageShare(), TINY);
    assertEquals(0.6 * 143.237, uneven.coils().get(0).cleanPowerW(), 5e-4);
    assertEquals(List.of("uneven-gives-more"), Answers.codes(answer));
    assertEquals(
        "The amplifier gives 143.2 W into left_1 || (left_2 + right_1 || right_2) with 2.4 ohm,"
            + " more than 100 W into the best network with even sharing; but there one coil takes"
            + " 60 % of the power and another 6.667 %.",
        sentence(answer, "uneven-gives-more"));
  }

  @Test
  void withoutNamesTheNetworksShowImpedancesAndCoilsGoByTheirPlace() {
    WiringOptionsRequest request =
        Options.of(1, null, null, coils(null, 3.2, 2), coils(null, 1000, 1));
    assertTrue(networks(request).contains("3.2 + 3.2 || 1000"), networks(request)::toString);
    assertEquals(
        List.of("coil 1", "coil 2", "coil 3"), names(answer(request).result().options().get(0)));
  }

  @Test
  void namedAndUnnamedCoilsOfOneImpedanceAreEquals() {
    WiringOptionsRequest request =
        Options.of(0.1, null, null, coils(null, 4, 1), coils("sub", 4, 1), coils("mid", 8, 1));
    WiringOptionsResult result = answer(request).result();
    assertEquals(6, result.networkCount());
    assertTrue(networks(request).contains("4 || sub || mid"), networks(request)::toString);
    assertEquals(List.of("coil 1", "sub", "mid"), names(result.options().get(0)));
  }

  @Test
  void oneCoilIsANetworkOfItsOwn() {
    Answer<WiringOptionsResult> answer =
        answer(Options.of(4, 4.0, Options.RATED, coils("sub", 4, 1)));
    assertEquals(1, answer.result().networkCount());
    assertEquals("sub", answer.result().bestNetwork());
    assertEquals(100, answer.result().bestCleanPowerW(), TINY);
    assertEquals(List.of(), Answers.codes(answer));
  }

  @Test
  void withoutAnAmplifierTheLowestLoadOfEvenOnesIsBest() {
    Answer<WiringOptionsResult> answer = answer(Options.of(1, null, null, coils(null, 4, 4)));
    WiringOptionsResult result = answer.result();
    assertEquals("4 || 4 || 4 || 4", result.bestNetwork());
    assertNull(result.bestCleanPowerW());
    assertNull(result.options().get(0).cleanPowerHighW());
    assertNull(result.options().get(0).coils().get(0).cleanPowerW());
    assertEquals(
        List.of(1.0, 4.0, 4.0, 16.0, 1.6),
        result.options().stream().limit(5).map(Option::loadOhm).toList());
    assertEquals(List.of(), Answers.codes(answer));
  }

  @Test
  void ofEqualPowersTheHigherLoadIsBetter() {
    Amplifier limited = Options.rated(new Ratings.Point(8.0, 100.0), new Ratings.Point(2.0, 100.0));
    Answer<WiringOptionsResult> answer = answer(Options.of(2, null, limited, coils(null, 4, 2)));
    assertEquals("4 + 4", answer.result().bestNetwork());
    assertEquals(List.of("ratings-power-limited"), Answers.codes(answer));
  }

  @Test
  void onlyTheBestAreListedAndTheRestIsCounted() {
    WiringOptionsRequest request =
        WiringOptionsRequestBuilder.builder()
            .coils(List.of(coils(null, 4, 8)))
            .amplifier(Options.from(0.1))
            .listCount(3)
            .build();
    WiringOptionsResult result = answer(request).result();
    assertEquals(522, result.networkCount());
    assertEquals(522, result.inWindowCount());
    assertEquals(3, result.options().size());
    assertEquals(519, result.notListedCount());
    assertEquals(10, WiringOptionsRequestBuilder.builder().build().listCount());
  }

  @Test
  void bothEndsOfTheWindowBelongToIt() {
    // 12/3 in parallel and 3·12 in series, to the last digit or not.
    WiringOptionsResult result = answer(Options.of(4, 36.0, null, coils(null, 12, 3))).result();
    assertEquals(4, result.inWindowCount());
    WiringOptionsResult tenths = answer(Options.of(0.1, 0.3, null, coils(null, 0.1, 3))).result();
    assertEquals(1, tenths.evenCount()); // 0.1 + 0.1 + 0.1
  }

  @Test
  void noNetworkInTheWindowStopsAndNamesTheNearest() {
    Answer<WiringOptionsResult> answer = answer(Options.of(3, 7.0, null, coils(null, 4, 2)));
    assertEquals(Verdict.STOP, answer.verdict());
    assertEquals(
        "None of the 2 networks of these coils has a load of 3 to 7 ohm: the nearest below is"
            + " 2 ohm, the nearest above is 8 ohm. Take other coils, fewer of them on this channel,"
            + " or another amplifier.",
        sentence(answer, "none-in-window"));
    WiringOptionsResult result = answer.result();
    assertEquals(List.of(), result.options());
    assertEquals(1, result.belowWindowCount());
    assertEquals(1, result.aboveWindowCount());
    assertNull(result.bestNetwork());
    assertNull(result.bestLoadOhm());
    assertNull(result.bestEvenness());
    String open = sentence(answer(Options.of(20, null, null, coils(null, 4, 2))), "none-in-window");
    assertTrue(open.contains("20 ohm or more: the nearest below is 8 ohm."), open);
    String low = sentence(answer(Options.of(0.5, 1.0, null, coils(null, 4, 2))), "none-in-window");
    assertTrue(low.contains("0.5 to 1 ohm: the nearest above is 2 ohm."), low);
  }

  @Test
  void onlyUnevenSharingIsAWarningThatNamesTheMostEven() {
    // Series 4 + 8: a third and two thirds; parallel the other way round.
    Answer<WiringOptionsResult> answer =
        answer(Options.of(2, null, Options.RATED, coils("mid", 4, 1), coils("sub", 8, 1)));
    assertEquals(List.of("only-uneven"), Answers.codes(answer));
    assertEquals(0, answer.result().evenCount());
    assertEquals("mid || sub", answer.result().bestNetwork());
    assertEquals(0.5, answer.result().bestEvenness(), TINY);
    assertEquals(
        "No network in the window lets all coils take the same power. The most even one"
            + " is mid || sub with 2.667 ohm: one coil takes 66.67 % of the power, another"
            + " 33.33 %. Take other coils or another window, or accept that they play unlike.",
        sentence(answer, "only-uneven"));
  }

  @Test
  void theMostEvenOneNeedNotBeTheStrongest() {
    // Parallel 4, 8, 16: shares 4/7, 2/7, 1/7. The most even: 4 + 8||16? 4 of 9.33 is 3/7,
    // the pair 4/7 as 8/21 and 4/21: 4/9. (4 + 8)||16: 16/28 as 4/21 and 8/21, 12/28: 4/9 too.
    Answer<WiringOptionsResult> answer =
        answer(
            Options.of(
                2, null, Options.RATED, coils("a", 4, 1), coils("b", 8, 1), coils("c", 16, 1)));
    assertEquals("a || b || c", answer.result().bestNetwork());
    assertEquals(0.25, answer.result().bestEvenness(), TINY);
    String sentence = sentence(answer, "only-uneven");
    assertTrue(sentence.contains("(a + b) || c"), sentence);
    assertTrue(sentence.contains("42.86 % of the power, another 19.05 %"), sentence);
  }

  @Test
  void bridgedEachChannelSeesHalfTheLoad() {
    WiringOptionsRequest request =
        WiringOptionsRequestBuilder.builder()
            .coils(List.of(coils(null, 4, 2)))
            .bridged(true)
            .amplifier(AmplifierBuilder.builder(Options.RATED).minimumOhm(2.0).build())
            .build();
    WiringOptionsResult result = answer(request).result();
    assertEquals(4, result.smallestLoadOhm(), 0);
    assertEquals("4 + 4", result.bestNetwork());
    assertEquals(1, result.belowWindowCount());
    assertEquals(200, result.bestCleanPowerW(), TINY); // two times 100 W into 4 ohm
  }

  @Test
  void aBridgedMinimumBelowTwiceThatOfAChannelIsDoubted() {
    WiringOptionsRequest request =
        WiringOptionsRequestBuilder.builder()
            .coils(List.of(coils(null, 4, 2)))
            .amplifier(Requests.bears(2.0, 2.0))
            .bridged(true)
            .build();
    Answer<WiringOptionsResult> answer = answer(request);
    assertEquals(2, answer.result().smallestLoadOhm(), 0);
    assertEquals(List.of("bridged-minimum-doubtful"), Answers.codes(answer));
    assertEquals("/amplifier/minimum_bridged_ohm", answer.findings().get(0).pointer());
  }

  @Test
  void whatIsDoubtfulAboutTheAmplifierOnTheBestNetworkIsSaid() {
    Answer<WiringOptionsResult> rails =
        answer(Options.of(4, 4.0, Options.onRails(30, 5.0), coils(null, 4, 4)));
    assertEquals(50, rails.result().bestCleanPowerW(), TINY); // 5²·4/2
    assertEquals("/amplifier/rails/current_limit_a", rails.findings().get(0).pointer());
    assertEquals(List.of("current-limit-first"), Answers.codes(rails));
    Answer<WiringOptionsResult> outside =
        answer(Options.of(1, 1.0, Options.RATED, coils(null, 4, 4)));
    assertEquals(List.of("outside-rated-loads"), Answers.codes(outside));
    assertEquals("/coils", outside.findings().get(0).pointer());
    assertEquals(80, outside.result().options().get(0).cleanPowerLowW(), TINY);
  }

  @Test
  void workingsAreThoseOfTheBestNetworkOnly() {
    List<Step> steps =
        Answers.withWorkings(
                new WiringOptions(), Options.of(1, null, Options.RATED, coils(null, 4, 8)))
            .workings();
    List<String> quantities = steps.stream().map(Step::quantity).toList();
    assertTrue(
        quantities.containsAll(List.of("load_ohm", "power_share", "open_circuit_v", "sag_ohm")),
        quantities::toString);
    assertTrue(steps.size() < 50, () -> steps.size() + " steps");
  }
}
