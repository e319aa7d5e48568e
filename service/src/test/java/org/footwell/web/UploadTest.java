package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import org.footwell.recording.WavBytes;
import org.footwell.recording.WavBytes.Kind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Recordings as WAV files beside the request, over real HTTP. */
@ExtendWith(RunningServer.class)
class UploadTest {

  private static final String PATH = "/v1/arrival-times";
  private static final int MEBIBYTE = 1 << 20;

  private static final String ONE_CHANNEL =
      """
      {"kind": "impulse_response", "time_reference": "common_start",
       "channels": [{"id": "a"}], "microphones": [{"id": "m"}],
       "recordings": [{"channel": "a", "microphone": "m", "recording": %s}]}
      """;

  @AfterEach
  void theServiceStillAnswers() {
    assertEquals(200, SoundLevelCalls.post(SoundLevelCalls.GOOD).statusCode());
  }

  private static float[] pulse(int at) {
    float[] pulse = new float[4800];
    for (int n = at; n < pulse.length; n++) {
      pulse[n] = (float) (0.7 * Math.exp(-0.5 * (n - at)) * Math.cos(0.8 * (n - at)));
    }
    return pulse;
  }

  private static String json(String recording) {
    return ONE_CHANNEL.formatted(recording);
  }

  private static String samples(float[] values) {
    StringJoiner list = new StringJoiner(",", "[", "]");
    for (float value : values) {
      list.add(Float.toString(value));
    }
    return list.toString();
  }

  private static RequestSpecification parts(String request, Map<String, byte[]> files) {
    RequestSpecification parts = given().multiPart("request", request, "application/json");
    files.forEach((name, bytes) -> parts.multiPart(name, name + ".wav", bytes, "audio/wav"));
    return parts;
  }

  private static Response post(String request, String name, byte[] file) {
    return parts(request, Map.of(name, file)).post(PATH);
  }

  private static double arrival(Response response) {
    assertEquals(200, response.statusCode(), response::asString);
    return Example.read(response.asString()).at("/result/recordings/0/arrival_ms").asDouble();
  }

  @Test
  void aFileGivesWhatItsSamplesGiveInJson() {
    float[] pulse = pulse(1000);
    double expected =
        arrival(
            given()
                .contentType("application/json")
                .body(json("{\"rate_hz\": 48000, \"samples\": " + samples(pulse) + "}"))
                .post(PATH));
    for (Kind kind : Kind.values()) {
      byte[] file = WavBytes.of(kind, 48_000, pulse);
      assertEquals(expected, arrival(post(json("{\"wav\": \"one\"}"), "one", file)), 1e-3);
    }
  }

  @Test
  void everyChannelOfAFileCanBeNamed() {
    float[] early = pulse(1000);
    float[] late = pulse(1960);
    byte[] file = WavBytes.of(Kind.INT24, 96_000, early, late);
    double first = arrival(post(json("{\"wav\": \"both\", \"channel\": 0}"), "both", file));
    double second = arrival(post(json("{\"wav\": \"both\", \"channel\": 1}"), "both", file));
    assertEquals(10, second - first, 1e-3);
  }

  @Test
  void theFilesMayComeBeforeTheRequest() {
    byte[] file = WavBytes.of(Kind.INT16, 44_100, pulse(1000));
    Response response =
        given()
            .multiPart("one", "one.wav", file, "audio/wav")
            .multiPart("request", json("{\"wav\": \"one\"}"), "application/json")
            .post(PATH);
    assertEquals(200, response.statusCode());
  }

  @Test
  void filesThatCannotBeUsedAreToldOneByOne() {
    byte[] good = WavBytes.of(Kind.INT16, 48_000, pulse(1000));
    Map<String, byte[]> bad = new LinkedHashMap<>();
    bad.put("not-a-wav-file", "MP3 or something".getBytes(StandardCharsets.US_ASCII));
    bad.put("wav-truncated", Arrays.copyOf(good, good.length / 2));
    bad.put("wav-without-samples", WavBytes.of(Kind.INT16, 48_000, new float[0]));
    bad.put("wav-format-unsupported", WavBytes.of(Kind.INT16, 8_000, pulse(1000)));
    bad.forEach(
        (code, file) -> {
          Refusal refusal = Refusal.of(post(json("{\"wav\": \"x\"}"), "x", file), 422);
          assertEquals(Set.of("/recordings/0/recording/wav " + code), refusal.faults());
        });
    Refusal refusal =
        Refusal.of(
            post(json("{\"wav\": \"x\"}"), "x", WavBytes.of(Kind.INT16, 48_000, new float[4800])),
            422);
    assertEquals(Set.of("/recordings/0/recording recording-silent"), refusal.faults());
    float[] clipped = pulse(1000);
    Arrays.fill(clipped, 1000, 1010, 1);
    refusal =
        Refusal.of(
            post(json("{\"wav\": \"x\"}"), "x", WavBytes.of(Kind.INT16, 48_000, clipped)), 422);
    assertEquals(Set.of("/recordings/0/recording recording-clipped"), refusal.faults());
  }

