package org.footwell.catalogue;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.service.Poster;
import org.footwell.client.ApiClient;
import picocli.CommandLine.Option;

/** Where the service is and how to treat it. */
final class ServiceOptions {

  private static final Duration CONNECT_WITHIN = Duration.ofSeconds(10);

  @Option(
      names = "--service",
      paramLabel = "URL",
      defaultValue = "${env:FOOTWELL_URL:-http://localhost:8080}",
      description = "Address of the service (default: FOOTWELL_URL or http://localhost:8080).")
  private String address;

  @Option(
      names = "--header",
      paramLabel = "NAME:VALUE",
      description = "Sent with every request, such as what a proxy wants to see.")
  private final List<String> headers = new ArrayList<>();

  @Option(
      names = "--chunk-rows",
      paramLabel = "ROWS",
      defaultValue = "1000",
      description = "Rows sent at a time, 1 to 10000 (default: 1000; fewer when they are large).")
  int chunkRows;

  @Option(
      names = "--parallel",
      paramLabel = "CHUNKS",
      defaultValue = "2",
      description = "Chunks under way at a time, 1 to 16 (default: 2).")
  int parallel;

  @Option(
      names = "--retries",
      paramLabel = "TIMES",
      defaultValue = "7",
      description =
          "How often a chunk is sent again when the service is busy or away (default: 7).")
  private int retries;

  @Option(
      names = "--timeout",
      paramLabel = "SECONDS",
      defaultValue = "60",
      description = "Time one chunk may take (default: 60).")
  private int timeout;

  void check() throws CannotRun {
    require("--chunk-rows", chunkRows, 1, 10_000);
    require("--parallel", parallel, 1, 16);
    require("--retries", retries, 0, 100);
    require("--timeout", timeout, 1, 86_400);
  }

  private static void require(String option, int given, int least, int most) throws CannotRun {
    if (given < least || given > most) {
      throw new CannotRun(option + " must be from " + least + " to " + most + ".");
    }
  }

  ApiClient client() throws CannotRun {
    URI uri;
    try {
      uri = URI.create(address.replaceFirst("/+$", ""));
    } catch (IllegalArgumentException malformed) {
      uri = URI.create("");
    }
    if (uri.getHost() == null || !List.of("http", "https").contains(uri.getScheme())) {
      throw new CannotRun(address + " is no address of a service; give one like http://host:8080.");
    }
    ApiClient client = new ApiClient();
    client.updateBaseUri(uri.toString());
    client.setHttpClientBuilder(
        HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .connectTimeout(CONNECT_WITHIN));
    client.setReadTimeout(Duration.ofSeconds(timeout));
    client.setRequestInterceptor(this::addHeaders);
    return client;
  }

  Poster poster(ApiClient client, Consumer<String> messages) throws CannotRun {
    try {
      addHeaders(HttpRequest.newBuilder());
    } catch (IllegalArgumentException malformed) {
      throw new CannotRun("--header: " + malformed.getMessage() + ".");
    }
    return new Poster(client, retries, messages);
  }

  private void addHeaders(HttpRequest.Builder request) {
    for (String header : headers) {
      int colon = header.indexOf(':');
      if (colon < 1) {
        throw new IllegalArgumentException("give it as NAME:VALUE");
      }
      request.header(header.substring(0, colon).strip(), header.substring(colon + 1).strip());
    }
  }
}
