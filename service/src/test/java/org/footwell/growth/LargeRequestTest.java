package org.footwell.growth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.footwell.Calculations;
import org.footwell.calculation.Calculation;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("long")
class LargeRequestTest {

  private static final LargeRequest.Source SOURCE = new LargeRequest.Source();

  private static LargeRequest of(String id) {
    Calculation<?, ?> calculation = Calculations.BY_ID.get(id).get();
    Asking<?, ?> asking = Asking.of(calculation, Duration.ofSeconds(60));
    LargeRequest large = SOURCE.of(calculation.card(), asking::refusal);
    assertEquals(Optional.empty(), asking.refusal(large.largest()), "it is answered");
    return large;
  }

  private static long different(JsonNode request, String path) {
    return Spot.given(request, path).stream().map(Spot::get).distinct().count();
  }

  @Test
  void listsBecomeAsLongAsAllowedAndNamesStayDifferent() {
    JsonNode large = of("seat-levels").largest();
    assertEquals(16, large.path("sources").size());
    assertEquals(16, different(large, "sources.*.name"));
    assertEquals(8, different(large, "seats.*.name"));
  }

  @Test
  void frequenciesRise() {
    List<Double> hz =
        Spot.given(of("impedance-fit").largest(), "readings.*.frequency_hz").stream()
            .map(spot -> spot.get().asDouble())
            .toList();
    assertEquals(2000, hz.size());
    assertEquals(hz.stream().sorted().distinct().toList(), hz);
  }

  @Test
  void everyChannelIsRecordedAtEveryMicrophone() {
    JsonNode large = of("arrival-times").largest();
    int pairs = large.path("channels").size() * large.path("microphones").size();
    assertEquals(64, pairs);
    assertEquals(pairs, large.path("recordings").size());
    assertEquals(32, different(large, "recordings.*.channel"));
  }

  @Test
  void theNetworkNamesEveryCoil() {
    JsonNode large = of("wiring-load").largest();
    assertEquals(32, large.path("coils").size());
    assertEquals(32, large.path("network").asText().split("\\|\\||\\+", -1).length);
  }

  @Test
  void channelsOfAPlanHaveDriversAndOutputsOfTheirOwn() {
    JsonNode plan = of("plan-review").largest();
    assertEquals(16, plan.path("channels").size());
    assertEquals(32, plan.path("drivers").size());
    assertEquals(8, plan.path("seats").size());
  }

  @Test
  void whatStaysSmallerSaysWhy() {
    LargeRequest.Bound coils =
        of("wiring-options").bounds().stream()
            .filter(bound -> bound.path().equals("coils"))
            .findFirst()
            .orElseThrow();
    assertTrue(coils.reached() < coils.most(), coils.toString());
    assertEquals("too-many-coils at /coils", coils.why());
  }

  @Test
  void betweenLieRequestsThatGrow() {
    LargeRequest large = of("seat-levels");
    int before = 0;
    for (double share : new double[] {0, 0.5, 1}) {
      int values = LargeRequest.values(large.between(share));
      assertTrue(values > before, "at " + share);
      before = values;
    }
    assertEquals(large.largest(), large.between(1));
  }
}
