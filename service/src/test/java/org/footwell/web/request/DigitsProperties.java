package org.footwell.web.request;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.constraints.IntRange;

/** What holds of rounded numbers whatever they are. */
class DigitsProperties {

  /** Above it, rounding up can lead to more than a double holds. */
  private static final double MOST = 1.7e308;

  /** By their bits, so that every size comes. */
  @Provide
  Arbitrary<Double> numbers() {
    return Arbitraries.longs()
        .between(0x8000_0000_0000_0000L, 0x7fff_ffff_ffff_ffffL)
        .withDistribution(RandomDistribution.uniform())
        .map(Double::longBitsToDouble)
        .filter(number -> Math.abs(number) <= MOST);
  }

  private static double rounded(double value, int count) {
    return Double.parseDouble(Digits.of(count).text(value));
  }

  @Property
  void whatIsRoundedStaysWhenItIsRoundedAgain(
      @ForAll("numbers") double value,
      @ForAll @IntRange(min = Digits.LEAST, max = Digits.MOST) int count) {
    String text = Digits.of(count).text(value);
    assertEquals(text, Digits.of(count).text(Double.parseDouble(text)));
  }

  @Property
  void theSignOnlyStandsBeforeIt(
      @ForAll("numbers") double value,
      @ForAll @IntRange(min = Digits.LEAST, max = Digits.MOST) int count) {
    double size = Math.abs(value);
    assertEquals("-" + Digits.of(count).text(size), Digits.of(count).text(-size));
  }

  @Property
  void theOrderOfNumbersStays(
      @ForAll("numbers") double one,
      @ForAll("numbers") double other,
      @ForAll @IntRange(min = Digits.LEAST, max = Digits.MOST) int count) {
    double less = Math.min(one, other);
    double more = Math.max(one, other);
    assertTrue(rounded(less, count) <= rounded(more, count));
  }

  @Property
  void noneIsOffByMoreThanHalfOfItsLastDigit(
      @ForAll("numbers") double value,
      @ForAll @IntRange(min = Digits.LEAST, max = Digits.MOST) int count) {
    double lastDigit = Math.abs(value) * Math.pow(10, 1 - count);
    assertTrue(Math.abs(rounded(value, count) - value) <= lastDigit / 2 + Math.ulp(value));
  }

  @Property
  void noneHasMoreDigitsThanInFull(
      @ForAll("numbers") double value,
      @ForAll @IntRange(min = Digits.LEAST, max = Digits.MOST) int count) {
    String mantissa = Digits.of(count).text(value).replaceAll("E.*|[-.]", "");
    String digits = mantissa.replaceAll("^0+|0+$", "");
    assertTrue(digits.length() <= count, digits);
    assertTrue(Digits.of(count).text(value).length() <= Digits.inFull(value).length() + 1);
  }
}
