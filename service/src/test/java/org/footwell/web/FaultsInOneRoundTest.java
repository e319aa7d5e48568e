package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.footwell.Calculations;
import org.footwell.calculation.FaultCode;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever a calculation refuses a request for is told beside a field that nobody knows and a number out
 * of its bounds: no caller needs a second round for what can be seen in the request. Files that go with a
 * request are read before it.
 */
@ExtendWith(RunningServer.class)
class FaultsInOneRoundTest {

  /** What only comes out when a request is worked out. */
  private static final Set<String> WORKED_OUT =
      Set.of(
          "alignment-not-found",
          "band-outside-responses",
          "channel-silent",
          "drop-above-supply",
          "fixed-resistance-too-high",
          "kept-parts-unlike",
          "longest-too-short",
          "nothing-offered-for-slot",
          "port-fills-box",
          "power-cannot-pass",
          "qtc-unreachable",
          "slot-not-on-a-channel",
          "slot-shares-a-network",
          "sum-silent",
          "target-outside-bands",
          "too-close",
          "tuning-unreachable");

  /** A number out of its bounds for a request of each calculation, that none of its rules is about. */
  private static final Map<String, String> OUT_OF_BOUNDS =
      Map.ofEntries(
          Map.entry("wiring-load", "/voltage_v"),
          Map.entry("wiring-options", "/list_count"),
          Map.entry("passive-network", "/voltage_v"),
          Map.entry("passive-filter", "/power_w"),
          Map.entry("supply-cable", "/fuse_loading"),
          Map.entry("impedance-curve", "/driver/le_mh"),
          Map.entry("closed-box", "/temperature_c"),
          Map.entry("vented-box", "/temperature_c"),
          Map.entry("crossover-plan", "/distance_m"),
          Map.entry("crossover-filters", "/ways/0/gain_db"),
          Map.entry("seat-delays", "/temperature_c"),
          Map.entry("seat-levels", "/incoherent_above_hz"),
          Map.entry("signal-sum", "/tolerance_db"),
          Map.entry("arrival-times", "/temperature_c"),
          Map.entry("clip-point", "/limit_percent"),
          Map.entry("driver-comparison", "/temperature_c"),
          Map.entry("plan-review", "/seats/0/weight"),
          Map.entry("plan-curves", "/seats/0/weight"),
          Map.entry("plan-questions", "/seats/0/weight"),
          Map.entry("package-options", "/plan/seats/0/weight"));

  static Stream<CodeRequest> refused() throws Exception {
    return CodeRequest.all()
        .filter(request -> OUT_OF_BOUNDS.containsKey(request.calculation()))
        .filter(request -> !request.ofCore() && !request.isTable() && !request.hasFiles())
        .filter(FaultsInOneRoundTest::ofRequest);
  }

  /** Whether its code is one that a request is refused for as it stands. */
  private static boolean ofRequest(CodeRequest request) {
    Stream<FaultCode> refusals =
        Calculations.BY_ID.get(request.calculation()).get().card().refusals().stream();
    return refusals.anyMatch(code -> code.code().equals(request.code()))
        && !WORKED_OUT.contains(request.code());
  }

  @ParameterizedTest
  @MethodSource("refused")
  void aFaultIsToldBesideAnUnknownFieldAndABound(CodeRequest request)
      throws IOException, InterruptedException {
    ObjectNode bad = request.request().deepCopy();
    bad.put("colour", "red");
    String bound = OUT_OF_BOUNDS.get(request.calculation());
    int last = bound.lastIndexOf('/');
    ((ObjectNode) bad.at(bound.substring(0, last))).put(bound.substring(last + 1), -1e6);
    CodeRequest.Reply reply = request.post(bad.toString());
    assertEquals(422, reply.status(), reply.body()::toString);
    Set<String> told = new TreeSet<>();
    for (JsonNode error : reply.body().get("errors")) {
      told.add(error.get("code").asText());
      told.add(error.get("code").asText() + " " + error.get("pointer").asText());
    }
    assertTrue(
        told.containsAll(Set.of(request.code(), "unknown-field /colour", "not-allowed " + bound)),
        () -> request + ": " + told);
  }
}
