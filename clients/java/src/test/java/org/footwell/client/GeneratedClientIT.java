package org.footwell.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.footwell.Committed;
import org.footwell.RunningJar;
import org.footwell.client.model.AmplifierHeatRequest;
import org.footwell.client.model.AmplifierHeatResult;
import org.footwell.client.model.DriverCheckRequest;
import org.footwell.client.model.DriverCheckResult;
import org.footwell.client.model.PlanReviewResult;
import org.footwell.client.model.SoundLevelRequest;
import org.footwell.client.model.SoundLevelResult;
import org.footwell.client.model.SupplyBudgetRequest;
import org.footwell.client.model.SupplyBudgetResult;
import org.footwell.client.model.VehiclePlan;
import org.footwell.client.model.Verdict;
import org.footwell.client.model.WiringLoadResult;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The client generated from the contract speaks with the built service. */
class GeneratedClientIT {

  private static final String REQUEST =
      """
      {"driver": {"sensitivity": {"level_db_spl": 90, "basis": "one_watt"}, "rated_ohm": 8},
       "power_w": 10}
      """;

  private static final String HEAT =
      """
      {"supply_v": 13.8, "amplifier": {"converter_efficiency": 0.85},
       "channels": [{"name": "doors", "channel_count": 4, "output_class": "class_ab", "rail_v": 32,
         "drop_v": 3, "load_ohm": 3.2, "phase_deg": 40, "quiescent_current_a": 0.05}]}
      """;

  private static final String DRIVER =
      """
      {"rated_ohm": 4, "re_ohm": 3.4, "fs_hz": 38, "qms": 7.09, "qes": 0.56, "qts": 0.52,
       "vas_l": 43.2, "sd_cm2": 330, "xmax_mm": 9, "xmax_basis": "geometric", "bl_tm": 9.5,
       "mms_g": 62, "cms_mm_per_n": 0.28, "rms_kg_per_s": 2.1, "le_mh": 1.2,
       "sensitivity": {"level_db_spl": 92, "basis": "two_point_eight_three_volt"},
       "continuous_power_w": 250, "peak_power_w": 500, "nominal_mm": 250, "outside_mm": 262,
       "cutout_mm": 235, "mounting_depth_mm": 110, "mass_g": 3100, "temperature_c": 20}
      """;

  /** What the service reads whole before it answers. */
  private static final int READ_FIRST = 2 << 20;

  private static RunningJar service;
  private static ApiClient client;
  private static FootwellApi api;

  @BeforeAll
  static void start() throws IOException, InterruptedException {
    service = new RunningJar();
    client = new ApiClient();
    client.updateBaseUri(service.address().toString());
    api = new FootwellApi(client);
  }

  @AfterAll
  static void stop() {
    service.close();
  }

  @Test
  void aCalculationIsAnsweredInItsTypes() throws ApiException, IOException {
    SoundLevelRequest request =
        client.getObjectMapper().readValue(REQUEST, SoundLevelRequest.class);
    Answer<SoundLevelResult> answer = api.soundLevel(request);
    assertEquals(100, answer.result().getLevelDbSpl(), 1e-9);
    assertEquals(Verdict.NOTE, answer.verdict());
    assertNull(answer.workings());
  }

  @Test
  void workingsComeWhenTheyAreAskedFor() throws ApiException, IOException {
    SoundLevelRequest request =
        client.getObjectMapper().readValue(REQUEST, SoundLevelRequest.class);
    Answer<SoundLevelResult> answer =
        api.soundLevel(request, new FootwellApi.SoundLevelQuery().workings(true));
    assertFalse(answer.workings().isEmpty());
  }

  @Test
  void aNetworkGoesIntoAQueryEncoded() throws ApiException {
    Answer<WiringLoadResult> answer =
        api.wiringLoadGet(new FootwellApi.WiringLoadGetQuery().network("(4+4)||(4+4)"));
    assertEquals(4, answer.result().getLoadOhm(), 1e-12);
  }

  @Test
  void furtherEntriesOfAGroupGoIntoAQueryByTheirNames() throws ApiException {
    Answer<WiringLoadResult> answer =
        api.wiringLoadGet(
            new FootwellApi.WiringLoadGetQuery()
                .network("front+rear")
                .coils0Name("front")
                .coils0RatedOhm(4.0)
                .furtherEntries(Map.of("coils.1.name", "rear", "coils.1.rated_ohm", "2")));
    assertEquals(6, answer.result().getLoadOhm(), 1e-12);
  }

  /** The envelopes are written by hand, since the generator knows no generics. */
  @Test
  void theEnvelopesAreThoseOfTheContract() throws IOException {
    JsonNode schemas =
        new YAMLMapper()
            .readTree(Committed.PROJECT.resolve("openapi/footwell-v1.yaml").toFile())
            .at("/components/schemas");
    assertEquals(names(schemas.at("/SoundLevelAnswer/properties")), components(Answer.class));
    assertEquals(names(schemas.at("/SoundLevelOfPlan/properties")), components(OfPlan.class));
    Set<String> row = names(schemas.at("/Row/properties"));
    row.add("result");
    assertEquals(row, components(Row.class));
  }

