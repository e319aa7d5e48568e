package org.footwell.measured.sum;

import java.io.IOException;
import org.footwell.Committed;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The published tables are what this code gives. */
@Tag("workbench")
class HandoverStudyIT {

  @Test
  void thePageIsUpToDate() throws IOException {
    Committed.assertUpToDate("docs/method/loudspeaker-sum-limits.md", HandoverStudy.page());
  }
}
