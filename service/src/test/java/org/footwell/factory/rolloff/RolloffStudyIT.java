package org.footwell.factory.rolloff;

import java.io.IOException;
import org.footwell.Committed;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The published tables are what this code gives. */
@Tag("workbench")
class RolloffStudyIT {

  @Test
  void thePageIsUpToDate() throws IOException {
    Committed.assertUpToDate("docs/method/bass-rolloff-limits.md", RolloffStudy.page());
  }
}
