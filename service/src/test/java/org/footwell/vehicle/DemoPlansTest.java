package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Verdict;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The vehicles of the documentation: sound as they are, and told first what is wrong once it is. */
class DemoPlansTest {

  private static final Path EXAMPLES = Path.of("../docs/examples");

  private static PlanDraft van() {
    return PlanDraft.van();
  }

  private static PlanDraft hatchback() {
    return PlanDraft.ofFile(EXAMPLES + "/low-budget-hatchback.json");
  }

  private static PlanDraft estate() {
    return PlanDraft.ofFile(EXAMPLES + "/factory-estate.json");
  }

  private static PlanDraft louderBass() {
    return van().with("/target", "{\"roles\": [{\"role\": \"subwoofer\", \"level_db\": 6}]}");
  }

  private static PlanDraft vanWithLadders() {
    return van()
        .with("/channels/0/branches", ladders("left"))
        .with("/channels/1/branches", ladders("right"));
  }

  private static String ladders(String side) {
    return """
        [{"band": "low", "network": "front_SIDE_woofer",
          "elements": [{"place": "series", "inductance_mh": 0.3, "coil_ohm": 0.15}]},
         {"band": "high", "network": "front_SIDE_tweeter",
          "elements": [{"place": "series", "capacitance_uf": 8.2},
                       {"place": "shunt", "inductance_mh": 0.3, "coil_ohm": 0.2}]}]
        """
        .replace("SIDE", side);
  }

  private static PlanDraft coilsTheOtherWay() {
    return van()
        .with(
            "/channels/5/network", "\"(sub_left.1 || sub_left.2) + (sub_right.1 || sub_right.2)\"");
  }

  private static PlanDraft highPeaks() {
    return van().with("/programme/crest_factor_db", "15");
  }

  private static PlanDraft lowVoltage() {
    return hatchback().with("/supply/battery_v", "13.2");
  }

  private static PlanDraft frontOnly() {
    PlanDraft plan = hatchback();
    for (String list : List.of("/channels/", "/settings/")) {
      plan.without(list + 3).without(list + 2);
    }
    return plan.without("/drivers/5")
        .without("/drivers/4")
        .without("/new_parts/2")
        .without("/amplifiers/0/outputs/1");
  }

  private static PlanDraft thickCable() {
    return hatchback().with("/amplifiers/0/feed/cable/area_mm2", "4");
  }

  private static PlanDraft beforeTheWork() {
    return estate().without("/settings").without("/measured");
  }

  private static PlanDraft closedBox() {
    return beforeTheWork().with("/drivers/6/enclosure", "{\"closed\": {\"volume_l\": 30}}");
  }

  /** A plan by what it is called. */
  private record Sound(String name, Supplier<PlanDraft> plan) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static Stream<Sound> sound() {
    return Stream.of(
        new Sound("van", DemoPlansTest::van),
        new Sound("hatchback", DemoPlansTest::hatchback),
        new Sound("estate", DemoPlansTest::estate),
        new Sound("van, louder bass", DemoPlansTest::louderBass),
        new Sound("van, parts of its crossovers", DemoPlansTest::vanWithLadders),
        new Sound("van, coils the other way", DemoPlansTest::coilsTheOtherWay),
        new Sound("van, programme with high peaks", DemoPlansTest::highPeaks),
        new Sound("hatchback, low voltage", DemoPlansTest::lowVoltage),
        new Sound("hatchback, front only", DemoPlansTest::frontOnly),
        new Sound("hatchback, thick cable", DemoPlansTest::thickCable),
        new Sound("estate, before the work", DemoPlansTest::beforeTheWork),
        new Sound("estate, closed box", DemoPlansTest::closedBox));
  }

  @ParameterizedTest
  @MethodSource("sound")
  void aSoundPlanIsAnsweredWithoutWarning(Sound sound) {
    Answer<PlanReviewResult> answer = sound.plan().get().review();
    assertTrue(
        answer.verdict() == Verdict.OK || answer.verdict() == Verdict.NOTE,
        () -> PlanDraft.said(answer).toString());
  }

