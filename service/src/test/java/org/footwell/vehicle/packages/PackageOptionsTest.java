package org.footwell.vehicle.packages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Verdict;
import org.footwell.parts.offer.Offer;
import org.footwell.vehicle.PlanReview;
import org.footwell.vehicle.packages.PackageOptionsResult.FilledSlot;
import org.footwell.vehicle.packages.PackageOptionsResult.OfferedPackage;
import org.footwell.vehicle.packages.PackageOptionsResult.Relaxed;
import org.footwell.web.request.Trees;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PackageOptionsTest {

  private static final PackageOptions OPTIONS = new PackageOptions();

  private static PackageOptionsRequest demo(Wishes wishes, int listCount) {
    return PackageOptionsRequestBuilder.builder(SmallJob.of(DemoOffer.request()))
        .wishes(wishes)
        .listCount(listCount)
        .build();
  }

  private static PackageOptionsResult answer(PackageOptionsRequest q) {
    return Answers.of(OPTIONS, q).result();
  }

  @Test
  void everyPackageIsAPlanThatReviewsAsListed() {
    PackageOptionsResult result = answer(demo(null, 50));
    assertTrue(result.listedCount() > 5);
    for (OfferedPackage one : result.packages()) {
      assertEquals(one.review(), Answers.of(new PlanReview(), one.plan()).result());
      assertEquals(0, one.price().compareTo(one.review().price()));
      assertEquals(one.massChangeG(), one.review().massChangeG(), 1e-6);
      assertTrue(one.review().levelDbSpl() <= one.levelAtMostDbSpl() + 1e-9);
      assertTrue(one.verdict().compareTo(Verdict.STOP) < 0);
      assertTrue(one.review().cables().stream().allMatch(cable -> cable.fuseA() != null));
    }
  }

  @Test
  void noPackageOfTheListBeatsAnother() {
    List<OfferedPackage> all = answer(demo(null, 50)).packages();
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < all.size(); j++) {
        OfferedPackage one = all.get(i);
        OfferedPackage other = all.get(j);
        boolean beaten =
            other.price().compareTo(one.price()) <= 0
                && other.massChangeG() <= one.massChangeG()
                && other.lowestHz() <= one.lowestHz()
                && other.levelAtMostDbSpl() >= one.levelAtMostDbSpl();
        assertFalse(i != j && beaten, () -> one.slots() + " by " + other.slots());
      }
    }
  }

  @Test
  void driversGoIntoOpeningsAndBoxesIntoTheirRoom() {
    PackageOptionsResult result = answer(demo(null, 50));
    Set<String> parts = new TreeSet<>();
    Set<String> boxes = new TreeSet<>();
    for (OfferedPackage one : result.packages()) {
      one.slots().forEach(slot -> parts.add(slot.part()));
      one.slots().stream().filter(slot -> slot.box() != null).forEach(s -> boxes.add(s.box()));
    }
    assertFalse(parts.contains("mid_165_deep")); // 78 mm deep, the door has 68 mm
    assertFalse(boxes.contains("closed_20")); // 220 mm high, there are 190 mm
    assertEquals(1, result.fitting().get(0).tooLargeCount());
  }

  @Test
  void theTableHasARowForEachPackage() {
    PackageOptionsRequest q = demo(null, 50);
    PackageOptionsResult result = answer(q);
    List<String> rows =
        new String(PackageSheet.csv(q, result), StandardCharsets.UTF_8).lines().toList();
    assertTrue(
        rows.get(0)
            .startsWith(
                "package,price,level_db_spl,lowest_hz,mass_change_g,verdict,amplifiers,front_woofers.part"),
        rows.get(0));
    assertEquals(result.listedCount() + 1, rows.size());
    for (int i = 0; i < result.listedCount(); i++) {
      OfferedPackage one = result.packages().get(i);
      assertTrue(
          rows.get(i + 1)
              .startsWith(
                  "%d,%s,%s,%s,%s,"
                      .formatted(
                          i + 1,
                          one.price(),
                          one.levelDbSpl(),
                          one.lowestHz(),
                          one.massChangeG())));
      one.slots().forEach(slot -> assertTrue(rows.toString().contains(slot.part())));
    }
  }

  @Test
  void aPositionToKeepIsKept() {
    Wishes wishes = WishesBuilder.builder().keep(List.of("rear", "bass")).build();
    for (OfferedPackage one : answer(demo(wishes, 50)).packages()) {
      for (FilledSlot slot : one.slots()) {
        assertTrue(slot.stays() || !wishes.keep().contains(slot.slot()));
      }
    }
  }

  @Test
  void withoutNewAmplifiersThoseOfThePlanDriveEverything() {
    Wishes wishes = WishesBuilder.builder().newAmplifierCount(0).build();
    PackageOptionsResult result = answer(demo(wishes, 50));
    assertTrue(result.listedCount() > 0);
    for (OfferedPackage one : result.packages()) {
      assertTrue(List.of("main", "bass").containsAll(one.amplifiers()));
    }
  }

  @Test
  void theOrderOfImportanceOrdersTheList() {
    for (Aim aim : Aim.values()) {
      Wishes wishes = WishesBuilder.builder().importance(List.of(aim)).build();
      List<OfferedPackage> all = answer(demo(wishes, 50)).packages();
      for (int i = 1; i < all.size(); i++) {
        assertTrue(all.get(i - 1).distance() <= all.get(i).distance());
      }
    }
  }

  /** Rank order centroids of four, as published tables have them to two digits: .52, .27, .15, .06. */
  @Test
  void weightsAreRankOrderCentroids() {
    double[] published = {0.52, 0.27, 0.15, 0.06};
    for (int k = 1; k <= 4; k++) {
      assertEquals(published[k - 1], Importance.weight(k, 4), 0.005);
    }
  }

  @Test
  void wishesThatExcludeEachOtherAreNamedWithWhatThereIsInstead() {
    List<OfferedPackage> all = answer(demo(null, 50)).packages();
    double loudest = all.stream().mapToDouble(OfferedPackage::levelAtMostDbSpl).max().orElseThrow();
    BigDecimal cheapest =
        all.stream().map(OfferedPackage::price).min(BigDecimal::compareTo).orElseThrow();
    Wishes wishes =
        WishesBuilder.builder()
            .budget(cheapest)
            .levelDbSpl(loudest - 0.001)
            .lowestHz(200.0)
            .build();
    PackageOptionsResult result = answer(demo(wishes, 50));
    assertEquals(0, result.frontCount());
    Relaxed relaxed = result.relaxed().get(0);
    assertEquals(List.of(Aim.PRICE, Aim.LEVEL), relaxed.wishes());
    assertTrue(relaxed.attainable().get(0) > cheapest.doubleValue());
    assertTrue(relaxed.attainable().get(1) < loudest);
    // With what is said to be attainable there is a package.
    Wishes given =
        WishesBuilder.builder()
            .budget(BigDecimal.valueOf(relaxed.attainable().get(0)))
            .levelDbSpl(loudest - 0.001)
            .build();
    assertTrue(answer(demo(given, 50)).frontCount() > 0);
  }

  @Test
  void aWishThatNothingMeetsStandsAlone() {
    Wishes wishes = WishesBuilder.builder().levelDbSpl(149.0).lowestHz(20.0).build();
    Answer<PackageOptionsResult> answer = Answers.of(OPTIONS, demo(wishes, 5));
    assertEquals(List.of("wish-out-of-reach", "wish-out-of-reach"), Answers.codes(answer));
    assertEquals(Verdict.STOP, answer.verdict());
  }

  private static PackageOptionsRequest unlike(String wishes) {
    return SmallJob.of(
        SmallJob.REQUEST
            .replace(
                "\"id\": \"sub_now\"",
                "\"id\": \"woofer_then\", \"driver\": {\"rated_ohm\": 4}}, {\"id\": \"sub_now\"")
            .replace("\"right\", \"part\": \"woofer_now\"", "\"right\", \"part\": \"woofer_then\"")
            .replace("\"list_count\"", wishes + "\"list_count\""));
  }

  @Test
  void partsThatAreUnlikeCannotBeKeptInOneSlot() {
    List<Fault> faults = Answers.faults(OPTIONS, unlike("\"wishes\": {\"keep\": [\"front\"]}, "));
    assertEquals(1, faults.size());
    assertEquals("/slots/0/drivers kept-parts-unlike", told(faults.get(0)));
    assertTrue(faults.get(0).detail().contains("woofer_now, woofer_then"), faults.get(0)::detail);
  }

  @Test
  void whereNothingFitsItIsSaidWhyWhatIsThereIsNoChoice() {
    Answer<PackageOptionsResult> mayStay = Answers.of(OPTIONS, unlike(""));
    assertEquals(List.of("nothing-fits"), Answers.codes(mayStay));
    String why = mayStay.findings().get(0).text();
    assertTrue(why.startsWith("Nothing of the offer fits front, and its parts are unlike"), why);
  }

  @ParameterizedTest
  @CsvSource({
    "'{\"level_db_spl\": 149}', level, 149 dB SPL",
    "'{\"lowest_hz\": 20}', lowest frequency, 20 Hz",
    "'{\"mass_change_g\": -5000}', mass, −5000 g",
    "'{\"budget\": 0}', price, 0.00"
  })
  void aWishOutOfReachIsSaidWithItsUnit(String wishes, String wish, String wanted) {
    Answer<PackageOptionsResult> answer =
        Answers.of(
            OPTIONS,
            SmallJob.of(
                SmallJob.REQUEST
                    .replace("\"price\": 0}", "\"price\": 19.95}")
                    .replace("\"list_count\"", "\"wishes\": " + wishes + ", \"list_count\"")));
    String unit = wanted.substring(wanted.indexOf(' ') < 0 ? wanted.length() : wanted.indexOf(' '));
    String text = answer.findings().get(0).text();
    assertTrue(
        text.matches(
            "No package of this offer meets the wish for "
                + Pattern.quote(wish + ", " + wanted)
                + "; the closest is [0-9.]+"
                + unit
                + "\\."),
        text);
  }

  @Test
  void anEffortThatEndsGivesTheBestSoFarAndSaysSo() {
    PackageOptionsRequest q =
        PackageOptionsRequestBuilder.builder(demo(null, 50)).effortCount(800).build();
    Answer<PackageOptionsResult> answer = Answers.of(OPTIONS, q);
    assertTrue(Answers.codes(answer).contains("search-cut-short"));
    assertFalse(answer.result().proven().frontComplete());
    assertNull(answer.result().proven().gapDb());
    assertTrue(answer.result().listedCount() > 0);
    PackageOptionsResult whole = answer(demo(null, 50));
    // What is said to bound all packages does bound those of the whole front.
    for (OfferedPackage one : whole.packages()) {
      assertTrue(one.price().compareTo(answer.result().proven().priceAtLeast()) >= 0);
      assertTrue(one.massChangeG() >= answer.result().proven().massChangeAtLeastG());
      assertTrue(one.lowestHz() >= answer.result().proven().lowestAtLeastHz());
      assertTrue(one.levelAtMostDbSpl() <= answer.result().proven().levelAtMostDbSpl() + 1e-9);
    }
  }

  @Test
  void aShortDeadlineIsMetWithWhatThereIs() {
    PackageOptionsRequest q = SmallJob.drawn(5, 20, 10);
    Answer<PackageOptionsResult> answer =
        new Engine().answer(OPTIONS, q, false, Duration.ofMillis(1500));
    assertNotNull(answer.result().packages());
  }

  @Test
  void theFrontHoldsSoManyAndTellsWhenItIsFull() {
    Front front = new Front(2);
    for (int i = 0; i < 3; i++) {
      front.add(new PackageFigures(i, 10 - i, 50, 100), () -> null);
    }
    assertTrue(front.overfull());
    assertTrue(front.beats(new PackageFigures(1, 9, 50, 100)));
    assertFalse(front.beats(new PackageFigures(2, 8, 50, 100)));
  }

  @Test
  void everyFaultOfABadRequestIsToldAtOnce() {
    String request =
        """
        {"plan": %s,
         "slots": [{"name": "a", "drivers": ["left", "nowhere"]},
                   {"name": "a", "drivers": ["right"]},
                   {"name": "c", "drivers": ["right"]},
                   {"name": "d", "drivers": ["bass"]}],
         "offer": {"drivers": [
           {"part": {"id": "x", "role": "woofer", "driver": {"rated_ohm": 4}}},
           {"part": {"id": "x", "role": "woofer", "driver": {"rated_ohm": 4}}}]},
         "wishes": {"keep": ["somewhere"]}}
        """
            .formatted(Trees.MAPPER.valueToTree(SmallJob.bare().plan()));
    List<Fault> faults = assertThrows(Refused.class, () -> answer(SmallJob.of(request))).faults();
    Set<String> told = new TreeSet<>();
    faults.forEach(fault -> told.add(told(fault)));
    for (String expected :
        List.of(
            "/slots/0/drivers/1 dangling-reference",
            "/slots/1/name duplicate",
            "/slots/2/drivers/0 duplicate",
            "/offer/drivers/1/part/id duplicate",
            "/offer/drivers/0/part/driver/price required",
            "/offer/drivers/0/part/driver/sensitivity required",
            "/wishes/keep/0 dangling-reference")) {
      assertTrue(told.contains(expected), () -> expected + " not in " + told);
    }
  }

  private static String told(Fault fault) {
    return fault.pointer() + " " + fault.code();
  }

  @Test
  void fiveSlotsAreOneTooMany() {
    String request =
        """
        {"plan": %s, "offer": {}, "wishes": {"budget": -1},
         "slots": [{"name": "a", "drivers": ["left"]}, {"name": "b", "drivers": ["right"]},
                   {"name": "c", "drivers": ["bass"]}, {"name": "d", "drivers": ["bass"]},
                   {"name": "e", "drivers": ["bass"]}]}
        """
            .formatted(Trees.MAPPER.valueToTree(SmallJob.bare().plan()));
    List<Fault> faults = assertThrows(Refused.class, () -> answer(SmallJob.of(request))).faults();
    assertEquals(List.of("/slots", "/wishes/budget"), faults.stream().map(Fault::pointer).toList());
  }

  @Test
  void noSlotIsRefused() {
    List<Fault> faults =
        Answers.faults(
            OPTIONS,
            PackageOptionsRequestBuilder.builder(SmallJob.bare()).slots(List.of()).build());
    assertEquals("/slots", faults.get(0).pointer());
  }

  @Test
  void withNothingOfferedWhatIsThereIsTheOnlyPackage() {
    PackageOptionsResult result = answer(SmallJob.with(new Offer(null, null, null, null, null)));
    assertEquals(1, result.frontCount());
    assertTrue(result.packages().get(0).slots().stream().allMatch(FilledSlot::stays));
  }
}
