package org.footwell.calculation.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarksTest {

  /** Source: the Unicode Common Locale Data Repository, as Java has it. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "de"})
  void areThoseOfTheCommonLocaleData(String code) {
    Locale language = Locale.forLanguageTag(code);
    DecimalFormatSymbols published = DecimalFormatSymbols.getInstance(language);
    DecimalFormatSymbols ours = Marks.of(language);
    assertEquals(published.getDecimalSeparator(), ours.getDecimalSeparator());
    assertEquals(published.getGroupingSeparator(), ours.getGroupingSeparator());
    assertEquals(published.getZeroDigit(), ours.getZeroDigit());
  }
}