  /** A sound plan with one thing wrong, and the code that must stand first. */
  record Planted(String what, String code, PlanDraft plan) {
    @Override
    public String toString() {
      return what;
    }
  }

  static Stream<Planted> planted() {
    String fourCoils = "\"sub_left.1 || sub_left.2 || sub_right.1 || sub_right.2\"";
    PlanDraft lowCrossover = van();
    for (String at :
        List.of(
            "/crossovers/0",
            "/crossovers/1",
            "/channels/0/high_pass",
            "/channels/1/high_pass",
            "/channels/5/low_pass")) {
      lowCrossover.with(at + "/frequency_hz", "40");
    }
    return Stream.of(
        new Planted("crossover too low", "crossover-too-low", lowCrossover),
        new Planted(
            "tweeter without high-pass",
            "tweeter-unprotected",
            hatchback().without("/channels/0/branches/1/elements")),
        new Planted(
            "wires of one loudspeaker swapped",
            "measured-polarity-wrong",
            estate().with("/measured/4/polarity", "-1")),
        new Planted(
            "one side inverted",
            "opposite-polarity",
            louderBass().with("/channels/1/polarity", "-1")),
        new Planted(
            "load below the smallest",
            "load-below-minimum",
            vanWithLadders().with("/channels/5/network", fourCoils)),
        new Planted(
            "fuse too large",
            "fuse-too-large",
            coilsTheOtherWay().with("/amplifiers/0/feed/fuse_a", "200")),
        new Planted(
            "fuse too small", "fuse-too-small", highPeaks().with("/amplifiers/0/feed/fuse_a", "5")),
        new Planted(
            "load of the head unit below its smallest",
            "load-below-minimum",
            lowVoltage().with("/channels/2/network", "\"rear_left_full || 4\"")),
        new Planted(
            "driver forgotten",
            "driver-not-connected",
            frontOnly().without("/channels/0/branches/1")),
        new Planted(
            "supply that collapses",
            "supply-fails",
            closedBox()
                .with("/supply/battery/internal_ohm", "1")
                .with("/supply/alternator/cruise_a", "40")
                .with("/supply/alternator/idle_a", "40")),
        new Planted(
            "trim set wrong",
            "role-uneven",
            beforeTheWork().with("/settings", "[{\"channel\": \"left_door\", \"trim_db\": -12}]")),
        new Planted(
            "tweeter behind the high-pass of the woofer",
            "tweeter-unprotected",
            van().without("/channels/0/branches/1/high_pass")),
        new Planted(
            "delay of the bass set wrong",
            "set-loses-bass",
            beforeTheWork().with("/settings", "[{\"channel\": \"bass\", \"delay_ms\": 6}]")),
        new Planted(
            "polarity of the bass set wrong",
            "set-polarity-differs",
            closedBox().with("/settings", "[{\"channel\": \"bass\", \"polarity\": -1}]")),
        new Planted(
            "cable overloaded",
            "cable-overloaded",
            thickCable()
                .with("/amplifiers/0/feed/cable/area_mm2", "1.3")
                .with("/amplifiers/0/feed/permitted_drop_v", "3")
                .with("/amplifiers/0/draw/idle_a", "25")));
  }

  @ParameterizedTest
  @MethodSource("planted")
  void whatIsWrongStandsFirst(Planted planted) {
    Answer<PlanReviewResult> answer = planted.plan().review();
    assertEquals(
        planted.code(), answer.findings().get(0).code(), PlanDraft.said(answer).toString());
    assertTrue(answer.verdict().compareTo(Verdict.WARNING) >= 0);
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyExampleIsTriedHereAndSpokenOf(Path file) throws IOException {
    String readme = Files.readString(Path.of("../README.md"));
    assertTrue(readme.contains("docs/examples/" + file.getFileName()), file.toString());
    if (!PlanDraft.ofFile(file.toString()).json().has("vehicle")) {
      return; // the offer beside a plan, tried by PackageOptionsTest
    }
    List<String> tried = sound().limit(3).map(one -> one.plan().get().json().toString()).toList();
    assertTrue(tried.contains(PlanDraft.ofFile(file.toString()).json().toString()));
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(EXAMPLES)) {
      return files.sorted().toList();
    }
  }
}
