package org.footwell.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class MoneyTest {

  private static BigDecimal of(String price) {
    return new BigDecimal(price);
  }

  @Test
  void sumsAreExactWhereBinaryFractionsAreNot() {
    assertEquals(of("0.30"), Money.sum(List.of(of("0.10"), of("0.20"))));
    assertEquals(of("0.0003"), Money.sum(List.of(of("0.0001"), of("0.0002"))));
  }

  @Test
  void oneUnknownPriceMakesTheSumUnknownAndOwnedPartsCostNothing() {
    assertNull(Money.sum(Arrays.asList(of("1"), null)));
    assertEquals(of("1"), Money.sum(List.of(of("1"), of("0"))));
  }

  @Test
  void aPriceForEachDecibelIsRoundedToTheCentAHalfUp() {
    assertEquals(of("0.03"), Money.perDb(of("0.25"), 10.0));
    assertEquals(of("33.33"), Money.perDb(of("100"), 3.0));
    assertEquals(of("0.00"), Money.perDb(of("0"), 3.0));
  }

  @Test
  void onlyAGainThatCanBeHeardHasAPrice() {
    assertNull(Money.perDb(of("100"), 0.09));
    assertNull(Money.perDb(of("100"), -3.0));
    assertNull(Money.perDb(of("100"), null));
    assertNull(Money.perDb(null, 3.0));
    assertEquals(of("1000.00"), Money.perDb(of("100"), 0.1));
  }

  @Test
  void exponentsAndEndlessZerosAreNotCarriedAlong() {
    assertEquals(of("0"), Money.plain(of("0E-20000")));
    assertEquals(of("100"), Money.plain(of("1E+2")));
    assertEquals(of("1.5"), Money.plain(of("1.500000")));
    assertEquals(of("64.90"), Money.plain(of("64.90")));
    assertNull(Money.plain(null));
  }
}
