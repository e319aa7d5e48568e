package org.footwell.web;

import static org.footwell.web.SoundLevelCalls.GOOD;
import static org.footwell.web.SoundLevelCalls.HEADER;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.QUERY;
import static org.footwell.web.SoundLevelCalls.ROW;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import org.footwell.web.request.Exchange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bodies in gzip, both ways. */
@ExtendWith(RunningServer.class)
class GzipTest {

  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private static final String ADDRESS = PATH + "?" + QUERY + "&workings=true";
  private static final String BATCH = PATH + "/batch";
  private static final String JSON = "application/json";

  private static HttpRequest.Builder to(String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + RunningServer.port() + path));
  }

  private static HttpResponse<byte[]> send(HttpRequest.Builder request) {
    try {
      return CLIENT.send(request.build(), BodyHandlers.ofByteArray());
    } catch (IOException e) {
      throw new AssertionError(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
  }

  private static HttpResponse<byte[]> get(String path, String... headers) {
    return send(headers.length == 0 ? to(path) : to(path).headers(headers));
  }

  private static HttpResponse<byte[]> post(
      String path, String type, byte[] body, String... headers) {
    HttpRequest.Builder request =
        to(path).header("Content-Type", type).POST(BodyPublishers.ofByteArray(body));
    return send(headers.length == 0 ? request : request.headers(headers));
  }

  private static String header(HttpResponse<?> response, String name) {
    return response.headers().firstValue(name).orElse(null);
  }

  private static String plain(HttpResponse<byte[]> response) {
    return new String(response.body(), StandardCharsets.UTF_8);
  }

  private static byte[] gzip(String text) {
    ByteArrayOutputStream coded = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(coded)) {
      out.write(text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return coded.toByteArray();
  }

  private static String gunzip(byte[] coded) {
    try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(coded))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static String refused(HttpResponse<byte[]> response, int status) {
    assertEquals(status, response.statusCode(), () -> plain(response));
    return Refusal.of(plain(response), status).detail();
  }

  // Answers.

  @ParameterizedTest
  @ValueSource(
      strings = {ADDRESS, "/openapi.json", "/codes", "/plan/main.js", ADDRESS + "&format=xml"})
  void aLongAnswerComesInGzipToWhoTakesIt(String address) {
    HttpResponse<byte[]> asItIs = get(address);
    HttpResponse<byte[]> coded = get(address, "Accept-Encoding", "gzip, br");
    assertEquals(200, coded.statusCode());
    assertEquals("gzip", header(coded, "Content-Encoding"));
    assertEquals(null, header(asItIs, "Content-Encoding"));
    assertEquals(header(asItIs, "Content-Type"), header(coded, "Content-Type"));
    assertEquals(coded.body().length, Integer.parseInt(header(coded, "Content-Length")));
    assertTrue(coded.body().length < asItIs.body().length);
    assertEquals(plain(asItIs), gunzip(coded.body()));
    for (HttpResponse<byte[]> response : List.of(asItIs, coded)) {
      assertTrue(response.headers().allValues("Vary").contains("Accept-Encoding"));
    }
  }

  @Test
  void aShortAnswerStaysAsItIsUnlessThatIsExcluded() {
    String address = PATH + "?" + QUERY;
    HttpResponse<byte[]> asItIs = get(address, "Accept-Encoding", "gzip");
    assertEquals(null, header(asItIs, "Content-Encoding"));
    HttpResponse<byte[]> coded = get(address, "Accept-Encoding", "gzip, identity;q=0");
    assertEquals("gzip", header(coded, "Content-Encoding"));
    assertEquals(plain(asItIs), gunzip(coded.body()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"gzip;q=0", "identity", "br", "gzip;q=0.1, identity;q=0.9"})
  void whoDoesNotTakeOrLikeItGetsItAsItIs(String accepted) {
    HttpResponse<byte[]> response = get(ADDRESS, "Accept-Encoding", accepted);
    assertEquals(200, response.statusCode());
    assertEquals(null, header(response, "Content-Encoding"));
    assertEquals(plain(get(ADDRESS)), plain(response));
  }

  @Test
  void whoTakesNothingAtAllIsToldSo() {
    String sentence = "Accept-Encoding allows neither gzip nor identity.";
    for (String address : List.of(ADDRESS, "/openapi.json", "/health/ready")) {
      assertEquals(sentence, refused(get(address, "Accept-Encoding", "identity;q=0"), 406));
    }
    byte[] body = GOOD.getBytes(StandardCharsets.UTF_8);
    assertEquals(sentence, refused(post(PATH, JSON, body, "Accept-Encoding", "br, *;q=0"), 406));
    assertEquals(sentence, refused(post(BATCH, JSON, body, "Accept-Encoding", "*;q=0"), 406));
  }

  @ParameterizedTest
  @ValueSource(strings = {ADDRESS, "/openapi.json", "/plan"})
  void eachCodingHasItsTagAndKnowsItAgain(String address) {
    String plainTag = header(get(address), "ETag");
    String codedTag = header(get(address, "Accept-Encoding", "gzip"), "ETag");
    assertTrue(codedTag.matches("\"[^\"]*-gzip\""), codedTag);
    assertNotEquals(plainTag, codedTag);
    HttpResponse<byte[]> known = get(address, "Accept-Encoding", "gzip", "If-None-Match", codedTag);
    assertEquals(304, known.statusCode());
    assertEquals(0, known.body().length);
    assertEquals(codedTag, header(known, "ETag"));
    assertTrue(known.headers().allValues("Vary").contains("Accept-Encoding"));
    assertEquals(304, get(address, "If-None-Match", plainTag).statusCode());
    assertEquals(200, get(address, "If-None-Match", codedTag).statusCode());
    assertEquals(
        200, get(address, "Accept-Encoding", "gzip", "If-None-Match", plainTag).statusCode());
  }

  @Test
  void headSaysWhatGetWould() {
    HttpResponse<byte[]> get = get(ADDRESS, "Accept-Encoding", "gzip");
    HttpResponse<byte[]> head =
        send(to(ADDRESS).header("Accept-Encoding", "gzip").method("HEAD", BodyPublishers.noBody()));
    for (String name : List.of("Content-Encoding", "Content-Length", "ETag", "Content-Type")) {
      assertEquals(header(get, name), header(head, name));
    }
    assertEquals(get.headers().allValues("Vary"), head.headers().allValues("Vary"));
    assertEquals(0, head.body().length);
  }

  @Test
  void aLongProblemComesInGzipToo() {
    String address = PATH + "?a=1&b=1&c=1&d=1&e=1&f=1&g=1&h=1&i=1&j=1";
    HttpResponse<byte[]> problem = get(address, "Accept-Encoding", "gzip");
    assertEquals(422, problem.statusCode());
    assertEquals("gzip", header(problem, "Content-Encoding"));
    Refusal.of(gunzip(problem.body()), 422);
  }

  @ParameterizedTest
  @ValueSource(strings = {"text/csv", "application/x-ndjson", JSON})
  void aBatchComesInGzipAndIsWhole(String type) {
    byte[] body = batch(type).getBytes(StandardCharsets.UTF_8);
    HttpResponse<byte[]> coded = post(BATCH, type, body, "Accept-Encoding", "gzip");
    assertEquals("gzip", header(coded, "Content-Encoding"));
    assertEquals(plain(post(BATCH, type, body)), gunzip(coded.body()));
  }

  private static String batch(String type) {
    return switch (type) {
      case "text/csv" -> HEADER + "\n" + (ROW + "\n").repeat(300);
      case JSON -> "[" + (GOOD + ",").repeat(299) + GOOD + "]";
      default -> (GOOD + "\n").repeat(300);
    };
  }

  @Test
  void aSweepComesInGzipAndIsWhole() {
    String sweep =
        "{\"request\":"
            + GOOD
            + ",\"inputs\":[{\"path\":\"power_w\",\"from\":1,\"to\":100,\"count\":500}]}";
    byte[] body = sweep.getBytes(StandardCharsets.UTF_8);
    for (String format : List.of("csv", "json", "ndjson")) {
      String address = PATH + "/sweep?format=" + format;
      HttpResponse<byte[]> coded = post(address, JSON, body, "Accept-Encoding", "gzip");
      assertEquals("gzip", header(coded, "Content-Encoding"));
      assertEquals(plain(post(address, JSON, body)), gunzip(coded.body()));
    }
  }

  /** The answer to each row can be unpacked before the next is sent, itself packed. */
  @Test
  void rowsInGzipAreAnsweredOneByOneInGzip() throws IOException {
    ByteArrayOutputStream sent = new ByteArrayOutputStream();
    try (RawConnection connection = new RawConnection();
        GZIPOutputStream rows = new GZIPOutputStream(sent, 512, true)) {
      connection.send(
          "POST "
              + BATCH
              + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/x-ndjson\r\n"
              + "Content-Encoding: gzip\r\nAccept-Encoding: gzip\r\n"
              + "Transfer-Encoding: chunked\r\n\r\n");
      GZIPInputStream answers = null;
      for (int i = 1; i <= 3; i++) {
        rows.write(
            (SoundLevelCalls.with("power_w", i + "") + "\n").getBytes(StandardCharsets.UTF_8));
        rows.flush();
        connection.sendChunk(sent.toByteArray());
        sent.reset();
        if (answers == null) {
          String headers = connection.readUntil("\r\n\r\n");
          assertTrue(headers.contains("Content-Encoding: gzip\r\n"), headers);
          answers = new GZIPInputStream(connection.chunks());
        }
        String answer = line(answers);
        assertTrue(answer.contains("\"driver_power_w\":" + i + ".0"), answer);
      }
      rows.finish();
      connection.sendChunk(sent.toByteArray());
      connection.send("0\r\n\r\n");
      assertEquals(-1, answers.read());
    }
  }

  private static String line(GZIPInputStream answers) throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (int b = answers.read(); b != '\n'; b = answers.read()) {
      assertTrue(b >= 0, "the answer ends");
      line.write(b);
    }
    return line.toString(StandardCharsets.UTF_8);
  }

  // Requests.

  private static HttpResponse<byte[]> coded(String path, String type, byte[] body) {
    return post(path, type, body, "Content-Encoding", "gzip");
  }

  @ParameterizedTest
  @ValueSource(strings = {"gzip", "GZIP", "x-gzip"})
  void aRequestMayComeInGzip(String name) {
    HttpResponse<byte[]> response = post(PATH, JSON, gzip(GOOD), "Content-Encoding", name);
    assertEquals(200, response.statusCode());
    assertEquals(plain(post(PATH, JSON, GOOD.getBytes(StandardCharsets.UTF_8))), plain(response));
  }

  @Test
  void aBodyThatSaysItIsNotCodedIsReadAsItIs() {
    byte[] body = GOOD.getBytes(StandardCharsets.UTF_8);
    assertEquals(200, post(PATH, JSON, body, "Content-Encoding", "identity").statusCode());
  }

  @ParameterizedTest
  @ValueSource(strings = {"text/csv", "application/x-ndjson", JSON})
  void aBatchMayComeInGzip(String type) {
    String body = batch(type);
    assertEquals(
        plain(post(BATCH, type, body.getBytes(StandardCharsets.UTF_8))),
        plain(coded(BATCH, type, gzip(body))));
  }

  @Test
  void anUploadMayComeInGzip() {
    Example example =
        Example.all().filter(e -> e.path().equals("/v1/arrival-times")).findFirst().orElseThrow();
    byte[] body = example.question().toString().getBytes(StandardCharsets.UTF_8);
    HttpResponse<byte[]> response =
        coded(example.path(), JSON, gzip(example.question().toString()));
    assertEquals(200, response.statusCode());
    assertArrayEquals(post(example.path(), JSON, body).body(), response.body());
    byte[] cut = gzip(example.question().toString());
    assertEquals(
        "The body ends in the middle of its gzip.",
        refused(coded(example.path(), JSON, Arrays.copyOf(cut, cut.length - 3)), 400));
  }

  @ParameterizedTest
  @ValueSource(strings = {"br", "deflate", "gzip, gzip", "identity, gzip", "zstd"})
  void anotherCodingIsNotRead(String name) {
    for (String path : List.of(PATH, BATCH, "/v1/arrival-times", PATH + "/sweep")) {
      HttpResponse<byte[]> response = post(path, JSON, gzip(GOOD), "Content-Encoding", name);
      assertEquals(
          "Send the body as it is or in gzip, not as " + name + ".", refused(response, 415));
      assertEquals("gzip", header(response, "Accept-Encoding"));
    }
  }

  @Test
  void whatIsNoGzipIsRefused() {
    for (String path : List.of(PATH, BATCH, "/v1/arrival-times", PATH + "/sweep")) {
      assertEquals(
          "The body is not well-formed gzip.",
          refused(coded(path, JSON, GOOD.getBytes(StandardCharsets.UTF_8)), 400));
    }
    assertEquals(
        "The body ends in the middle of its gzip.", refused(coded(PATH, JSON, new byte[0]), 400));
  }

  @Test
  void aCutABrokenAndALongerBodyAreRefused() {
    byte[] whole = gzip(GOOD);
    assertEquals(
        "The body ends in the middle of its gzip.",
        refused(coded(PATH, JSON, Arrays.copyOf(whole, whole.length - 1)), 400));
    assertEquals(
        "The body goes on after the end of its gzip.",
        refused(coded(PATH, JSON, Arrays.copyOf(whole, whole.length + 3)), 400));
    whole[whole.length - 6] ^= 1;
    assertEquals("The body is not well-formed gzip.", refused(coded(PATH, JSON, whole), 400));
  }

  @Test
  void limitsHoldForWhatABodyUnpacksTo() {
    byte[] bomb = gzip(" ".repeat(2_000_000) + GOOD);
    assertTrue(bomb.length < 5_000);
    assertEquals("The body is larger than 1048576 bytes.", refused(coded(PATH, JSON, bomb), 413));
    byte[] upload = gzip("[" + "0,".repeat(20_000_000) + "0]");
    assertEquals(
        "The body becomes more than 100 times as large when it is unpacked.",
        refused(coded("/v1/arrival-times", JSON, upload), 413));
  }

  /** What breaks where rows are answered already is told as the last of them. */
  @Test
  void aBatchThatBreaksOnItsWaySaysSoInItsLastRow() {
    byte[] lines = gzip(batch("application/x-ndjson"));
    byte[] cut = Arrays.copyOf(lines, lines.length - 1);
    List<String> rows = plain(coded(BATCH, "application/x-ndjson", cut)).lines().toList();
    assertEquals(301, rows.size());
    Refusal last = Refusal.of(rows.get(300), 400);
    assertEquals("The body ends in the middle of its gzip.", last.detail());
    assertEquals(301, last.problem().path("line").asInt());

    byte[] array = gzip("[" + (GOOD + " ".repeat(10_000) + ",").repeat(500) + GOOD + "]");
    JsonNode entries = Example.read(plain(coded(BATCH, JSON, array)));
    assertTrue(entries.size() > 100, () -> entries.size() + " entries");
    Refusal tooDense = Refusal.of(entries.get(entries.size() - 1).toString(), 413);
    assertEquals(entries.size(), tooDense.problem().path("line").asInt());
    assertEquals(
        "The body becomes more than 100 times as large when it is unpacked.", tooDense.detail());

    byte[] csv = gzip(batch("text/csv") + "\n".repeat(3_000_000));
    Table table = Table.of(plain(coded(BATCH, "text/csv", csv)));
    Map<String, String> end = table.row(table.rows().size() - 1);
    assertTrue(
        end.get("error").contains("The body becomes more than 100 times as large"),
        () -> end.toString());
    assertFalse(table.row(0).get("level_db_spl").isEmpty());
  }

  @Test
  void theMediaTypeIsStillLookedAt() {
    assertEquals("", Exchange.mediaType(null));
    assertTrue(
        refused(coded(PATH, "text/plain", gzip(GOOD)), 415)
            .startsWith("Send JSON with the header"));
  }
}
