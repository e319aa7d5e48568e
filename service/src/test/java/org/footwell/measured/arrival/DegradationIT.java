package org.footwell.measured.arrival;

import java.io.IOException;
import org.footwell.Committed;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The published tables of where arrivals fail are what this code gives. Takes minutes. */
@Tag("workbench")
class DegradationIT {

  private static final int TRIALS = 20;

  @Test
  void thePageIsUpToDate() throws IOException {
    Committed.assertUpToDate(
        "docs/method/arrival-times-limits.md", new DegradationStudy(TRIALS).page());
  }
}
