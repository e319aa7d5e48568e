package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.response.Response;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What is sought in inches, feet and gauges is what is sought in metres: exactly, by the factors of NIST Special
 * Publication 811, appendix B, and the gauges of ASTM B258.
 */
@ExtendWith(RunningServer.class)
class SolveUnitsTest {

  private static final String LEVEL =
      """
      request.driver.sensitivity.level_db_spl=90&request.driver.sensitivity.basis=one_watt
      &request.driver.rated_ohm=4&output=level_db_spl""";

  private static final String BOX =
      """
      request.power_w=10&request.driver.rated_ohm=4&request.driver.re_ohm=3.4&request.driver.fs_hz=30
      &request.driver.qms=6&request.driver.qes=0.45&request.driver.vas_l={2 ft3}
      &request.driver.sd_cm2={50 in2}""";

  private static final String VENTED =
      BOX
          + """
            &request.box.fb_hz=33&request.port.count=1&request.port.diameter_mm={4 in}
            &request.box.longest_inside_mm={2 ft}""";

  private static final String CABLE =
      """
      request.supply_v=13.8&request.current_a=60&request.return_path=cable
      &request.permitted_drop_v=0.5&request.fuse_distance_m={8 in}&request.cable.one_way_m={16 ft}
      &request.cable.material=copper&request.cable.insulation_temperature_c=105
      &request.cable.engine_space=false&output=metric.drop_v&target=0.3""";

  /** Metric ones in each unit by that of the field. */
  private static final Pattern WRITTEN =
      Pattern.compile("([\\w.]+)=\\{([\\d/.]+) ?(ft3|ft|in2|in|AWG)\\}");

  /**
   * A question in which lengths, areas and volumes stand in braces with their unit.
   *
   * @param unit in which what is found is read, and how much of the metric one that is
   */
  record Question(String calculation, String asked, String unit, String worth) {}

  static Stream<Question> questions() {
    return Stream.of(
        new Question(
            "sound-level",
            LEVEL + "&request.power_w=50&input=distance_m&from={2 ft}&to={16 ft}&target=100",
            "ft",
            "0.3048"),
        new Question(
            "sound-level",
            LEVEL + "&request.distance_m={6 ft}&input=power_w&from=1&to=100&target=100",
            "W",
            "1"),
        new Question(
            "closed-box",
            BOX + "&input=box.volume_l&from={0.1 ft3}&to={10 ft3}&output=qtc&target=0.707",
            "ft³",
            "28.316846592"),
        new Question(
            "vented-box",
            VENTED
                + "&input=box.volume_l&from={1 ft3}&to={4 ft3}&output=vent.length_mm&target={5 in}",
            "ft³",
            "28.316846592"),
        new Question(
            "supply-cable",
            CABLE
                + "&side=at_most&input=cable.area_mm2&from={12 AWG}&to={0000 AWG}"
                + "&values.0={8 AWG}&values.1={4 AWG}&values.2={1/0 AWG}",
            "mm²",
            "1"),
        new Question(
            "supply-cable",
            CABLE + "&input=cable.one_way_m&from={3 in}&to={40 ft}&request.cable.area_mm2={4 AWG}",
            "ft",
            "0.3048"),
        new Question(
            "supply-cable",
            CABLE.replace("metric.drop_v&target=0.3", "metric.drop_v&target=0.26")
                + "&request.cable.area_mm2={4 AWG}&input=cable.insulation_temperature_c&from=60&to=105",
            "°C",
            "1"));
  }

  @ParameterizedTest
  @MethodSource("questions")
  void theSameIsFound(Question question) {
    JsonNode metric = Example.read(answer(question, SolveUnitsTest::metric, "json", "metric"));
    JsonNode inch = Example.read(answer(question, SolveUnitsTest::asWritten, "json", "inch"));
    assertEquals(metric.get("result"), inch.get("result"));
    assertTrue(metric.at("/result/seen/value_count").asInt() > 0, metric::toString);
  }

  /** What is found and what was looked at, in text. */
  @ParameterizedTest
  @MethodSource("questions")
  void itIsReadInTheUnitsOfTheReader(Question question) {
    JsonNode metric = Example.read(answer(question, SolveUnitsTest::metric, "json", "metric"));
    String text = answer(question, SolveUnitsTest::asWritten, "text", "inch");
    JsonNode value = metric.at("/result/value");
    if (value.isNumber()) {
      assertShows(value.decimalValue(), text, "value", question);
    }
    BigDecimal most = metric.at("/result/seen/most_at").decimalValue();
    assertShows(most, text, "most at", question);
  }

