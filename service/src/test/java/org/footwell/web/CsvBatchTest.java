package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.footwell.web.SoundLevelCalls.HEADER;
import static org.footwell.web.SoundLevelCalls.PATH;
import static org.footwell.web.SoundLevelCalls.ROW;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Batches in CSV. */
@ExtendWith(RunningServer.class)
class CsvBatchTest {

  private static Response post(String body) {
    return given().contentType("text/csv").body(body).post(PATH + "/batch");
  }

  private static Table table(String body) {
    Response response = post(body);
    assertEquals(200, response.statusCode(), response::asString);
    assertEquals("text/csv;charset=utf-8", response.contentType());
    assertEquals("no-store", response.header("Cache-Control"));
    return Table.of(response.asString());
  }

  @Test
  void theResultAndWhatThereIsToSayAreAppended() {
    assertEquals(
        HEADER
            + ",level_db_spl,peak_level_db_spl,one_watt_level_db_spl,"
            + "two_point_eight_three_volt_level_db_spl,driver_power_w,driver_count_db,distance_db,"
            + "cabin_gain_db,compression_db,power_needed_w,level_dba,level_dbc,peak_level_dbc,"
            + "over_road_noise_db,exposure_allowed_h,limits.largest_level_db_spl,limits.holds,"
            + "limits.thermal_level_db_spl,limits.displacement_level_db_spl,limits.displacement_mm,"
            + "verdict,findings,error\n"
            + ROW
            + ",100.0,103.01029995663981,90.0,90.00482884056638,10.0,0.0,0.0,,0.0,,,,,,,,,,,,note,"
            + "exposure-unknown,\n",
        post(HEADER + "\n" + ROW + "\n").asString());
  }

  @Test
  void rowsKeepTheirOrderAndABadOneStopsNothing() {
    Table table =
        table(HEADER + "\n90,one_watt,8,1\n90,one_watt,8,ten\n90,one_watt,8,100\n90,loud,8000,\n");
    assertEquals(List.of("90.0", "", "110.0", ""), table.column("level_db_spl"));
    assertEquals(List.of("note", "", "note", ""), table.column("verdict"));
    assertEquals(
        List.of(
            "",
            "line 3: power_w must be a number from 0.000001 to 50000.",
            "",
            "line 5: driver.sensitivity.basis must be one of one_watt, two_point_eight_three_volt."
                + " driver.rated_ohm must be a number from 0.1 to 1000. Give exactly one of"
                + " power_w, voltage_v."),
        table.column("error"));
  }

  @Test
  void whatWasPlainlyMeantIsTold() {
    Table table =
        table(HEADER + "\n90,one_watt,8, 3.2\n90,One_Watt,+8,10\n90,one_watt,8,ten watts\n");
    assertEquals(
        List.of(
            "line 2: power_w must be a number from 0.000001 to 50000, written as 3.2.",
            "line 3: driver.rated_ohm must be a number from 0.1 to 1000, written as 8."
                + " driver.sensitivity.basis must be one of one_watt, two_point_eight_three_volt,"
                + " written as one_watt.",
            "line 4: power_w must be a number from 0.000001 to 50000."),
        table.column("error"));
  }

  @Test
  void aResultNamedLikeAFieldThatIsGivenIsToldApart() {
    String[] lines =
        Example.flat()
            .filter(example -> example.id().equals("supply-cable"))
            .map(Example::csv)
            .findFirst()
            .orElseThrow()
            .lines()
            .toArray(String[]::new);
    Response response =
        given()
            .contentType("text/csv")
            .body(lines[0] + ",fuse_distance_limit_m\n" + lines[1] + ",0.3\n")
            .post("/v1/supply-cable/batch");
    Table table = Table.of(response.asString());
    assertEquals(List.of("0.3"), table.column("fuse_distance_limit_m"), response::asString);
    assertEquals(List.of("0.3"), table.column("result.fuse_distance_limit_m"));
  }

  @Test
  void aPassingColumnNamedLikeAResultIsRefused() {
    Refusal refusal = Refusal.of(post("verdict," + HEADER + "\nok," + ROW + "\n"), 422);
    assertEquals(Set.of("/verdict name-of-result"), refusal.faults());
    assertEquals(
        "verdict is the name of a column of the answer: call yours something else.",
        refusal.detailAt("/verdict"));
  }

  @Test
  void anEmptyCellIsAFieldNotGiven() {
    Table table = table(HEADER + ",distance_m\n" + ROW + ",\n" + ROW + ",10\n");
    assertEquals(List.of("100.0", "80.0"), table.column("level_db_spl"));
  }

  @Test
  void furtherColumnsPassThrough() {
    Table table = table("car,\"to do\"," + HEADER + "\nred,\"a, \"\"b\"\"\nc\"," + ROW + "\n");
    assertEquals(List.of("red"), table.column("car"));
    assertEquals(List.of("a, \"b\"\nc"), table.column("to do"));
    assertEquals(List.of("100.0"), table.column("level_db_spl"));
  }

