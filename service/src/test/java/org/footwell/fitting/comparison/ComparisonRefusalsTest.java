package org.footwell.fitting.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import org.footwell.calculation.Fault;
import org.footwell.fitting.comparison.sides.ComparedAmplifierBuilder;
import org.footwell.fitting.comparison.sides.ComparedPosition.MountedAt;
import org.junit.jupiter.api.Test;

class ComparisonRefusalsTest {

  @Test
  void everythingUndecidedIsRefusedAtOnce() {
    PositionDraft first = new PositionDraft();
    first
        .place
        .amplifierBefore(PositionDraft.volts(8.9).powerW(20.0).build())
        .amplifierAfter(ComparedAmplifierBuilder.builder().loadOhm(4.0).build());
    PositionDraft second = new PositionDraft();
    second.factory = null;
    ComparisonDraft draft =
        ComparisonDraft.of(first, second).with("box", MountedAt.BOOT, 1.0, "1.2345");
    assertEquals(
        List.of(
            "/positions/0/amplifier_before exactly-one-of",
            "/positions/0/amplifier_after exactly-one-of",
            "/positions/1/factory needed-beside",
            "/positions/1/name duplicate"),
        draft.faults());
  }

  /** Neither three letters that nobody pays with, nor a metal, nor the code for tests. */
  @Test
  void aCurrencyIsOneThatSumsAreRoundedIn() {
    ComparisonDraft draft = ComparisonDraft.of(new PositionDraft());
    for (String code : List.of("QQQ", "XAU", "XTS")) {
      draft.comparison.currency(code);
      assertEquals(List.of("/currency currency-unknown"), draft.faults(), code);
    }
  }

  @Test
  void moneyHasFourDecimalsAtMost() {
    for (String price : List.of("0.00001", "1E-20000")) {
      PositionDraft position = new PositionDraft();
      position.replacement.price(new BigDecimal(price));
      assertEquals(
          List.of("/positions/0/replacement/price not-allowed"),
          ComparisonDraft.of(position).faults(),
          price);
    }
  }

  @Test
  void whatIsOutOfBoundsOrMissingIsNamed() {
    PositionDraft position = new PositionDraft();
    position.place.band(null);
    position.factory.ratedOhm(null);
    position.replacement.xmaxMm(0.0).price(new BigDecimal("-1"));
    position.place.driverCount(0);
    List<String> pointers =
        ComparisonDraft.of(position).refusals().stream().map(Fault::pointer).sorted().toList();
    assertEquals(
        List.of(
            "/positions/0/band",
            "/positions/0/driver_count",
            "/positions/0/factory/rated_ohm",
            "/positions/0/replacement/price",
            "/positions/0/replacement/xmax_mm"),
        pointers);
  }
}
