package org.footwell.web.request;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.footwell.acoustic.level.SoundLevelRequest;
import org.footwell.acoustic.level.SoundLevelResult;
import org.footwell.calculation.Card;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormatTest {

  /** Formats of a calculation that can also be drawn. */
  private static final Formats<SoundLevelRequest, SoundLevelResult> FORMATS =
      new Formats<>(
          Card.of("drawn", SoundLevelRequest.class, SoundLevelResult.class)
              .title("")
              .purpose("")
              .example("")
              .sources()
              .limits()
              .view("svg", "image/svg+xml", "a drawing", result -> new byte[] {1})
              .build());

  private static Format format(String name) {
    return FORMATS.wanted(name, null);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "*/*                                            | json",
        "application/json                               | json",
        "APPLICATION/JSON                               | json",
        "application/json; charset=utf-8                | json",
        "text/plain                                     | text",
        "text/csv                                       | csv",
        "application/xml                                | xml",
        "text/*                                         | text",
        "application/*                                  | json",
        "text/csv, application/json                     | csv",
        "text/csv;q=0.5, application/json               | json",
        "application/json;q=0.2, text/csv;q=0.9, */*;q=0.1 | csv",
        "text/html, application/xhtml+xml, */*;q=0.8    | json",
        "image/png, text/plain;q=0.1                    | text",
        "application/json;q=0, text/csv;q=0.1           | csv",
        "text/csv ; q=0.5 , text/plain ; q=0.6          | text",
        "image/svg+xml                                  | svg",
        "image/*, application/json;q=0.5                | svg"
      })
  void theAcceptHeaderDecides(String accept, String format) {
    assertEquals(format(format), FORMATS.wanted(null, accept));
  }

  @Test
  void theQueryGoesBeforeTheAcceptHeader() {
    assertEquals(Format.XML, FORMATS.wanted("xml", "text/csv"));
    assertEquals(Format.CSV, FORMATS.wanted("csv", "image/png"));
  }

  @Test
  void withoutAWishItIsJson() {
    assertEquals(Format.JSON, FORMATS.wanted(null, null));
    assertEquals(Format.JSON, FORMATS.wanted(null, "*/*"));
    assertEquals(Format.JSON, FORMATS.wanted(null, "image/png, */*;q=0.1"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"image/png", "application/json;q=0", "json", "text", "*", ",", "text/csv;q=high"})
  void anAcceptHeaderThatAllowsNoneIsRefused(String accept) {
    ProblemException refused =
        assertThrows(ProblemException.class, () -> FORMATS.wanted(null, accept), accept);
    assertEquals(ProblemType.NOT_ACCEPTABLE, refused.type());
  }

  @Test
  void theNamesAreThoseOfTheQuery() {
    assertEquals(List.of("json", "text", "csv", "xml", "svg"), FORMATS.names());
  }

  @Test
  void onlyAViewIsDrawn() {
    assertNull(FORMATS.view(Format.CSV));
    assertArrayEquals(new byte[] {1}, FORMATS.view(format("svg")).draw().apply(null));
  }
}
