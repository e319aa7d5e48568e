package org.footwell.web.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** How many rows go together. */
class PieceSizeTest {

  private final PieceSize size = new PieceSize(64);

  @Test
  void theFirstRowGoesAloneAndCheapOnesSoonGoTogether() {
    assertEquals(1, size.rows());
    for (int wanted : new int[] {2, 4, 8, 16, 32, 64, 64}) {
      size.took(size.rows(), size.rows() * 1_000L);
      assertEquals(wanted, size.rows());
    }
  }

  @Test
  void dearRowsGoAlone() {
    for (int i = 0; i < 10; i++) {
      size.took(size.rows(), size.rows() * 3_000_000L);
      assertEquals(1, size.rows());
    }
  }

  @Test
  void aMomentOfHaltingOnlyHalvesThem() {
    for (int i = 0; i < 10; i++) {
      size.took(size.rows(), size.rows() * 1_000L);
    }
    size.took(64, 1_000_000_000L);
    assertEquals(32, size.rows());
  }
}