  @Test
  void lettersOfAnyLanguagePassThrough() {
    Table table = table("car," + HEADER + "\nGrün 赤 🚗," + ROW + "\n");
    assertEquals(List.of("Grün 赤 🚗"), table.column("car"));
  }

  @Test
  void quotedCellsAreRead() {
    Table table = table(HEADER + "\n\"90\",\"one_watt\",\"8\",\"10\"\n");
    assertEquals(List.of("100.0"), table.column("level_db_spl"));
  }

  @Test
  void aByteOrderMarkIsPassedOver() {
    assertEquals(List.of("100.0"), table("\uFEFF" + HEADER + "\n" + ROW).column("level_db_spl"));
  }

  @Test
  void lineEndsOfEveryKindAreRead() {
    for (String end : Set.of("\n", "\r\n", "\r")) {
      Table table = table(HEADER + end + ROW + end + ROW);
      assertEquals(List.of("100.0", "100.0"), table.column("level_db_spl"));
    }
  }

  @Test
  void blankLinesAreSkippedButCounted() {
    Table table = table(HEADER + "\n\n" + ROW + "\n\n\n90,one_watt,8,ten\n");
    assertEquals(List.of("100.0", ""), table.column("level_db_spl"));
    assertTrue(table.column("error").get(1).startsWith("line 6: "));
  }

  @Test
  void aHeaderAloneIsAnsweredWithAHeader() {
    assertEquals(List.of(), table(HEADER + "\n").rows());
  }

  @Test
  void semicolonsSeparateWhenTheCallerSaysSo() {
    String body = (HEADER + "\n" + ROW + "\n90,one_watt,8,1,5\n").replace("1,5", "\"1#5\"");
    Response response =
        given()
            .contentType("text/csv")
            .body(body.replace(',', ';').replace('#', ','))
            .post(PATH + "/batch?separator=semicolon");
    Table table = Table.of(response.asString(), ';');
    assertEquals(List.of("100.0", ""), table.column("level_db_spl"));
    assertEquals(
        "line 3: power_w must be a number from 0.000001 to 50000 with a decimal point, not a comma.",
        table.column("error").get(1));
  }

  @Test
  void onlyTheFiguresAskedForAreAppendedInTheOrderAskedFor() {
    String csv =
        """
        power_w,driver.sensitivity.level_db_spl,driver.sensitivity.basis,driver.rated_ohm
        10,90,one_watt,8
        """;
    Response response =
        given()
            .contentType("text/csv")
            .body(csv)
            .post(PATH + "/batch?columns=peak_level_db_spl,level_db_spl");
    assertEquals(
        "power_w,driver.sensitivity.level_db_spl,driver.sensitivity.basis,driver.rated_ohm,"
            + "peak_level_db_spl,level_db_spl,verdict,findings,error",
        response.asString().lines().findFirst().orElseThrow());
    assertEquals(List.of("100.0"), Table.of(response.asString(), ',').column("level_db_spl"));
    Response judged =
        given().contentType("text/csv").body(csv).post(PATH + "/batch?columns=verdict");
    assertTrue(
        judged
            .asString()
            .startsWith(
                "power_w,driver.sensitivity.level_db_spl,driver.sensitivity.basis,driver.rated_ohm,"
                    + "verdict,findings,error\n"
                    + "10,90,one_watt,8,note,"),
        judged.asString());
  }

  @Test
  void figuresThatTheResultDoesNotHaveAreRefused() {
    Refusal refusal =
        Refusal.of(
            given()
                .contentType("text/csv")
                .body("power_w\n1\n")
                .post(PATH + "/batch?columns=levl_db_spl,colour"),
            422);
    assertEquals(
        Set.of("/columns/levl_db_spl unknown-field", "/columns/colour unknown-field"),
        refusal.faults());
    assertEquals(
        "columns.levl_db_spl is not a known field. Did you mean level_db_spl?",
        refusal.detailAt("/columns/levl_db_spl"));
  }

  @Test
  void anotherSeparatorIsRefused() {
    Response response =
        given().contentType("text/csv").body("x").post(PATH + "/batch?separator=tab");
    assertEquals("separator must be one of comma, semicolon.", Refusal.of(response, 422).detail());
  }

  @Test
  void everyFaultOfTheHeaderIsToldInOneProblem() {
    Refusal refusal =
        Refusal.of(post("driver.ratd_ohm,power_w,power_w,colour\n4,10,10,red\n"), 422);
    assertEquals(
        Set.of(
            "/power_w duplicate",
            "/driver.rated_ohm required",
            "/driver.sensitivity.level_db_spl required",
            "/driver.sensitivity.basis required",
            "/driver.ratd_ohm unknown-field"),
        refusal.faults());
    assertEquals(
        "driver.ratd_ohm is not a known field. Did you mean driver.rated_ohm?",
        refusal.detailAt("/driver.ratd_ohm"));
  }

  @Test
  void aFieldInCapitalsOrWithBlanksIsNotPassedThroughUnread() {
    Refusal refusal = Refusal.of(post("POWER_W,power_w ," + HEADER + "\n1,2," + ROW + "\n"), 422);
    assertEquals(Set.of("/POWER_W unknown-field", "/power_w  unknown-field"), refusal.faults());
    assertEquals(
        "POWER_W is not a known field. Did you mean power_w?", refusal.detailAt("/POWER_W"));
  }

