package org.footwell.web;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.Built;
import org.footwell.web.request.Pace;

/**
 * What an operator may set, by environment variables.
 *
 * @param host address to listen on; {@code FOOTWELL_HOST}, 127.0.0.1
 * @param port port to listen on, 0 for any free one; {@code FOOTWELL_PORT}, 8080
 * @param metricsPort port at which alone the metrics are, 0 for none of their own; {@code
 *     FOOTWELL_METRICS_PORT}, 0
 * @param deadline time a calculation may take; {@code FOOTWELL_DEADLINE_MS}, 10000
 * @param bodyBytes largest request body, or row of a batch; {@code FOOTWELL_BODY_BYTES}, 1 MiB
 * @param uploadBytes largest request with recordings; {@code FOOTWELL_UPLOAD_BYTES}, 64 MiB
 * @param pace how fast a caller must send and read: standing still at most {@code
 *     FOOTWELL_PATIENCE_MS} in all, 10000, apart from that at least {@code FOOTWELL_LEAST_RATE} bytes
 *     a second, 16384, and a body within {@code FOOTWELL_BODY_MS}, 300000
 * @param stop how the service ends: not ready for {@code FOOTWELL_STOP_DELAY_MS} before the port
 *     closes, 2000, and at most {@code FOOTWELL_STOP_MS} to finish what was accepted, 30000
 * @param origins origins that browsers may call from; {@code FOOTWELL_CORS_ORIGINS}, comma
 *     separated, {@code *} for any
 */
@Built
public record Settings(
    String host,
    int port,
    int metricsPort,
    Duration deadline,
    int bodyBytes,
    int uploadBytes,
    Pace pace,
    OrderlyStop stop,
    List<String> origins) {

  /**
   * The settings of an environment.
   *
   * @throws IllegalArgumentException with every variable that cannot be used
   */
  public static Settings from(Map<String, String> environment) {
    Variables variables = new Variables(environment);
    Settings settings =
        SettingsBuilder.builder()
            .host(variables.text("HOST", "127.0.0.1"))
            .port(variables.number("PORT", 8080, 0, 65_535))
            .metricsPort(variables.number("METRICS_PORT", 0, 0, 65_535))
            .deadline(Duration.ofMillis(variables.number("DEADLINE_MS", 10_000, 1, 600_000)))
            .bodyBytes(variables.number("BODY_BYTES", 1 << 20, 1_000, 1 << 28))
            .uploadBytes(variables.number("UPLOAD_BYTES", 1 << 26, 1_000, 1 << 28))
            .pace(
                new Pace(
                    Duration.ofMillis(variables.number("PATIENCE_MS", 10_000, 1, 600_000)),
                    variables.number("LEAST_RATE", 1 << 14, 1, 1 << 30),
                    Duration.ofMillis(variables.number("BODY_MS", 300_000, 1, 86_400_000))))
            .stop(
                new OrderlyStop(
                    Duration.ofMillis(variables.number("STOP_DELAY_MS", 2_000, 0, 600_000)),
                    Duration.ofMillis(variables.number("STOP_MS", 30_000, 0, 3_600_000))))
            .origins(
                Arrays.stream(variables.text("CORS_ORIGINS", "*").split(",", -1))
                    .map(String::strip)
                    .toList())
            .build();
    variables.requireNoFaults();
    return settings;
  }
}