  @Test
  void filesOfMixedRatesAreRefused() {
    String request =
        """
        {"kind": "impulse_response", "time_reference": "common_start",
         "channels": [{"id": "a"}, {"id": "b"}], "microphones": [{"id": "m"}],
         "recordings": [{"channel": "a", "microphone": "m", "recording": {"wav": "x"}},
                        {"channel": "b", "microphone": "m", "recording": {"wav": "y"}}]}
        """;
    Map<String, byte[]> files =
        Map.of(
            "x", WavBytes.of(Kind.INT16, 48_000, pulse(1000)),
            "y", WavBytes.of(Kind.INT16, 44_100, pulse(1000)));
    Refusal refusal = Refusal.of(parts(request, files).post(PATH), 422);
    assertEquals(Set.of("/recordings/1/recording sample-rates-mixed"), refusal.faults());
  }

  @Test
  void namesAndPartsMustMatch() {
    byte[] file = WavBytes.of(Kind.INT16, 48_000, pulse(1000), pulse(900));
    assertEquals(
        Set.of(" upload-not-used"),
        Refusal.of(post(json("{\"wav\": \"y\"}"), "x", file), 422).faults());
    assertEquals(
        Set.of("/recordings/0/recording/channel required"),
        Refusal.of(post(json("{\"wav\": \"x\"}"), "x", file), 422).faults());
    assertEquals(
        Set.of("/recordings/0/recording/channel no-such-wav-channel"),
        Refusal.of(post(json("{\"wav\": \"x\", \"channel\": 2}"), "x", file), 422).faults());
    assertEquals(
        Set.of("/recordings/0/recording/rate_hz wav-with-rate-or-samples"),
        Refusal.of(post(json("{\"wav\": \"x\", \"rate_hz\": 48000}"), "x", file), 422).faults());
    Response alone =
        given().contentType("application/json").body(json("{\"wav\": \"x\"}")).post(PATH);
    assertEquals(
        Set.of("/recordings/0/recording/wav wav-not-uploaded"), Refusal.of(alone, 422).faults());
  }

  @Test
  void anUploadWithoutARequestOrWithBrokenPartsIsUnreadable() {
    byte[] file = WavBytes.of(Kind.INT16, 48_000, pulse(1000));
    Refusal.of(given().multiPart("x", "x.wav", file, "audio/wav").post(PATH), 400);
    Refusal.of(post("{", "x", file), 400);
    String nameless = "--b\r\nContent-Disposition: form-data\r\n\r\nx\r\n--b--\r\n";
    for (String type : new String[] {"multipart/form-data", "multipart/form-data; boundary=b"}) {
      for (String body : new String[] {"", "--b\r\n", nameless}) {
        String answer =
            RawConnection.answer(
                "POST "
                    + PATH
                    + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: "
                    + type
                    + "\r\nContent-Length: "
                    + body.length()
                    + "\r\nConnection: close\r\n\r\n"
                    + body);
        Refusal.of(RawConnection.body(answer), 400);
      }
    }
  }

  @Test
  void otherCalculationsTakeNoUploads() {
    byte[] file = WavBytes.of(Kind.INT16, 48_000, pulse(1000));
    Refusal.of(parts(SoundLevelCalls.GOOD, Map.of("x", file)).post(SoundLevelCalls.PATH), 415);
  }

  @Test
  void anUploadToTheWrongAddressIsAnsweredThoughNobodyReadsIt() {
    byte[] file = WavBytes.of(Kind.INT16, 48_000, new float[2_000_000]);
    for (int i = 0; i < 5; i++) {
      Refusal.of(parts(SoundLevelCalls.GOOD, Map.of("x", file)).post(SoundLevelCalls.PATH), 415);
    }
  }

  @Test
  void samplesThatAreNoNumbersAreRefused() {
    String start = samples(pulse(1000));
    for (String strange : new String[] {"null", "\"1\"", "true", "{}", "[1]"}) {
      String list = start.substring(0, start.length() - 1) + "," + strange + "]";
      for (String samples : new String[] {list, "[0," + strange + "]"}) {
        Response response =
            given()
                .contentType("application/json")
                .body(json("{\"rate_hz\": 48000, \"samples\": " + samples + "}"))
                .post(PATH);
        assertEquals(
            Set.of("/recordings/0/recording/samples wrong-type"),
            Refusal.of(response, 422).faults());
      }
    }
  }

