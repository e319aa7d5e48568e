package org.footwell.catalogue.row;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SeenNamesTest {

  private static final int NAMES = 500_000;

  @Test
  void aNameIsNewOnceAndNeverAgain() {
    SeenNames names = new SeenNames(8);
    assertEquals(NAMES, IntStream.range(0, NAMES).filter(i -> names.add("part-" + i)).count());
    assertEquals(0, IntStream.range(0, NAMES).filter(i -> names.add("part-" + i)).count());
  }

  /** Far more than the first filter is made for: each is new, and none is forgotten. */
  @Test
  void manyMillionsAreToldApart() {
    int many = 5_000_000;
    SeenNames names = new SeenNames(8);
    assertEquals(many, IntStream.range(0, many).filter(i -> names.add("part-" + i)).count());
    assertEquals(0, IntStream.range(0, many).filter(i -> names.add("part-" + i)).count());
  }
}
