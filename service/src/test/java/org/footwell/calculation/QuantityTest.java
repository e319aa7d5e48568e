package org.footwell.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Quantities by their names: a range, or the only numbers there are. */
class QuantityTest {

  public record Wired(Integer polarity) {}

  public record Loose(@Schema(description = "0 is unknown") @Min(-1) @Max(1) Integer polarity) {}

  @Test
  void anEntryHasARangeOrNumbersOrNeither() {
    Vocabulary.Quantity range = Vocabulary.of("trim_db").orElseThrow();
    assertEquals(List.of("-80", "0"), List.of(range.least(), range.most()));
    assertTrue(range.only().isEmpty());
    Vocabulary.Quantity numbers = Vocabulary.of("polarity").orElseThrow();
    assertEquals(List.of("-1", "1"), numbers.only());
    assertTrue(numbers.sentence().startsWith("1 as wired"), numbers.sentence());
    assertTrue(Vocabulary.of("rate_hz").orElseThrow().sentence().startsWith("Sample rate"));
  }

  @Test
  void aQuantityOfFewNumbersTakesNoOther() {
    assertEquals(List.of(), faults(new Wired(-1)));
    assertEquals(List.of(), faults(new Wired(null)));
    List<Fault> zero = faults(new Wired(0));
    assertEquals("not-allowed /polarity", zero.get(0).code() + " " + zero.get(0).pointer());
    assertEquals("one of -1, 1", zero.get(0).allowed());
    assertEquals(1, faults(new Wired(2)).size());
    assertEquals(
        List.of(BigDecimal.ONE.negate(), BigDecimal.ONE),
        Shape.of(Wired.class).fields().get(0).only());
  }

  @Test
  void aRangeOfItsOwnStandsInPlaceOfTheNumbers() {
    assertEquals(List.of(), faults(new Loose(0)));
    assertEquals(1, faults(new Loose(2)).size());
    assertTrue(Shape.of(Loose.class).fields().get(0).only().isEmpty());
  }

  @SuppressWarnings("unchecked") // the shape of the record itself
  private static List<Fault> faults(Record record) {
    Faults faults = new Faults();
    Shape.of((Class<Record>) record.getClass()).check(record, faults);
    return faults.list();
  }
}