  @Test
  void aRecordingTooLongInJsonIsRefusedWhileItIsRead() {
    String samples = "[" + "0,".repeat(1 << 21) + "0]";
    Response response =
        given()
            .contentType("application/json")
            .body(json("{\"rate_hz\": 48000, \"samples\": " + samples + "}"))
            .post(PATH);
    assertEquals(
        "The request holds more than 2097152 samples in one recording.",
        Refusal.of(response, 413).detail());
  }

  @Test
  void aHundredMegabytesAreRefusedUnreadWhenTheirLengthIsStated() {
    String answer =
        RawConnection.answer(
            "POST "
                + PATH
                + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: multipart/form-data; boundary=b\r\n"
                + "Content-Length: "
                + 100 * MEBIBYTE
                + "\r\nConnection: close\r\n\r\n--b\r\n");
    assertTrue(answer.startsWith("HTTP/1.1 413 "), answer);
    Refusal.of(RawConnection.body(answer), 413);
  }

  /** Sends chunk after chunk until the service has had enough; a client sees the answer. */
  @Test
  void aHundredMegabytesOfUnstatedLengthAreRefusedWhenTheyPassTheLimit() throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), RunningServer.port())) {
      socket.setSoTimeout(20_000);
      OutputStream out = socket.getOutputStream();
      out.write(
          ("POST "
                  + PATH
                  + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: multipart/form-data;"
                  + " boundary=b\r\nTransfer-Encoding: chunked\r\nConnection: close\r\n\r\n")
              .getBytes(StandardCharsets.US_ASCII));
      chunk(
          out,
          "--b\r\nContent-Disposition: form-data; name=\"x\"\r\n\r\nno WAV at all"
              .getBytes(StandardCharsets.US_ASCII));
      byte[] block = new byte[MEBIBYTE];
      int sent = 0;
      try {
        while (sent < 100 && socket.getInputStream().available() == 0) {
          chunk(out, block);
          sent++;
        }
      } catch (IOException cutOff) {
        assertTrue(sent >= 64, "cut off after " + sent + " MiB: " + cutOff);
      }
      byte[] answer = socket.getInputStream().readAllBytes();
      String text = new String(answer, StandardCharsets.UTF_8);
      assertTrue(text.startsWith("HTTP/1.1 413 "), text);
      assertTrue(sent >= 64 && sent < 100, sent + " MiB were sent");
    }
  }

  private static void chunk(OutputStream out, byte[] bytes) throws IOException {
    out.write((Integer.toHexString(bytes.length) + "\r\n").getBytes(StandardCharsets.US_ASCII));
    out.write(bytes);
    out.write("\r\n".getBytes(StandardCharsets.US_ASCII));
    out.flush();
  }

  @Test
  void sixMicrophonesByEightChannelsGoInOneUpload() {
    StringJoiner channels = new StringJoiner(",");
    StringJoiner microphones = new StringJoiner(",");
    StringJoiner recordings = new StringJoiner(",");
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (int c = 0; c < 8; c++) {
      channels.add("{\"id\":\"c" + c + "\"}");
      float[][] heard = new float[6][];
      for (int m = 0; m < 6; m++) {
        heard[m] = Arrays.copyOf(pulse(500 + 30 * c + 3 * m), 48_000);
        recordings.add(
            String.format(
                Locale.ROOT,
                "{\"channel\":\"c%d\",\"microphone\":\"m%d\",\"recording\":"
                    + "{\"wav\":\"f%d\",\"channel\":%d}}",
                c,
                m,
                c,
                m));
      }
      files.put("f" + c, WavBytes.of(Kind.FLOAT32, 48_000, heard));
    }
    for (int m = 0; m < 6; m++) {
      microphones.add("{\"id\":\"m" + m + "\"}");
    }
    String request =
        "{\"kind\":\"impulse_response\",\"time_reference\":\"common_start\",\"channels\":["
            + channels
            + "],\"microphones\":["
            + microphones
            + "],\"recordings\":["
            + recordings
            + "]}";
    Response response = parts(request, files).post(PATH);
    assertEquals(200, response.statusCode(), response::asString);
    JsonNode result = Example.read(response.asString()).get("result");
    assertEquals(48, result.get("recordings").size());
    assertEquals(7 * 30 / 48.0, result.at("/channels/0/delay_ms").asDouble(), 1e-3);
  }
}
