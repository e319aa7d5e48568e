package org.footwell.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextsTest {

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "3.0102999566, 3.01",
    "123456.7, 123500",
    "0.00012345, 0.0001235",
    "1e-12, 0.000000000001",
    "99.999, 100"
  })
  void numbersForPeopleHaveFourDigitsAndNoExponent(double number, String text) {
    assertEquals(text, Texts.forPeople(number));
  }

  @ParameterizedTest
  @CsvSource({
    "cableMm2, cable_mm2",
    "reOhm, re_ohm",
    "xM, x_m",
    "levelDbSpl, level_db_spl",
    "qms, qms"
  })
  void namesAreSnakeCase(String camel, String snake) {
    assertEquals(snake, Names.snake(camel));
  }

  @Test
  void aNameFarFromAllOthersHasNoNearest() {
    assertEquals("", Names.nearest("zzz", List.of("power_w")).orElse(""));
    assertEquals("power_w", Names.nearest("powr_w", List.of("power_w", "load_ohm")).orElse(""));
  }
}
