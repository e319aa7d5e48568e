package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.footwell.web.limits.Admission;
import org.footwell.web.limits.CallerRules;
import org.junit.jupiter.api.Test;

/** What people read about limits, held against the settings. */
class DocumentedLimitsTest {

  private static final Path OPERATING = Path.of("../docs/operating.md");
  private static final Path BALANCER = Path.of("../docker/nginx.conf");
  private static final Pattern ROW =
      Pattern.compile("(?m)^\\| `(FOOTWELL_[A-Z_]+)` \\|.*\\| (.*) \\|$");

  private static final Settings SHIPPED = Settings.from(Map.of());

  /** An environment in which nothing is set, and which notes what is looked for. */
  private static final class Asked extends HashMap<String, String> {
    private static final long serialVersionUID = 1L;
    private final TreeSet<String> names = new TreeSet<>();

    @Override
    public String getOrDefault(Object name, String standard) {
      names.add((String) name);
      return super.getOrDefault(name, standard);
    }
  }

  @Test
  void everySettingIsInTheGuideWithItsStandard() throws IOException {
    Map<String, String> documented = new LinkedHashMap<>();
    for (MatchResult row : ROW.matcher(Files.readString(OPERATING)).results().toList()) {
      documented.put(row.group(1), row.group(2).replace("`", "").strip());
    }
    Asked asked = new Asked();
    Settings.from(asked);
    assertEquals(asked.names, new TreeSet<>(documented.keySet()));
    documented.values().removeIf(standard -> standard.isEmpty() || standard.equals("none"));
    assertEquals(SHIPPED, Settings.from(documented));
    assertEquals(CallerRules.NONE, SHIPPED.callers());
  }

  @Test
  void theContractStatesTheLimitsOfAServiceAsShipped() {
    JsonNode contract = ContractDocument.built().root().at("/info/description");
    String text = contract.asText();
    for (String limit :
        new String[] {
          "a body or a row of a batch holds at most " + (SHIPPED.bodyBytes() >> 20) + " MiB",
          "a request with recordings " + (SHIPPED.uploadBytes() >> 20) + " MiB",
          "A calculation may take " + SHIPPED.deadline().toSeconds() + " s",
          "one for every " + Admission.CALL_MS + " ms",
        }) {
      assertTrue(text.contains(limit), limit);
    }
  }

  @Test
  void theBalancerPassesWhatTheServiceTakesAndWaitsForItLongEnough() throws IOException {
    long passed = number("client_max_body_size ([1-9][0-9]*)m") << 20;
    assertTrue(passed > SHIPPED.uploadBytes(), passed + " bytes");
    Duration waits = Duration.ofSeconds(number("proxy_read_timeout ([0-9]+)s"));
    assertTrue(waits.compareTo(SHIPPED.deadline().multipliedBy(2)) > 0, waits::toString);
    Duration headers = Duration.ofSeconds(number("client_header_timeout ([0-9]+)s"));
    assertEquals(SHIPPED.pace().patience(), headers);
  }

  private static long number(String setting) throws IOException {
    return Pattern.compile(setting)
        .matcher(Files.readString(BALANCER))
        .results()
        .mapToLong(found -> Long.parseLong(found.group(1)))
        .max()
        .orElseThrow();
  }
}
