package org.footwell.web.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.slf4j.event.Level;

class LogFormTest {

  private static final Instant WHEN = Instant.parse("2026-11-30T01:02:03Z");
  private static final String HOSTILE = "a\nb\r\u0085\u2028\"c\\ \u001b[31m \ud800 ü";

  @Test
  void aPlainEntryIsOneLineForPeople() {
    Map<String, Object> details = new LinkedHashMap<>();
    details.put("status", 200);
    details.put("ms", 1.5);
    assertEquals(
        "2026-11-30T01:02:03.000Z INFO  Server - listening status=200 ms=1.5",
        LogForm.PLAIN.text(new LogEntry(WHEN, Level.INFO, "Server", "listening", details, null)));
  }

  @Test
  void nothingThatIsSaidBreaksAPlainLine() {
    String text = LogForm.PLAIN.text(entry(null));
    assertEquals(1, text.lines().count());
    assertEquals(
        text,
        text.codePoints()
            .filter(c -> !Character.isISOControl(c))
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString());
    assertTrue(text.contains("a\\u000ab\\u000d\\u0085\\u2028\"c"), text);
  }

  @Test
  void whatFailedStandsIndentedSoThatItForgesNoLine() {
    List<String> lines =
        LogForm.PLAIN.text(entry(new IllegalStateException(HOSTILE))).lines().toList();
    assertTrue(lines.size() > 2);
    for (String line : lines.subList(1, lines.size())) {
      assertEquals('\t', line.charAt(0), line);
    }
  }

  @Test
  void aJsonEntryIsOneLineThatSaysTheSame() throws IOException {
    String text = LogForm.JSON.text(entry(new IllegalStateException(HOSTILE)));
    assertEquals(1, text.lines().count());
    JsonNode read = new ObjectMapper().readTree(text);
    assertEquals("2026-11-30T01:02:03.000Z", read.path("time").asText());
    assertEquals("warn", read.path("level").asText());
    assertEquals(HOSTILE, read.path("message").asText());
    assertEquals(HOSTILE, read.path("detail").asText());
    assertTrue(read.path("failure").asText().contains("LogFormTest"));
  }

  private static LogEntry entry(Throwable failure) {
    return new LogEntry(WHEN, Level.WARN, "Some", HOSTILE, Map.of("detail", HOSTILE), failure);
  }
}
