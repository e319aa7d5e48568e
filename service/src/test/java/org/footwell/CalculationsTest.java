package org.footwell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class CalculationsTest {

  @Test
  void everyCalculationIsListedUnderTheIdOfItsCard() {
    Calculations.BY_ID.forEach((id, made) -> assertEquals(id, made.get().card().id()));
  }
}
