package org.footwell.calculation.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MarksTest {

  static List<String> languages() {
    return Reader.languages();
  }

  /** Source: the Unicode Common Locale Data Repository, as Java has it. */
  @ParameterizedTest
  @MethodSource("languages")
  void areThoseOfTheCommonLocaleData(String code) {
    Locale language = Locale.forLanguageTag(code);
    DecimalFormatSymbols published = DecimalFormatSymbols.getInstance(language);
    DecimalFormatSymbols ours = Marks.of(language);
    assertEquals(published.getDecimalSeparator(), ours.getDecimalSeparator());
    assertEquals(published.getGroupingSeparator(), ours.getGroupingSeparator());
    assertEquals(published.getZeroDigit(), ours.getZeroDigit());
  }
}
