package org.footwell;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.Calculation;
import org.footwell.web.Server;
import org.footwell.web.Settings;

/** Answers once what first callers ask, so that Java can keep the classes that takes; see {@code service/start}. */
final class Rehearsal {

  private static final Map<String, String> BY_ITSELF =
      Map.of("FOOTWELL_PORT", "0", "FOOTWELL_STOP_DELAY_MS", "0");

  private static final List<String> PAGES =
      List.of("/health/live", "/health/ready", "/metrics", "/openapi.json", "/v1/nothing-here");

  private Rehearsal() {}

  static void run() {
    try (Server server =
        new Server(Calculations.BY_ID, Calculations.PLAN, Settings.from(BY_ITSELF), Version.NUMBER)
            .start()) {
      URI address = URI.create("http://127.0.0.1:" + server.port());
      PAGES.forEach(page -> ask(address.resolve(page), null));
      Calculations.BY_ID.forEach(
          (id, calculation) -> ask(address.resolve("/v1/" + id), example(calculation.get())));
    }
  }

  private static String example(Calculation<?, ?> calculation) {
    return calculation.card().example();
  }

  private static void ask(URI address, String body) {
    try {
      HttpURLConnection caller = (HttpURLConnection) address.toURL().openConnection();
      if (body != null) {
        caller.setDoOutput(true);
        caller.setRequestProperty("Content-Type", "application/json");
        try (OutputStream out = caller.getOutputStream()) {
          out.write(body.getBytes(StandardCharsets.UTF_8));
        }
      }
      boolean refused = caller.getResponseCode() >= HttpURLConnection.HTTP_BAD_REQUEST;
      try (InputStream answer = refused ? caller.getErrorStream() : caller.getInputStream()) {
        answer.readAllBytes();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
