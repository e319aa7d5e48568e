package org.footwell.web;

import static org.footwell.web.RunningServer.given;

import io.restassured.response.Response;

/** The one calculation by which behaviour that all share is tested: how to call it, well and badly. */
final class SoundLevelCalls {

  static final String PATH = "/v1/sound-level";

  /** A request of the smallest kind, as a body. */
  static final String GOOD =
      "{\"driver\":{\"sensitivity\":{\"level_db_spl\":90,\"basis\":\"one_watt\"},\"rated_ohm\":8},"
          + "\"power_w\":10}";

  /** The same as a query. */
  static final String QUERY =
      "driver.sensitivity.level_db_spl=90&driver.sensitivity.basis=one_watt&driver.rated_ohm=8"
          + "&power_w=10";

  /** The same as the columns and cells of a table. */
  static final String HEADER =
      "driver.sensitivity.level_db_spl,driver.sensitivity.basis,driver.rated_ohm,power_w";

  static final String ROW = "90,one_watt,8,10";

  /** Its level, 90 dB at a watt and ten times the power. */
  static final double LEVEL_DB_SPL = 100;

  private SoundLevelCalls() {}

  /** The good request with one more field, or one in place of that which it has. */
  static String with(String name, String json) {
    String without = GOOD.replaceAll(",\"" + name + "\":[^,}]+", "");
    return without.substring(0, without.length() - 1) + ",\"" + name + "\":" + json + "}";
  }

  static Response post(String body) {
    return given().contentType("application/json").body(body).post(PATH);
  }

  static Response get(String query) {
    return given().get(PATH + "?" + query);
  }
}
