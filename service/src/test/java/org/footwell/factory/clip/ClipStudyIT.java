package org.footwell.factory.clip;

import java.io.IOException;
import org.footwell.Committed;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The published tables are what this code gives. */
@Tag("workbench")
class ClipStudyIT {

  @Test
  void thePageIsUpToDate() throws IOException {
    Committed.assertUpToDate("docs/method/clip-point-limits.md", ClipStudy.page());
  }
}