  private static void assertShows(BigDecimal metric, String text, String name, Question question) {
    Pattern line =
        Pattern.compile("\\n  " + name + " +(?:\\d+ AWG \\()?([\\d.]+) " + question.unit());
    MatchResult shown =
        line.matcher(text).results().findFirst().orElseThrow(() -> new AssertionError(text));
    BigDecimal figure = new BigDecimal(shown.group(1));
    BigDecimal wanted =
        metric.divide(new BigDecimal(question.worth()), figure.scale(), RoundingMode.HALF_UP);
    assertEquals(0, wanted.compareTo(figure), () -> wanted + " in " + text);
  }

  private static String answer(
      Question question, UnaryOperator<String> written, String format, String units) {
    String options = "&format=" + format + "&units=" + units;
    Response answer = ask(question.calculation(), written.apply(question.asked()) + options);
    assertEquals(200, answer.statusCode(), answer::asString);
    return answer.asString();
  }

  private static Response ask(String calculation, String query) {
    String encoded = query.replace("\n", "").replace(" ", "%20");
    return given().get("/v1/" + calculation + "/solve?" + encoded);
  }

  private static String asWritten(String question) {
    return question.replace("{", "").replace("}", "");
  }

  /** The same question with every quantity as the number of its field. */
  private static String metric(String question) {
    return WRITTEN
        .matcher(question)
        .replaceAll(
            found ->
                found.group(1) + "=" + metric(found.group(2), found.group(3), found, question));
  }

  private static String metric(String number, String unit, MatchResult field, String question) {
    if (unit.equals("AWG")) {
      int gauge = number.equals("1/0") ? 0 : number.equals("0000") ? -3 : Integer.parseInt(number);
      double acrossMm = 0.127 * Math.pow(92, (36 - gauge) / 39.0);
      return Double.toString(Math.PI / 4 * acrossMm * acrossMm);
    }
    String name = field.group(1);
    if (name.equals("from") || name.equals("to") || name.equals("target")) {
      String said = name.equals("target") ? "output=" : "input=";
      name = question.split("&?" + said, -1)[1].split("&", -1)[0];
    }
    BigDecimal one =
        switch (unit) {
          case "ft" -> new BigDecimal(name.endsWith("_mm") ? "304.8" : "0.3048");
          case "in" -> new BigDecimal(name.endsWith("_mm") ? "25.4" : "0.0254");
          case "in2" -> new BigDecimal("6.4516");
          default -> new BigDecimal("28.316846592");
        };
    return new BigDecimal(number).multiply(one).toPlainString();
  }

  @Test
  void sentencesHaveTheUnitOfWhatIsSought() {
    String far = LEVEL + "&request.power_w=50&input=distance_m&from=1 ft&to=2 ft&target=60";
    ask("sound-level", far + "&units=inch")
        .then()
        .body("findings[0].code", equalTo("target-not-reached"))
        .body("findings[0].text", containsString("From 1 ft to 2 ft level_db_spl goes from "))
        .body("findings[0].text", containsString(" and does not get to 60 dB SPL"));
    ask("sound-level", far)
        .then()
        .body("findings[0].text", containsString("From 0.3048 m to 0.6096 m level_db_spl"));
  }

  @Test
  void whatIsNoLengthIsToldHowToWriteOne() {
    ask("sound-level", LEVEL + "&request.power_w=50&input=distance_m&from=2 lb&to=6 ft&target=100")
        .then()
        .statusCode(422)
        .body("errors.pointer", contains("/from"))
        .body("errors[0].detail", containsString("such as 9 cm, 3 1/2 in, 12 ft"));
  }

  @Test
  void whatHasNoLengthTakesNone() {
    ask("sound-level", LEVEL + "&request.distance_m=1&input=power_w&from=2 ft&to=6 ft&target=100")
        .then()
        .statusCode(422)
        .body("errors.pointer", contains("/from", "/to"))
        .body("errors[0].detail", not(containsString("12 ft")));
  }
}
