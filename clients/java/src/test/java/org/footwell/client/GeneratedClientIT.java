package org.footwell.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.footwell.Committed;
import org.footwell.RunningJar;
import org.footwell.client.model.DriverCheckAnswer;
import org.footwell.client.model.DriverCheckRequest;
import org.footwell.client.model.PlanReviewAnswer;
import org.footwell.client.model.SoundLevelAnswer;
import org.footwell.client.model.SoundLevelRequest;
import org.footwell.client.model.VehiclePlan;
import org.footwell.client.model.WiringLoadAnswer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The client generated from the contract speaks with the built service. */
class GeneratedClientIT {

  private static final String REQUEST =
      """
      {"sensitivity": {"level_db_spl": 90, "basis": "one_watt"}, "rated_ohm": 8, "power_w": 10}
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

  @BeforeAll
  static void start() throws IOException, InterruptedException {
    service = new RunningJar();
    client = new ApiClient();
    client.updateBaseUri(service.address().toString());
  }

  @AfterAll
  static void stop() {
    service.close();
  }

  @Test
  void aCalculationIsAnsweredInItsTypes() throws ApiException, IOException {
    SoundLevelRequest request =
        client.getObjectMapper().readValue(REQUEST, SoundLevelRequest.class);
    SoundLevelAnswer answer = new SoundLevelApi(client).soundLevel(request, null, null, null, null);
    assertEquals(100, answer.getResult().getLevelDbSpl(), 1e-9);
    assertEquals(SoundLevelAnswer.VerdictEnum.NOTE, answer.getVerdict());
  }

  /** The generator cannot write further entries of repeated groups; requests with them are posted. */
  @Test
  void aNetworkGoesIntoAQueryEncoded() throws ApiException {
    WiringLoadAnswer answer =
        new WiringLoadApi(client)
            .wiringLoadGet(
                "(4+4)||(4+4)",
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null);
    assertEquals(4, answer.getResult().getLoadOhm(), 1e-12);
  }

  @Test
  void theDemoPlanIsReviewed() throws ApiException, IOException {
    String plan = Files.readString(Committed.PROJECT.resolve("docs/examples/camper-van.json"));
    PlanReviewAnswer answer =
        new PlanReviewApi(client)
            .planReview(
                client.getObjectMapper().readValue(plan, VehiclePlan.class),
                null,
                null,
                null,
                null);
    assertEquals(6, answer.getResult().getChannels().size());
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
    List<Object> answers = new DriverCheckApi(client).driverCheckBatch(rows, null, null, null);
    assertEquals(rows.size(), answers.size());
    for (int i = 0; i < answers.size(); i++) {
      DriverCheckAnswer answer =
          client.getObjectMapper().convertValue(answers.get(i), DriverCheckAnswer.class);
      assertEquals(rows.get(i).getPartId(), answer.getResult().getPart());
      assertEquals(i % 2 == 0 ? null : "qts", answer.getResult().getOddOneOut());
    }
  }

  @Test
  void aRefusalCarriesItsProblem() throws IOException {
    SoundLevelRequest request =
        client.getObjectMapper().readValue(REQUEST, SoundLevelRequest.class).ratedOhm(-1.0);
    ApiException refused =
        assertThrows(
            ApiException.class,
            () -> new SoundLevelApi(client).soundLevel(request, null, null, null, null));
    assertEquals(422, refused.getCode());
    assertTrue(refused.getResponseBody().contains("/rated_ohm"));
  }
}
