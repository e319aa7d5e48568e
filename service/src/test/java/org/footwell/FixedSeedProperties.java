package org.footwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;

/** Two properties that draw alike, which they do with the same seed only. */
class FixedSeedProperties {

  private static final List<Integer> ONE = new ArrayList<>();
  private static final List<Integer> OTHER = new ArrayList<>();

  @Property(tries = 20, edgeCases = EdgeCasesMode.NONE)
  void one(@ForAll int drawn) {
    ONE.add(drawn);
  }

  @Property(tries = 20, edgeCases = EdgeCasesMode.NONE)
  void other(@ForAll int drawn) {
    OTHER.add(drawn);
  }

  @AfterContainer
  static void theyDrewTheSameUnlessOtherSeedsAreWanted() {
    if ("random".equals(System.getProperty("footwell.seed"))) {
      assertNotEquals(ONE, OTHER);
    } else {
      assertEquals(ONE, OTHER);
    }
  }
}
