package org.footwell.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormatTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "*/*                                            | JSON",
        "application/json                               | JSON",
        "APPLICATION/JSON                               | JSON",
        "application/json; charset=utf-8                | JSON",
        "text/plain                                     | TEXT",
        "text/csv                                       | CSV",
        "application/xml                                | XML",
        "text/*                                         | TEXT",
        "application/*                                  | JSON",
        "text/csv, application/json                     | CSV",
        "text/csv;q=0.5, application/json               | JSON",
        "application/json;q=0.2, text/csv;q=0.9, */*;q=0.1 | CSV",
        "text/html, application/xhtml+xml, */*;q=0.8    | JSON",
        "image/png, text/plain;q=0.1                    | TEXT",
        "application/json;q=0, text/csv;q=0.1           | CSV",
        "text/csv ; q=0.5 , text/plain ; q=0.6          | TEXT"
      })
  void theAcceptHeaderDecides(String accept, Format format) {
    assertEquals(format, Format.wanted(null, accept, Format.JSON));
  }

  @Test
  void theQueryGoesBeforeTheAcceptHeader() {
    assertEquals(Format.XML, Format.wanted("xml", "text/csv", Format.JSON));
    assertEquals(Format.CSV, Format.wanted("csv", "image/png", Format.JSON));
  }

  @Test
  void withoutAWishTheStandardIsTaken() {
    assertEquals(Format.TEXT, Format.wanted(null, null, Format.TEXT));
    assertEquals(Format.TEXT, Format.wanted(null, "*/*", Format.TEXT));
    assertEquals(Format.TEXT, Format.wanted(null, "image/png, */*;q=0.1", Format.TEXT));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"image/png", "application/json;q=0", "json", "text", "*", ",", "text/csv;q=high"})
  void anAcceptHeaderThatAllowsNoneIsRefused(String accept) {
    ProblemException refused =
        assertThrows(
            ProblemException.class, () -> Format.wanted(null, accept, Format.JSON), accept);
    assertEquals(ProblemType.NOT_ACCEPTABLE, refused.type());
  }

  @Test
  void theNamesAreThoseOfTheQuery() {
    assertEquals(List.of("json", "text", "csv", "xml"), Format.names());
  }
}
