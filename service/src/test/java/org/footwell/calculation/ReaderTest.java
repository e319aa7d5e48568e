package org.footwell.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.footwell.calculation.text.Reader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.NullAndEmptySource;
import org.junit.jupiter.params.provider.ValueSource;

class ReaderTest {

  @ParameterizedTest
  @NullAndEmptySource
  @ValueSource(strings = {"*", "en", "en-GB,de;q=0.5", "tlh", "q=1,;;", "en;q=2"})
  void whoAsksForNoLanguageThatIsThereReadsEnglish(String acceptLanguage) {
    assertEquals(Locale.ENGLISH, Reader.of(acceptLanguage).language());
  }
}
