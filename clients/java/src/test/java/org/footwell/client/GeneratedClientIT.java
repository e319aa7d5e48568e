package org.footwell.client;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import org.footwell.Committed;
import org.footwell.RunningJar;
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
