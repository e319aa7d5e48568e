package org.footwell.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ProgressTest {

  @Test
  void theBarShowsTheShareThatWasRead() {
    assertEquals(
        "[###############...............]  50 %  12,000 rows, 4,800 a second",
        Progress.line(12_000, 0.5, 2.5));
    assertEquals(
        "[##############################] 100 %  5 rows, 5 a second", Progress.line(5, 1, 1));
  }

  @Test
  void withoutAKnownSizeThereIsNoBar() {
    assertEquals("12,000 rows, 4,800 a second", Progress.line(12_000, -1, 2.5));
  }
}
