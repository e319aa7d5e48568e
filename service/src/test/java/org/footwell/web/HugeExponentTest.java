package org.footwell.web;

import static org.hamcrest.Matchers.anyOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.is;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import io.restassured.response.ValidatableResponse;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers whose exponent no decimal number can hold are refused like any that are too large. */
@ExtendWith(RunningServer.class)
class HugeExponentTest {

  private static final String WITH_PRICE =
      SoundLevelCalls.GOOD.replace("\"rated_ohm\":8", "\"rated_ohm\":8,\"price\":#");

  private static ValidatableResponse post(String path, String body) {
    return RunningServer.given().contentType("application/json").body(body).post(path).then();
  }

  /** At once, and not after all the zeros are written out. */
  @ParameterizedTest
  @ValueSource(strings = {"1e2147483648", "1e600000000", "-1e99999999999", "1e-2147483650"})
  void oneIsRefusedAtOnceWhereverItStands(String huge) {
    String power = SoundLevelCalls.with("power_w", huge);
    assertTimeoutPreemptively(
        Duration.ofSeconds(60),
        () -> {
          for (String body :
              List.of(
                  power,
                  SoundLevelCalls.with("driver_count", huge),
                  WITH_PRICE.replace("#", huge))) {
            refused(SoundLevelCalls.PATH, body);
            refused(SoundLevelCalls.PATH + "/sweep", "{\"request\":%s}".formatted(body));
          }
          refused("/v1/arrival-times", "{\"kind\":%s,\"channels\":[%s]}".formatted(huge, huge));
          SoundLevelCalls.get(SoundLevelCalls.QUERY + "&driver.price=" + huge)
              .then()
              .statusCode(422);
        });
  }

  private static void refused(String path, String body) {
    post(path, body).statusCode(anyOf(is(400), is(422)));
  }

  @Test
  void inABatchItIsAFaultOfItsEntryAlone() {
    String batch =
        "[" + SoundLevelCalls.with("power_w", "1e2147483648") + "," + SoundLevelCalls.GOOD + "]";
    post(SoundLevelCalls.PATH + "/batch", batch)
        .statusCode(200)
        .body(containsString("\"status\":4"))
        .body(containsString("\"verdict\""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"\"", "\" \"", "\"\\t\""})
  void aBlankTextIsNoNumberThatWasLeftOut(String blank) {
    post(SoundLevelCalls.PATH, SoundLevelCalls.with("distance_m", blank)).statusCode(422);
    post(SoundLevelCalls.PATH, SoundLevelCalls.with("driver_count", blank)).statusCode(422);
    post(SoundLevelCalls.PATH, SoundLevelCalls.with("drive", blank)).statusCode(422);
    post(SoundLevelCalls.PATH, WITH_PRICE.replace("#", blank)).statusCode(422);
    post(SoundLevelCalls.PATH, SoundLevelCalls.with("cabin", blank)).statusCode(422);
  }
}
