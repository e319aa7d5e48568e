package org.footwell.calculation.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sums of money as each language writes them. */
class WrittenMoneyTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1600.00; 1,600.00; 1.600,00",
        "999.95; 999.95; 999,95",
        "-1234567.125; \u22121,234,567.125; \u22121.234.567,125",
        "1800; 1,800; 1.800",
        "0; 0; 0"
      })
  void thousandsAreSetApart(BigDecimal sum, String english, String german) {
    assertEquals(english, WrittenMoney.of(sum, Locale.ENGLISH));
    assertEquals(german, WrittenMoney.of(sum, Locale.GERMAN));
  }

  @Test
  void decimalsAreAddedAndNoneIsLost() {
    assertEquals(new BigDecimal("1600.00"), WrittenMoney.withDecimals(new BigDecimal("1.6E+3"), 2));
    assertEquals(new BigDecimal("78.125"), WrittenMoney.withDecimals(new BigDecimal("78.125"), 2));
  }

  /** A program gets the number itself. */
  @Test
  void aSentenceHasThemToo() {
    Phrase phrase = Phrase.of(CoreWords.OR);
    assertEquals("1.600,00", Arguments.said(new BigDecimal("1600.00"), german()));
    assertEquals(
        new BigDecimal("1600.00"),
        phrase.with("sum", new BigDecimal("1600.00")).all().get(0).value());
  }

  private static Reader german() {
    return Reader.in("de").orElseThrow();
  }
}
