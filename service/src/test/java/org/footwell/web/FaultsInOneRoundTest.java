package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.footwell.Calculations;
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

  /** What only comes out when a request is worked out, and of what. */
  private static final Map<String, String> WORKED_OUT =
      Map.ofEntries(
          Map.entry("alignment-not-found", "the alignment of driver and losses"),
          Map.entry("band-outside-responses", "the responses that were read"),
          Map.entry("box-without-effect", "the fits of two tables"),
          Map.entry("channel-silent", "the model of a plan"),
          Map.entry("draw-impossible", "what the stages draw by their model"),
          Map.entry("fit-failed", "the fit of a table"),
          Map.entry("longest-too-short", "the volume that was found"),
          Map.entry("mass-without-effect", "the fits of two tables"),
          Map.entry("port-fills-box", "the port that was found for a tuning"),
          Map.entry("qtc-unreachable", "the alignment of driver and losses"),
          Map.entry("ring-does-not-fit", "the ring that was laid out"),
          Map.entry("sum-silent", "the responses taken together"),
          Map.entry("tuning-unreachable", "the volume that was found, with its port"));

  /** A number out of its bounds for a request of each calculation, that none of its rules is about. */
  private static final Map<String, String> OUT_OF_BOUNDS =
      Map.ofEntries(
          Map.entry("wiring-load", "/voltage_v"),
          Map.entry("wiring-options", "/list_count"),
          Map.entry("rail-match", "/supply_v"),
          Map.entry("amplifier-ratings", "/amplifier/mass_g"),
          Map.entry("amplifier-heat", "/noise_crest_factor_db"),
          Map.entry("gain-chain", "/load_ohm"),
          Map.entry("impedance-fit", "/sd_cm2"),
          Map.entry("passive-network", "/voltage_v"),
          Map.entry("passive-filter", "/power_w"),
          Map.entry("supply-cable", "/fuse_loading"),
          Map.entry("supply-budget", "/cranking_v"),
          Map.entry("impedance-curve", "/driver/le_mh"),
          Map.entry("closed-box", "/temperature_c"),
          Map.entry("vented-box", "/temperature_c"),
          Map.entry("crossover-plan", "/distance_m"),
          Map.entry("crossover-filters", "/ways/0/gain_db"),
          Map.entry("seat-delays", "/temperature_c"),
          Map.entry("seat-levels", "/incoherent_above_hz"),
          Map.entry("sound-level", "/displacement_hz"),
          Map.entry("sound-exposure", "/periods/0/peak_level_dbc"),
          Map.entry("equal-loudness", "/cap_db"),
          Map.entry("adapter-ring", "/opening/depth_mm"),
          Map.entry("box-panels", "/board_density_kg_per_m3"),
          Map.entry("bass-rolloff", "/most_gain_db"),
          Map.entry("signal-sum", "/tolerance_db"),
          Map.entry("arrival-times", "/temperature_c"),
          Map.entry("level-and-balance", "/from_hz"),
          Map.entry("response-correction", "/moving_dip_db"),
          Map.entry("loudspeaker-sum", "/delay_range_ms"),
          Map.entry("clip-point", "/limit_percent"),
          Map.entry("driver-comparison", "/temperature_c"),
          Map.entry("plan-review", "/seats/0/weight"),
          Map.entry("plan-curves", "/seats/0/weight"),
          Map.entry("plan-questions", "/seats/0/weight"),
          Map.entry("package-options", "/plan/seats/0/weight"));

  static Stream<CodeRequest> seenInTheRequest() throws Exception {
    return refused().filter(request -> !WORKED_OUT.containsKey(request.code()));
  }

  static Stream<CodeRequest> workedOut() throws Exception {
    return refused().filter(request -> WORKED_OUT.containsKey(request.code()));
  }

  private static Stream<CodeRequest> refused() throws Exception {
    return CodeRequest.all()
        .filter(request -> !request.ofCore() && !request.isTable() && !request.hasFiles())
        .filter(FaultsInOneRoundTest::isRefusal);
  }

  /** Whether its code is one that a request is refused for as it stands. */
  private static boolean isRefusal(CodeRequest request) {
    return Stream.ofNullable(Calculations.BY_ID.get(request.calculation()))
        .flatMap(calculation -> calculation.get().card().refusals().stream())
        .anyMatch(code -> code.code().equals(request.code()));
  }

  @ParameterizedTest
  @MethodSource("seenInTheRequest")
  void aFaultIsToldBesideAnUnknownFieldAndABound(CodeRequest request) throws Exception {
    Set<String> told = toldBesides(request);
    assertTrue(told.contains(request.code()), () -> request + ": " + told);
  }

  @ParameterizedTest
  @MethodSource("workedOut")
  void noneIsListedAsWorkedOutThatIsToldAtOnce(CodeRequest request) throws Exception {
    Set<String> told = toldBesides(request);
    assertFalse(told.contains(request.code()), () -> request + ": " + told);
  }

  /** The codes told where a field that nobody knows and a number out of its bounds are put in. */
  private static Set<String> toldBesides(CodeRequest request)
      throws IOException, InterruptedException {
    ObjectNode bad = request.request().deepCopy();
    bad.put("colour", "red");
    String bound =
        Objects.requireNonNull(OUT_OF_BOUNDS.get(request.calculation()), "needs a number to spoil");
    int last = bound.lastIndexOf('/');
    ((ObjectNode) bad.at(bound.substring(0, last))).put(bound.substring(last + 1), -1e6);
    CodeRequest.Reply reply = request.post(bad.toString());
    assertEquals(422, reply.status(), reply.body()::toString);
    Set<String> told = new TreeSet<>();
    Set<String> places = new TreeSet<>();
    for (JsonNode error : reply.body().get("errors")) {
      told.add(error.get("code").asText());
      places.add(error.get("code").asText() + " " + error.get("pointer").asText());
    }
    assertTrue(
        places.containsAll(Set.of("unknown-field /colour", "not-allowed " + bound)),
        () -> request + ": " + places);
    return told;
  }
}
