package org.footwell.vehicle;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The laws of all plans on 2,000 drawn ones. */
@Tag("long")
class ManyPlansIT {

  private static final int PLANS = 2000;

  @Test
  void hold() {
    List<String> broken = new ArrayList<>();
    for (long seed = 0; seed < PLANS; seed++) {
      try {
        PlanLaws.hold(seed);
      } catch (AssertionError | RuntimeException e) {
        broken.add("seed " + seed + ": " + e);
      }
    }
    assertTrue(broken.isEmpty(), () -> String.join("\n", broken));
  }
}
