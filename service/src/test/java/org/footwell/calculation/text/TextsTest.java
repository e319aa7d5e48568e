package org.footwell.calculation.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Faults;
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
    "0.00002, 0.00002",
    "1.2e-6, 1.2e-6",
    "9.6e-15, 0",
    "-9.6e-15, 0",
    "9999000, 9999000",
    "9873000000, 9.873e9",
    "-1e300, -1e300",
    "99.999, 100"
  })
  void numbersForPeopleHaveFourDigitsAndNoRowsOfZeros(double number, String text) {
    assertEquals(text, Texts.forPeople(number));
  }

  /** Typed by hand: a minus sign everywhere, and the decimal mark of the language. */
  @ParameterizedTest
  @CsvSource({
    "en, -12.34567, −12.35",
    "de, -12.34567, '−12,35'",
    "de, 3.0, 3",
    "de, 1.234e-6, '1,234e−6'",
    "fr, 0.5, 0.5"
  })
  void numbersInASentenceAreThoseOfItsLanguage(Locale language, double number, String text) {
    assertEquals(text, Texts.forPeople(number, Texts.DIGITS, language));
  }

  @Test
  void aCallersOwnWordsAreNoNumbers() {
    assertEquals("-1.5", Texts.forPeople("-1.5", Texts.DIGITS, Locale.GERMAN));
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

  @ParameterizedTest
  @CsvSource({
    "fs, fs_hz",
    "re, re_ohm",
    "cms, cms_mm_per_n",
    "tuned, tuning_hz",
    "tuned_hz, tuning_hz",
    "le, le_mh",
    "price_eur, price"
  })
  void aNameWithoutItsUnitOrStartingAlikeIsKnownAgain(String wrong, String meant) {
    List<String> known =
        List.of("le_mh", "re_ohm", "fs_hz", "cms_mm_per_n", "tuning_hz", "qts", "price");
    assertEquals(meant, Names.nearest(wrong, known).orElse(""));
  }

  @Test
  void differencesOfNothingAreZeroAndCallersWordsStayAsTheyAre() {
    assertEquals(
        "{value} is off by 0 dB, 3 percent of 2e−8",
        filled(
            "{name:own} is off by {value} dB, {share} percent of {of}",
            Map.of("name", "{value}", "value", 2e-8, "share", 3.0000001, "of", 2e-8)));
  }

  @ParameterizedTest
  @CsvSource({
    "79.999, 80, 79.999 is below 80 (1.235)",
    "79.9999, 80, 79.9999 is below 80 (1.235)",
    "79, 80, 79 is below 80 (1.235)",
    "79.9999999999, 80, 80 is below 80 (1.235)"
  })
  void aValueIsToldFromTheLimitItIsHeldAgainst(double value, double limit, String sentence) {
    Map<String, Object> arguments = Map.of("value", value, "limit", limit, "other", 1.23456);
    assertEquals(sentence, filled("{value} is below {limit} ({other})", arguments));
  }

  private static String filled(String template, Map<String, Object> arguments) {
    return new Template(template).filled(arguments::get, any -> null, Reader.ANYONE);
  }

  /** As in tables, unless nothing or no difference would be left of it. */
  @ParameterizedTest
  @CsvSource({
    "11.357, 12, 11.4 V of 12 V",
    "11.36, 11.38, 11.36 V of 11.38 V",
    "0.0004, 12, 0.0004 V of 12 V",
    "0, 12, 0 V of 12 V"
  })
  void besideTablesFiguresAreRoundedAsThere(double value, double limit, String sentence) {
    Map<String, Object> arguments = Map.of("value", value, "limit", limit);
    Template template = new Template("{value} V of {limit} V");
    assertEquals(
        sentence,
        template.filled(
            arguments::get, any -> null, Reader.ANYONE.told(Reader.Wording.BESIDE_TABLES)));
  }

  @Test
  void aSentenceThatIsNotFilledInIsFoundInTests() {
    Map<String, Object> other = Map.of("limit", 1.0);
    assertThrows(AssertionError.class, () -> filled("{value} is too much.", other));
  }

  @Test
  void whatNoNumberCanHoldIsSaidToBeTooLarge() {
    Faults faults = new Faults();
    faults
        .add(CoreFault.NOT_ALLOWED)
        .at("/re_ohm")
        .given(Double.NEGATIVE_INFINITY)
        .allowed(Allowed.below(1, ""));
    assertEquals("a number too large to hold", faults.list().get(0).given());
  }
}