  @Test
  void columnsWithoutANamePassThrough() {
    Table table = table(HEADER + ",,\n" + ROW + ",a,\n");
    assertEquals(List.of("100.0"), table.column("level_db_spl"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"power_w\"x,", "car,\"power_w,"})
  void aHeaderThatCannotBeReadIsOneProblem(String begin) {
    Refusal refusal = Refusal.of(post(begin + HEADER + "\n" + ROW + "\n"), 400);
    assertTrue(refusal.detail().startsWith("The header, line 1: "), refusal.detail());
  }

  @Test
  void whatIsNotUtf8IsToldAndFailsAlone() {
    byte[] latin =
        ("car," + HEADER + "\nGr\u00fcn," + ROW + "\nred," + ROW + "\n")
            .getBytes(StandardCharsets.ISO_8859_1);
    Table table =
        Table.of(given().contentType("text/csv").body(latin).post(PATH + "/batch").asString());
    assertEquals(List.of("", "100.0"), table.column("level_db_spl"));
    assertEquals(List.of("line 2: The row is not in UTF-8.", ""), table.column("error"));
    byte[] header = ("gr\u00fcn," + HEADER + "\n").getBytes(StandardCharsets.ISO_8859_1);
    assertEquals(
        "The header is not in UTF-8.",
        Refusal.of(given().contentType("text/csv").body(header).post(PATH + "/batch"), 400)
            .detail());
  }

  @Test
  void anEmptyBatchHasNoHeader() {
    assertEquals("The CSV has no header line.", Refusal.of(post(""), 400).detail());
  }

  @Test
  void aRowWithTooFewOrTooManyCellsFailsAlone() {
    Table table = table(HEADER + "\n90,one_watt\n" + ROW + "\n" + ROW + ",1\n" + ROW + "\n");
    assertEquals("100.0", table.row(1).get("level_db_spl"));
    assertEquals("100.0", table.row(3).get("level_db_spl"));
    assertEquals(
        List.of(
            "line 2: The row has 2 cells, the header 4.",
            "",
            "line 4: The row has 5 cells, the header 4.",
            ""),
        table.column("error"));
    assertEquals(List.of("", "100.0", "", "100.0"), table.column("level_db_spl"));
    assertEquals("10", table.row(2).get("power_w"));
  }

  @Test
  void repeatedGroupsHaveAColumnForEachEntry() {
    Table table =
        table(
            HEADER
                + ",spectrum.0.frequency_hz,spectrum.0.level_db,spectrum.1.frequency_hz,"
                + "spectrum.1.level_db\n"
                + ROW
                + ",1000,80,,\n"
                + ROW
                + ",,,,\n");
    assertEquals(100, Double.parseDouble(table.row(0).get("level_dba")), 0.01);
    assertEquals("", table.row(1).get("level_dba"));
  }

  @Test
  void twentyThousandRowsStayInOrder() {
    StringBuilder body = new StringBuilder("row," + HEADER + "\n");
    IntStream.range(0, 20_000)
        .forEach(i -> body.append(i).append(",90,one_watt,8,").append(1 + i % 100).append('\n'));
    Table table = table(body.toString());
    assertEquals(
        IntStream.range(0, 20_000).mapToObj(Integer::toString).toList(), table.column("row"));
    assertEquals(
        IntStream.range(0, 20_000).mapToObj(i -> (1.0 + i % 100) + "").toList(),
        table.column("driver_power_w"));
    assertEquals(Set.of(""), Set.copyOf(table.column("error")));
  }

  @Test
  void aQuoteThatNeverClosesIsToldAtItsLine() {
    for (String rest : List.of("", "\n", "\n" + ROW + ",x\n" + ROW + ",\"\"\n")) {
      Table table = table(HEADER + ",car\n" + ROW + ",\"red\nor\"\n\n" + ROW + ",\"blue" + rest);
      assertEquals(List.of("100.0", ""), table.column("level_db_spl"));
      assertEquals(
          "line 5: a quote that opens in this row is never closed.", table.column("error").get(1));
    }
  }

  @Test
  void aCellThatGoesOnAfterItsQuoteIsToldAtItsLine() {
    Table table = table(HEADER + "\n" + ROW + "\n\"90\"x,one_watt,8,10\n");
    assertEquals("100.0", table.row(0).get("level_db_spl"));
    assertTrue(table.column("error").get(1).startsWith("line 3: "), table::toString);
  }

  @Test
  void aCellBeyondTheLimitIsToldAtItsLine() {
    String large = "x".repeat(1 << 20);
    Table table = table("car," + HEADER + "\nred," + ROW + "\n" + large + "," + ROW + "\n");
    assertEquals("100.0", table.row(0).get("level_db_spl"));
    assertEquals(
        "line 3: the CSV cannot be read from here on; a row has more than 1048576 characters, or a"
            + " cell goes on after its closing quote.",
        table.column("error").get(1));
  }
}
