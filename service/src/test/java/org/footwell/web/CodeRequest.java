package org.footwell.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.footwell.recording.DescribedWav;

/**
 * A file {@code codes/<calculation>/<code>.json}: a small request that brings the code. Codes that
 * any calculation may answer are driven through one of them, below {@code codes/core}.
 *
 * <p>It holds the request as it is sent. Where that is not all, it stands in {@code request}, beside
 * the {@code query} or, in words, the {@code files} that go with it. A table to be sent as a batch ends
 * in {@code .csv}.
 */
record CodeRequest(String calculation, String code, Path source) {

  private static final HttpClient CLIENT =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

  /** What came back. */
  record Reply(int status, JsonNode body) {}

  static Stream<CodeRequest> all() throws IOException, URISyntaxException {
    Path codes = Path.of(CodeRequest.class.getResource("/codes").toURI());
    try (Stream<Path> files = Files.walk(codes)) {
      return files.filter(Files::isRegularFile).sorted().map(CodeRequest::of).toList().stream();
    }
  }

  private static CodeRequest of(Path file) {
    String name = file.getFileName().toString();
    String directory = file.getParent().getFileName().toString();
    return new CodeRequest(directory, name.substring(0, name.lastIndexOf('.')), file);
  }

  /** Whether it is of a code that any calculation may answer. */
  boolean ofCore() {
    return source.getParent().getParent().endsWith("core");
  }

  boolean isTable() {
    return source.toString().endsWith(".csv");
  }

  private String text() {
    try {
      return Files.readString(source);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private JsonNode content() {
    return isTable() ? MissingNode.getInstance() : Example.read(text());
  }

  boolean hasFiles() {
    return content().has("files");
  }

  /** The request in JSON, without the files that go with it. */
  JsonNode request() {
    return content().path("request").isMissingNode() ? content() : content().get("request");
  }

  Reply post() throws IOException, InterruptedException {
    return post(isTable() ? text() : request().toString());
  }

  /** The same with another request in its place. */
  Reply post(String request) throws IOException, InterruptedException {
    URI service = URI.create("http://127.0.0.1:" + RunningServer.port());
    HttpResponse<String> reply =
        hasFiles()
            ? new UploadBody(request, recordings()).post(service, path())
            : CLIENT.send(plain(service, request), BodyHandlers.ofString());
    return new Reply(reply.statusCode(), Example.read(reply.body()));
  }

  private HttpRequest plain(URI service, String request) {
    return HttpRequest.newBuilder(service.resolve(path() + (isTable() ? "/batch" : "") + query()))
        .header("Content-Type", isTable() ? "text/csv" : "application/json")
        .POST(BodyPublishers.ofString(request))
        .build();
  }

  private String query() {
    return content().has("query") ? "?" + content().get("query").asText() : "";
  }

  private String path() {
    return "/v1/" + calculation;
  }

  private Map<String, byte[]> recordings() {
    Map<String, byte[]> recordings = new LinkedHashMap<>();
    content()
        .get("files")
        .properties()
        .forEach(file -> recordings.put(file.getKey(), DescribedWav.of(file.getValue().asText())));
    return recordings;
  }

  @Override
  public String toString() {
    return calculation + " " + code;
  }
}
