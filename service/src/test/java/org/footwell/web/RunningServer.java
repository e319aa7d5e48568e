package org.footwell.web;

import static io.restassured.config.DecoderConfig.decoderConfig;
import static io.restassured.config.EncoderConfig.encoderConfig;

import io.restassured.RestAssured;
import io.restassured.config.RestAssuredConfig;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.function.LongSupplier;
import org.footwell.Calculations;
import org.footwell.Version;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** The real service on a free port, started once and shared by all tests of a run. */
public final class RunningServer implements BeforeAllCallback {

  private static final ContractFilter CONTRACT = new ContractFilter(ContractDocument.built());

  private static final RestAssuredConfig CONFIG =
      RestAssuredConfig.config()
          // XML says no charset in its header, and a machine may have another one than ours.
          // And answers are looked at as they are sent; those that are coded have tests of their
          // own.
          .decoderConfig(
              decoderConfig().defaultContentCharset(StandardCharsets.UTF_8).noContentDecoders())
          .encoderConfig(
              encoderConfig()
                  .defaultContentCharset(StandardCharsets.UTF_8)
                  .appendDefaultContentCharsetToContentTypeIfUndefined(false)
                  .encodeContentTypeAs("application/x-ndjson", ContentType.TEXT)
                  .encodeContentTypeAs("text/csv", ContentType.TEXT));

  private static volatile int port;

  @Override
  public void beforeAll(ExtensionContext context) {
    context
        .getRoot()
        .getStore(ExtensionContext.Namespace.GLOBAL)
        .getOrComputeIfAbsent(RunningServer.class, key -> start(), Server.class);
  }

  private static Server start() {
    Server server = start(Map.of());
    port = server.port();
    return server;
  }

  /** One more server with settings of its own, for the caller to close; it stops without a delay. */
  static Server start(Map<String, String> environment) {
    return start(environment, System::nanoTime);
  }

  /** The same by another clock, for what callers may do in a time. */
  static Server start(Map<String, String> environment, LongSupplier nanos) {
    Map<String, String> variables =
        new HashMap<>(Map.of("FOOTWELL_PORT", "0", "FOOTWELL_STOP_DELAY_MS", "0"));
    variables.putAll(environment);
    return new Server(
            Calculations.BY_ID, Calculations.PLAN, Settings.from(variables), Version.NUMBER, nanos)
        .start();
  }

  static int port() {
    return port;
  }

  /** A request whose address is sent as it is written, and whose exchange must fit the contract. */
  static RequestSpecification given() {
    return given(port);
  }

  static RequestSpecification given(int port) {
    return RestAssured.given()
        .config(CONFIG)
        .baseUri("http://127.0.0.1")
        .port(port)
        .urlEncodingEnabled(false)
        .filter(CONTRACT);
  }
}
