package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Fault;
import org.footwell.calculation.Refused;
import org.footwell.calculation.text.Reader;
import org.footwell.electrical.amplifier.RailMatch;
import org.footwell.vehicle.packages.PackageOptions;
import org.footwell.vehicle.questions.PlanDocument;
import org.footwell.web.request.Trees;
import org.junit.jupiter.api.Test;

/** A plan with many faults of every kind is told all of them in one answer, each with its place. */
class BadPlanTest {

  private static final List<String> FAULTS =
      List.of(
          "/channels/0/amplifier",
          "/channels/1/network",
          "/channels/2/outputs/0",
          "/channels/3/network",
          "/channels/4/high_pass/order",
          "/crossovers/0",
          "/crossovers/1/upper",
          "/crossovers/2",
          "/drivers/0/part",
          "/drivers/3/id",
          "/seats/0",
          "/settings/0/channel");

  private static PlanDraft bad() {
    return PlanDraft.van()
        .with("/channels/0/amplifier", "\"mian\"")
        .with("/channels/1/network", "\"front_right_woofer %2B front_right_woofer\"")
        .without("/channels/1/branches")
        .with("/channels/2/outputs/0", "\"out_77\"")
        .with("/channels/3/network", "\"rear_left_coaxial || sub_left.3\"")
        .with("/channels/4/high_pass/order", "3")
        .with("/crossovers/1/upper", "\"front_rihgt\"")
        .with(
            "/crossovers/-",
            "{\"lower\": \"front_left\", \"upper\": \"bass\", \"frequency_hz\": 80}")
        .with("/drivers/0/part", "\"woofer_61\"")
        .with("/drivers/3/id", "\"front_left_tweeter\"")
        .with("/seats/0/position/x_m", "15")
        .with("/settings", "[{\"channel\": \"rear\", \"trim_db\": -3}]");
  }

  private static Set<String> pointers(Refused refused) {
    Set<String> pointers = new TreeSet<>();
    refused.faults().stream().map(Fault::pointer).forEach(pointers::add);
    return pointers;
  }

  @Test
  void theReviewTellsAllOfThem() {
    Refused refused = assertThrows(Refused.class, () -> bad().review());
    assertEquals(new TreeSet<>(FAULTS), pointers(refused));
  }

  @Test
  void aQuestionPutToThePlanTellsAllOfThem() {
    Refused refused =
        assertThrows(
            Refused.class,
            () ->
                new Engine()
                    .answer(
                        new RailMatch(),
                        new PlanDocument(),
                        bad().read(),
                        "/channels/front_left",
                        false,
                        Duration.ofSeconds(9),
                        Reader.ANYONE));
    assertEquals(new TreeSet<>(FAULTS), pointers(refused));
  }

  @Test
  void valuesThatNothingFollowsFromAreToldBesideThem() {
    PlanDraft bad =
        PlanDraft.van()
            .without("/signal")
            .with("/drivers/0/part", "\"woofer_61\"")
            .with("/settings", "[{\"channel\": \"bass\", \"gain_v\": 12}]")
            .with(
                "/channels/5/equaliser",
                "[{\"kind\": \"peak\", \"frequency_hz\": 24000, \"q\": 1, \"gain_db\": -3}]");
    Refused refused = assertThrows(Refused.class, bad::review);
    assertEquals(
        new TreeSet<>(
            List.of(
                "/channels/5/equaliser/0/frequency_hz", "/drivers/0/part", "/settings/0/gain_v")),
        pointers(refused));
  }

  @Test
  void aMisspeltPartIsNotToldAsACoilThatIsMissing() {
    PlanDraft bad = PlanDraft.van().with("/drivers/7/part", "\"sub_52_dual\"");
    assertEquals(List.of("dangling-reference /drivers/7/part"), bad.faults());
  }

  @Test
  void aChannelWithoutADriverIsTold() {
    PlanDraft bad = PlanDraft.van().with("/channels/2/network", "\"4 + 4\"");
    assertEquals(List.of("channel-without-driver /channels/2/network"), bad.faults());
  }

  @Test
  void whatIsOutOfBoundsIsNotFollowedAnyFurther() {
    PlanDraft bad = PlanDraft.van().with("/amplifiers/0/outputs/0/output_count", "1000000000");
    assertEquals(List.of("not-allowed /amplifiers/0/outputs/0/output_count"), bad.faults());
  }

  @Test
  void oneEarAloneIsToldOnce() {
    PlanDraft bad =
        PlanDraft.van()
            .without("/seats/1/position")
            .with("/seats/1/left_ear", "{\"x_m\": 0, \"y_m\": -0.3, \"z_m\": 1.2}");
    assertEquals(List.of("needed-beside /seats/1/right_ear"), bad.faults());
  }

  private static final Set<String> OF_EVERY_KIND =
      Set.of(
          "unknown-field /colour",
          "not-allowed /amplifiers/0/outputs/0/output_count",
          "dangling-reference /drivers/0/part",
          "currency-unknown /quote/currency",
          "day-not-in-calendar /quote/valid_until");

  /** One of form, one of bounds, one between fields, and two of what a text stands for. */
  private static PlanDraft badInEveryWay() {
    return PlanDraft.van()
        .with("/colour", "\"red\"")
        .with("/amplifiers/0/outputs/0/output_count", "1000000000")
        .with("/drivers/0/part", "\"woofer_61\"")
        .with("/quote/currency", "\"QQQ\"")
        .with("/quote/valid_until", "\"2026-02-30\"");
  }

  private static Set<String> told(Calculation<?, ?> calculation, JsonNode request) {
    Object untyped = Trees.MAPPER.convertValue(request, Object.class);
    Refused refused =
        assertThrows(
            Refused.class, () -> new Engine().bind(calculation.card().request(), untyped, false));
    return refused.faults().stream()
        .map(fault -> fault.code() + " " + fault.pointer())
        .collect(Collectors.toSet());
  }

  @Test
  void formBoundsRulesDaysAndCurrenciesAreToldTogether() {
    assertEquals(OF_EVERY_KIND, told(PlanDraft.REVIEW, badInEveryWay().json()));
  }

  @Test
  void likewiseWhereThePlanStandsWithinARequest() {
    ObjectNode request = Trees.MAPPER.createObjectNode();
    request.set("plan", badInEveryWay().json());
    Set<String> inPlan = new HashSet<>();
    OF_EVERY_KIND.forEach(fault -> inPlan.add(fault.replace(" ", " /plan")));
    Set<String> told = told(new PackageOptions(), request);
    told.removeIf(fault -> !fault.contains(" /plan/"));
    assertEquals(inPlan, told);
  }

  @Test
  void aQuoteThatEndsBeforeItBeginsIsToldBesideABound() {
    PlanDraft bad =
        PlanDraft.van()
            .with("/amplifiers/0/outputs/0/output_count", "1000000000")
            .with("/quote/valid_until", "\"2026-01-31\"");
    assertEquals(
        List.of(
            "not-allowed /amplifiers/0/outputs/0/output_count",
            "valid-before-date /quote/valid_until"),
        bad.faults());
  }

  /** What a currency is called hinders no look at the outputs. */
  @Test
  void anUnknownCurrencyIsToldBesideWhatDoesNotHangTogether() {
    PlanDraft bad =
        PlanDraft.van()
            .with("/quote/currency", "\"QQQ\"")
            .with("/channels/2/outputs/0", "\"out_1\"");
    assertEquals(
        List.of("currency-unknown /quote/currency", "output-used-twice /channels/2/outputs/0"),
        bad.faults());
  }
}
