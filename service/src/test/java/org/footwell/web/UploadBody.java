package org.footwell.web;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;

/** A multipart/form-data body as a client writes it: the request and files. */
public record UploadBody(String request, Map<String, byte[]> files) {

  private static final String BOUNDARY = "part-of-a-body";
  private static final HttpClient CLIENT =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

  private BodyPublisher publisher() {
    List<byte[]> pieces = new ArrayList<>();
    pieces.add(header("request"));
    pieces.add(request.getBytes(StandardCharsets.UTF_8));
    files.forEach(
        (name, bytes) -> {
          pieces.add(header(name));
          pieces.add(bytes);
        });
    pieces.add(ascii("\r\n--" + BOUNDARY + "--\r\n"));
    return BodyPublishers.ofByteArrays(pieces);
  }

  private static byte[] header(String name) {
    return ascii(
        "\r\n--%s\r\nContent-Disposition: form-data; name=\"%s\"; filename=\"%s.wav\"\r\n\r\n"
            .formatted(BOUNDARY, name, name));
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static HttpRequest to(URI service, String path, BodyPublisher body) {
    return HttpRequest.newBuilder(service.resolve(path))
        .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
        .POST(body)
        .build();
  }

  /** Sends it and waits for the answer. */
  public HttpResponse<String> post(URI service, String path)
      throws IOException, InterruptedException {
    return CLIENT.send(to(service, path, publisher()), BodyHandlers.ofString());
  }

  CompletableFuture<HttpResponse<String>> postLater(URI service, String path) {
    return CLIENT.sendAsync(to(service, path, publisher()), BodyHandlers.ofString());
  }

  /** Sends one file of so many bytes, whose length is not stated before. */
  static HttpResponse<String> endless(URI service, String path, long bytes)
      throws IOException, InterruptedException {
    InputStream start = new ByteArrayInputStream(header("x"));
    InputStream rest =
        new InputStream() {
          private long left = bytes;

          @Override
          public int read() {
            return left-- > 0 ? 1 : -1;
          }

          @Override
          public int read(byte[] into, int offset, int length) {
            if (left <= 0) {
              return -1;
            }
            int n = (int) Math.min(left, length);
            left -= n;
            return n;
          }
        };
    BodyPublisher body = BodyPublishers.ofInputStream(() -> new SequenceInputStream(start, rest));
    return CLIENT.send(to(service, path, body), BodyHandlers.ofString());
  }

  /** Status of a plain request in JSON. */
  static int json(URI service, String path, String body) throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(service.resolve(path))
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString(body))
            .build();
    return CLIENT.send(request, BodyHandlers.ofString()).statusCode();
  }
}
