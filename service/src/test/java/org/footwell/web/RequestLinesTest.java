package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.MainProcess;
import org.junit.jupiter.api.Test;

class RequestLinesTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String TRACE = "0af7651916cd43dd8448eb211c80319c";
  private static final String LEVEL =
      """
      {"driver": {"name": "SECRET", "rated_ohm": 4, "sensitivity": {"level_db_spl": 90,
        "basis": "one_watt"}}, "power_w": 50}""";

  private static final Map<String, String> EACH_AS_JSON =
      Map.of(
          "FOOTWELL_LOG", "json",
          "FOOTWELL_LOG_REQUESTS", "yes",
          "FOOTWELL_PORT", "0",
          "FOOTWELL_STOP_DELAY_MS", "0",
          "FOOTWELL_OF_ANOTHER_PROGRAM", "a\nline");

  private static final String LEVEL_ASKED = "POST /v1/sound-level 200";
  private static final String TRACED = "GET none 404";

  @Test
  void everyLineIsJsonAndEachRequestHasOneWithoutWhatItsCallerSent()
      throws IOException, InterruptedException {
    List<JsonNode> entries = new ArrayList<>();
    try (MainProcess service = new MainProcess(EACH_AS_JSON)) {
      int port = service.port();
      send(port, "POST /v1/sound-level?lang=de", "X-Request-Id: order-17", LEVEL);
      send(port, "POST /v1/sound-level/batch", "Content-Type: application/x-ndjson", "{}\n{}\n");
      send(port, "GET /v1/SECRET?SECRET=1", "X-Request-Id: a b\", \"level\": \"error", "");
      send(
          port,
          "GET /SECRET/../%0aSECRET",
          "traceparent: 00-" + TRACE + "-b7ad6b7169203331-01",
          "");
      send(port, "SECRET /health/live", "X-Request-Id: " + "x".repeat(65), "");
      send(port, "GET /health/live", "X-Request-Id: \u001b[31mred", "");
      send(port, "GET /problems/SECRET", "X-Request-Id:", "");
      service.terminate();
      assertEquals(143, service.status());
      assertFalse(service.printed().contains("SECRET"), service.printed());
      for (String line : service.lines()) {
        entries.add(JSON.readTree(line));
      }
    }
    for (JsonNode entry : entries) {
      assertTrue(entry.path("time").asText().matches("\\d{4}-.*\\.\\d{3}Z"), entry.toString());
      assertTrue(Set.of("info", "warn").contains(entry.path("level").asText()), entry.toString());
    }
    // A line is written when its answer is gone: that of the next request may come before it.
    Map<String, JsonNode> requests = new HashMap<>();
    entries.stream()
        .filter(one -> one.path("message").asText().equals("answered"))
        .forEach(one -> assertNull(requests.put(inShort(one), one), one::toString));
    assertEquals(
        Set.of(
            LEVEL_ASKED,
            "POST /v1/sound-level/batch 200",
            "GET /v1/{calculation} 404",
            TRACED,
            "none none 405",
            "GET none 400",
            "GET /problems/{type} 404"),
        requests.keySet());
    assertEquals("order-17", requests.get(LEVEL_ASKED).path("request_id").asText());
    assertEquals(TRACE, requests.get(TRACED).path("trace_id").asText());
    requests.forEach(
        (name, request) -> {
          boolean own = name.equals(LEVEL_ASKED);
          assertEquals(!own, request.path("request_id").asText().matches("[0-9a-f]{16}"), name);
          assertTrue(request.path("ms").isNumber(), request.toString());
          boolean seen = request.path("status").asInt() != 400;
          assertEquals(seen, request.path("bytes").asInt() > 10, request.toString());
        });
  }

  private static String inShort(JsonNode request) {
    return request.path("method").asText()
        + " "
        + request.path("route").asText()
        + " "
        + request.path("status").asText();
  }

  private static void send(int port, String request, String header, String body)
      throws IOException {
    try (RawConnection caller = new RawConnection(port)) {
      caller.send(
          request
              + " HTTP/1.1\r\nHost: footwell\r\nConnection: close\r\n"
              + (header.startsWith("Content-Type") ? "" : "Content-Type: application/json\r\n")
              + header
              + "\r\nContent-Length: "
              + body.length()
              + "\r\n\r\n"
              + body);
      caller.readAll();
    }
  }
}
