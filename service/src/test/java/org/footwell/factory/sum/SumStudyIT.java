package org.footwell.factory.sum;

import java.io.IOException;
import org.footwell.Committed;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The published tables are what this code gives. */
@Tag("workbench")
class SumStudyIT {

  @Test
  void thePageIsUpToDate() throws IOException {
    Committed.assertUpToDate("docs/method/signal-sum-limits.md", SumStudy.page());
  }
}
