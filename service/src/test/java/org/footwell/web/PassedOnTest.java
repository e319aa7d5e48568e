package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.Locale;
import java.util.StringJoiner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What one calculation answers, the next takes: over real HTTP, field by field as it is named. */
@ExtendWith(RunningServer.class)
class PassedOnTest {

  private static JsonNode answer(String id, String request) {
    Response response =
        RunningServer.given().contentType("application/json").body(request).post("/v1/" + id);
    assertEquals(200, response.statusCode(), response::asString);
    return Example.read(response.asString());
  }

  /** A pulse with a gentle start, as samples at 48 kHz. */
  private static String heard(String channel, String microphone, int at) {
    StringJoiner samples = new StringJoiner(",", "[", "]");
    for (int n = 0; n < 4800; n++) {
      double value = n < at ? 0 : 0.7 * Math.exp(-0.5 * (n - at)) * Math.cos(0.8 * (n - at));
      samples.add(String.format(Locale.ROOT, "%.6f", value));
    }
    return "{\"channel\":\"%s\",\"microphone\":\"%s\",\"recording\":{\"rate_hz\":48000,\"samples\":%s}}"
        .formatted(channel, microphone, samples);
  }

  /** Two channels at three microphone positions. */
  private static JsonNode arrivals() {
    StringJoiner recordings = new StringJoiner(",");
    for (int m = 0; m < 3; m++) {
      recordings.add(heard("left", "m" + m, 1000 + 10 * m));
      recordings.add(heard("right", "m" + m, 1090 - 8 * m));
    }
    return answer(
        "arrival-times",
        """
        {"kind": "impulse_response", "time_reference": "common_start",
         "channels": [{"id": "left"}, {"id": "right"}],
         "microphones": [{"id": "m0"}, {"id": "m1"}, {"id": "m2"}],
         "recordings": [%s], "processor": {"rate_hz": 48000}}
        """
            .formatted(recordings));
  }

  @Test
  void seatDelaysTakesArrivalsAsArrivalTimesGivesThem() {
    JsonNode measured = arrivals().get("result");
    String seats =
        """
        {"channels": [{"name": "left", "full_range": true}, {"name": "right", "full_range": true}],
         "seats": %s, "processor": {"rate_hz": 48000}, "arrivals": %s}
        """;
    JsonNode one =
        answer(
            "seat-delays", seats.formatted("[{\"name\": \"driver\"}]", measured.get("recordings")));
    for (int c = 0; c < 2; c++) {
      JsonNode expected = measured.get("channels").get(c);
      JsonNode channel = one.at("/result/channels").get(c);
      assertEquals(expected.get("delay_ms").asDouble(), channel.get("delay_ms").asDouble(), 1e-9);
      assertEquals(
          expected.get("delay_samples").asDouble(), channel.get("delay_samples").asDouble());
      assertEquals(
          expected.get("arrival_ms").asDouble(), channel.get("arrival_ms").asDouble(), 1e-9);
    }
    // Three seats named like the microphone positions: the middle one has what is in the middle.
    JsonNode three =
        answer(
            "seat-delays",
            seats.formatted(
                "[{\"name\": \"m0\"}, {\"name\": \"m1\"}, {\"name\": \"m2\"}]",
                measured.get("recordings")));
    assertEquals(72 / 48.0, three.at("/result/channels/0/delay_ms").asDouble(), 0.01);
    assertEquals(18 / 48.0, three.at("/result/seats/0/spread_ms").asDouble(), 0.02);
  }

  @Test
  void gainChainTakesTheVoltageAfterSumming() {
    JsonNode sum =
        answer(
            "signal-sum",
            """
            {"outputs": [
              {"id": "woofer", "carries": [], "clean_output_v": 6,
               "low_pass": {"kind": "linkwitz_riley", "order": 4, "frequency_hz": 2500}},
              {"id": "tweeter", "carries": [], "clean_output_v": 6,
               "high_pass": {"kind": "linkwitz_riley", "order": 4, "frequency_hz": 2500}}]}
            """);
    JsonNode volts = sum.at("/result/clean_output_v");
    assertEquals(6, volts.asDouble(), 1e-9);
    JsonNode chain =
        answer(
            "gain-chain",
            """
            {"head_unit": {"clean_output_v": %s},
             "stages": [
               {"name": "processor", "max_input_v": 12, "max_output_v": 4,
                "gain": {"min_db": -20, "max_db": 6}},
               {"name": "amplifier", "max_input_v": 8, "max_output_v": 20,
                "sensitivity": {"min_v": 0.2, "max_v": 5}}],
             "load_ohm": 4, "test_tone_dbfs": -5, "overlap_db": 5, "terminals": "open"}
            """
                .formatted(volts));
    assertEquals(6, chain.at("/result/source_output_v").asDouble(), 1e-9);
    // 20·lg(4/6).
    assertEquals(-3.5218, chain.at("/result/stages/0/gain_db").asDouble(), 1e-4);
  }

  @Test
  void crossoverFiltersTakesTheSectionsOfACorrection() {
    Example example =
        Example.notFlat()
            .filter(one -> one.id().equals("response-correction"))
            .findFirst()
            .orElseThrow();
    ArrayNode sections = (ArrayNode) example.answer().at("/result/sections");
    assertTrue(sections.size() > 0);
    ArrayNode asked = sections.deepCopy();
    for (JsonNode section : asked) {
      ((ObjectNode) section).remove("coefficients");
      ((ObjectNode) section).remove("pole_radius");
    }
    JsonNode filters =
        answer(
            "crossover-filters",
            "{\"rate_hz\": 48000, \"ways\": [{\"id\": \"left tweeter\"}], \"sections\": "
                + asked
                + "}");
    for (int i = 0; i < sections.size(); i++) {
      assertEquals(
          sections.get(i).get("coefficients"),
          filters.at("/result/sections").get(i).get("coefficients"));
    }
  }
}
