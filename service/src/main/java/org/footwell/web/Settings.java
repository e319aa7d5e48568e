package org.footwell.web;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.footwell.calculation.Built;
import org.footwell.web.limits.CallerRules;
import org.footwell.web.limits.Keys;
import org.footwell.web.limits.Proxies;
import org.footwell.web.log.LogForm;
import org.footwell.web.log.LogProvider;
import org.footwell.web.request.Pace;

/**
 * What an operator may set, by environment variables. What each means, its standard and its bounds are
 * said where it is read.
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
    List<String> origins,
    CallerRules callers,
    boolean logRequests) {

  /** Answers to a question. */
  private enum Wanted {
    NO,
    YES
  }

  /**
   * The settings of an environment. Log lines have the form it asks for from then on.
   *
   * @throws IllegalArgumentException with every variable that cannot be used
   */
  public static Settings from(Map<String, String> environment) {
    Variables variables = new Variables(environment);
    Settings settings = read(variables);
    variables.requireNoFaults();
    return settings;
  }

  /** Every setting with its standard, what it sets and what it may be. */
  public static String help() {
    return known().stream()
        .map(one -> "  %s=%s\n      %s\n".formatted(one.name(), one.standard(), one.meaning()))
        .collect(Collectors.joining());
  }

  /** The same as rows of a table in Markdown. */
  public static List<String> table() {
    return known().stream()
        .map(
            one ->
                "| `%s` | %s | %s |"
                    .formatted(
                        one.name(),
                        one.meaning(),
                        one.standard().isEmpty() ? "none" : one.standard()))
        .toList();
  }

  private static List<Variables.Known> known() {
    Variables variables = new Variables(Map.of());
    read(variables);
    return variables.known();
  }

  private static Settings read(Variables variables) {
    // First of all, so that what is said about the others has it already.
    LogProvider.writeAs(variables.about("form of log lines").choice("LOG", LogForm.PLAIN));
    return SettingsBuilder.builder()
        .logRequests(
            variables.about("whether each request is logged").choice("LOG_REQUESTS", Wanted.NO)
                == Wanted.YES)
        .host(variables.about("address to listen on").text("HOST", "127.0.0.1"))
        .port(variables.about("port, 0 for any free one").number("PORT", 8080, 0, 65_535))
        .metricsPort(
            variables
                .about("port at which alone the metrics are, 0 for none of their own")
                .number("METRICS_PORT", 0, 0, 65_535))
        .deadline(
            milliseconds(
                variables
                    .about("time one calculation may take, ms")
                    .number("DEADLINE_MS", 10_000, 1, 600_000)))
        .bodyBytes(
            variables
                .about("largest body, or row of a batch")
                .number("BODY_BYTES", 1 << 20, 1_000, 1 << 28))
        .uploadBytes(
            variables
                .about("largest request with recordings, as JSON or with WAV files")
                .number("UPLOAD_BYTES", 1 << 26, 1_000, 1 << 28))
        .pace(
            new Pace(
                milliseconds(
                    variables
                        .about(
                            "how long a caller may keep the service waiting, in all, while it sends"
                                + " a body or takes an answer, ms")
                        .number("PATIENCE_MS", 10_000, 1, 600_000)),
                variables
                    .about("bytes a second that must pass apart from that")
                    .number("LEAST_RATE", 1 << 14, 1, 1 << 30),
                milliseconds(
                    variables
                        .about("time within which a body must be there, ms")
                        .number("BODY_MS", 300_000, 1, 86_400_000))))
        .stop(
            new OrderlyStop(
                milliseconds(
                    variables
                        .about(
                            "time from not being ready to the closing of the port, when told to"
                                + " stop, ms")
                        .number("STOP_DELAY_MS", 2_000, 0, 600_000)),
                milliseconds(
                    variables
                        .about("time that what is under way may then still take, ms")
                        .number("STOP_MS", 30_000, 0, 3_600_000))))
        .origins(
            Arrays.stream(
                    variables
                        .about("origins whose pages may call, comma separated, * for any")
                        .text("CORS_ORIGINS", "*")
                        .split(",", -1))
                .map(String::strip)
                .toList())
        .callers(callers(variables))
        .build();
  }

  private static CallerRules callers(Variables variables) {
    variables.oneOf("KEYS", "KEY_FILE");
    Keys keys =
        variables
            .about("keys that callers must have, as name:hash pairs, comma separated")
            .read("KEYS", "", CallerRules::keys);
    Keys inFile =
        variables
            .about("a file with such pairs instead, one a line")
            .read("KEY_FILE", "", CallerRules::keyFile);
    return new CallerRules(
        keys == Keys.NONE ? inFile : keys,
        variables
            .about("calls a caller may make a minute, 0 for any number")
            .number("CALLS_PER_MINUTE", 0, 0, 1_000_000_000),
        variables
            .about("calls it may have saved up, 0 for those of a minute")
            .number("CALLS_AT_ONCE", 0, 0, 1_000_000_000),
        variables
            .about("requests a caller may have at a time, 0 for any number")
            .number("UNDER_WAY", 0, 0, 1_000_000_000),
        variables
            .about(
                "addresses and blocks of proxies that say where a request came from, comma"
                    + " separated")
            .read("PROXIES", "", Proxies::of));
  }

  private static Duration milliseconds(int count) {
    return Duration.ofMillis(count);
  }
}
