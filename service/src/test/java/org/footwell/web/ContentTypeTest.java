package org.footwell.web;

import static java.util.concurrent.TimeUnit.SECONDS;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever stands in the header Content-Type, it is read or refused; the service never fails on it. */
@ExtendWith(RunningServer.class)
@Timeout(value = 60, unit = SECONDS)
class ContentTypeTest {

  /** Headers that name no body this service reads. */
  private static final List<String> REFUSED =
      List.of(
          "application/json; charset=nonsense",
          "application/json;charset=\"no such\"",
          "application/json; charset=utf-16",
          "application/json; charset=iso-8859-1",
          "application/json; charset=",
          "application/json; charset=\u00e4",
          "text/csv; charset=nonsense",
          "application/x-ndjson; charset=*",
          "multipart/form-data; charset=nonsense; boundary=a",
          "application/jsonx",
          "application/",
          "/json",
          ";",
          "; charset=utf-8",
          "a".repeat(1_000),
          "application/json, text/csv");

  /** Odd ways of naming JSON in UTF-8. */
  private static final List<String> READ =
      List.of(
          "application/json",
          "Application/JSON;Charset=UTF8",
          "application/json; charset=\"utf-8\"",
          "application/json ; charset = US-ASCII",
          "application/json;",
          "application/json; =; ;;",
          "application/json; odd=1; odd=2");

  private static String answer(String path, String contentType, String body) {
    return RawConnection.answer(
        "POST "
            + path
            + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: "
            + contentType
            + "\r\nContent-Length: "
            + body.getBytes(StandardCharsets.UTF_8).length
            + "\r\n\r\n"
            + body);
  }

  private static int status(String answer) {
    return Integer.parseInt(answer.substring("HTTP/1.1 ".length()).substring(0, 3));
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void everyCalculationRefusesWhatItDoesNotRead(Example example) {
    List<String> odd = new ArrayList<>();
    for (String type : REFUSED) {
      for (String path : List.of(example.path(), example.path() + "/batch")) {
        String answer = answer(path, type, "[]");
        if (status(answer) != 415) {
          odd.add(path + " " + type + ": " + answer);
        }
      }
    }
    assertEquals(List.of(), odd);
  }

  @ParameterizedTest
  @MethodSource("org.footwell.web.Example#all")
  void everyCalculationReadsWhatNamesJson(Example example) {
    List<String> odd = new ArrayList<>();
    for (String type : READ) {
      for (String path : List.of(example.path(), example.path() + "/batch")) {
        String answer = answer(path, type, "{}");
        if (status(answer) != 422 && status(answer) != 400) {
          odd.add(path + " " + type + ": " + answer);
        }
      }
    }
    assertEquals(List.of(), odd);
  }

  @Test
  void anUnknownEncodingOfLettersIsNamed() {
    String answer =
        answer(SoundLevelCalls.PATH, "application/json; charset=Nonsense", SoundLevelCalls.GOOD);
    assertEquals(
        "Send the body in UTF-8, not in nonsense.",
        Refusal.of(RawConnection.body(answer), 415).detail());
  }
}