  private static Set<String> names(JsonNode properties) {
    Set<String> names = new TreeSet<>();
    properties.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static Set<String> components(Class<? extends Record> envelope) {
    Set<String> names = new TreeSet<>();
    for (RecordComponent component : envelope.getRecordComponents()) {
      JsonProperty named = component.getAccessor().getAnnotation(JsonProperty.class);
      names.add(named == null ? component.getName() : named.value());
    }
    return names;
  }

  @Test
  void theDemoPlanIsReviewed() throws ApiException, IOException {
    String plan = Files.readString(Committed.PROJECT.resolve("docs/examples/camper-van.json"));
    Answer<PlanReviewResult> answer =
        api.planReview(client.getObjectMapper().readValue(plan, VehiclePlan.class));
    assertEquals(6, answer.result().getChannels().size());
  }

  /** What only a request or a result has is named within it. */
  @Test
  void partsAreNestedInWhatTheyArePartsOf() throws ApiException, IOException {
    AmplifierHeatRequest request =
        client.getObjectMapper().readValue(HEAT, AmplifierHeatRequest.class);
    AmplifierHeatRequest.ChannelStage stage = request.getChannels().get(0);
    assertEquals(
        AmplifierHeatRequest.ChannelStage.OutputClassEnum.CLASS_AB, stage.getOutputClass());
    stage.name("front");
    AmplifierHeatResult.ChannelHeat heat = api.amplifierHeat(request).result().getChannels().get(0);
    assertEquals("front", heat.getName());
  }

  /** The request that was read from the plan is answered too, in its own type. */
  @Test
  void aCalculationPutToThePlanHasItsRequestBesideTheResult() throws ApiException, IOException {
    String text = Files.readString(Committed.PROJECT.resolve("docs/examples/camper-van.json"));
    VehiclePlan plan = client.getObjectMapper().readValue(text, VehiclePlan.class);
    OfPlan<SupplyBudgetRequest, SupplyBudgetResult> answer =
        api.supplyBudgetOfPlan(plan, new FootwellApi.SupplyBudgetOfPlanQuery());
    assertEquals(answer.result(), api.supplyBudget(answer.request()).result());
  }

  /** Few enough to be read through; parts that are no longer nested would double the files. */
  @Test
  void theClientStaysSmall() throws IOException {
    Path client = Committed.PROJECT.resolve("clients/java");
    List<Path> files = new ArrayList<>(sources(client.resolve("src/main")));
    files.addAll(sources(client.resolve("target/generated-sources/openapi/src/main")));
    long lines = 0;
    for (Path file : files) {
      lines += Files.readAllLines(file).size();
    }
    assertTrue(files.size() > 100 && files.size() <= 300, files.size() + " files");
    assertTrue(lines <= 90_000, lines + " lines");
  }

  private static List<Path> sources(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> file.toString().endsWith(".java")).toList();
    }
  }

  /** As many rows as the page about catalogues says to send at a time, each with every figure. */
  @Test
  void aBatchOfTheSizeToSendIsAnsweredRowByRow() throws ApiException, IOException {
    List<DriverCheckRequest> rows = new ArrayList<>();
    for (int i = 0; i < 2000; i++) {
      rows.add(
          client
              .getObjectMapper()
              .readValue(DRIVER, DriverCheckRequest.class)
              .partId("driver " + i)
              .qts(i % 2 == 0 ? 0.52 : 0.47));
    }
    assertTrue(client.getObjectMapper().writeValueAsBytes(rows).length < READ_FIRST);
    List<Row<DriverCheckResult>> answers = api.driverCheckBatch(rows);
    assertEquals(rows.size(), answers.size());
    for (int i = 0; i < answers.size(); i++) {
      DriverCheckResult result = answers.get(i).answer().result();
      assertEquals(rows.get(i).getPartId(), result.getPart());
      assertEquals(i % 2 == 0 ? null : DriverCheckResult.OddOneOutEnum.QTS, result.getOddOneOut());
    }
  }

  @Test
  void aFaultyRowIsAProblemWithItsLine() throws ApiException, IOException {
    SoundLevelRequest good = client.getObjectMapper().readValue(REQUEST, SoundLevelRequest.class);
    SoundLevelRequest bad = client.getObjectMapper().readValue(REQUEST, SoundLevelRequest.class);
    bad.getDriver().ratedOhm(-1.0);
    List<Row<SoundLevelResult>> rows = api.soundLevelBatch(List.of(good, bad));
    assertTrue(rows.get(0).answered());
    assertNull(rows.get(0).problem());
    assertNull(rows.get(1).answer());
    assertEquals(2, rows.get(1).problem().getLine());
    assertEquals("/driver/rated_ohm", rows.get(1).problem().getErrors().get(0).getPointer());
  }

  @Test
  void aRefusalCarriesItsProblem() throws IOException {
    SoundLevelRequest request =
        client.getObjectMapper().readValue(REQUEST, SoundLevelRequest.class);
    request.getDriver().ratedOhm(-1.0);
    ApiException refused = assertThrows(ApiException.class, () -> api.soundLevel(request));
    assertEquals(422, refused.getCode());
    assertTrue(refused.getResponseBody().contains("/driver/rated_ohm"));
  }
}
