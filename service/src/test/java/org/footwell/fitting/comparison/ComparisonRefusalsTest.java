package org.footwell.fitting.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Fault;
import org.footwell.fitting.comparison.sides.ComparedAmplifier;
import org.footwell.fitting.comparison.sides.ComparedPosition.MountedAt;
import org.junit.jupiter.api.Test;

class ComparisonRefusalsTest {

  private static List<String> faults(ComparisonDraft draft) {
    return Answers.faults(new DriverComparison(), draft.request()).stream()
        .map(fault -> fault.pointer() + " " + fault.code())
        .toList();
  }

  @Test
  void everythingUndecidedIsRefusedAtOnce() {
    PositionDraft first = new PositionDraft();
    first.amplifierBefore = new ComparedAmplifier(8.9, 20.0, null, null);
    first.amplifierAfter = new ComparedAmplifier(null, null, 4.0, null);
    PositionDraft second = new PositionDraft();
    second.factory = null;
    ComparisonDraft draft =
        ComparisonDraft.of(first, second).with("box", MountedAt.BOOT, 1.0, "1.2345");
    assertEquals(
        List.of(
            "/positions/0/amplifier_before exactly-one-of",
            "/positions/0/amplifier_after exactly-one-of",
            "/positions/1/name duplicate",
            "/positions/1/amplifier_before amplifier-without-factory-part"),
        faults(draft));
  }

  @Test
  void moneyHasFourDecimalsAtMost() {
    for (String price : List.of("0.00001", "1E-20000")) {
      PositionDraft position = new PositionDraft();
      position.replacement.price = new BigDecimal(price);
      assertEquals(
          List.of("/positions/0/replacement/price not-allowed"),
          faults(ComparisonDraft.of(position)),
          price);
    }
  }

  @Test
  void whatIsOutOfBoundsOrMissingIsNamed() {
    PositionDraft position = new PositionDraft();
    position.band = null;
    position.factory.ratedOhm = null;
    position.replacement.xmaxMm = 0.0;
    position.replacement.price = new BigDecimal("-1");
    position.driverCount = 0;
    List<String> pointers =
        Answers.faults(new DriverComparison(), ComparisonDraft.of(position).request()).stream()
            .map(Fault::pointer)
            .sorted()
            .toList();
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
