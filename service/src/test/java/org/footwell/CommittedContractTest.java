package org.footwell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The contract under openapi/ is the one this code gives. */
class CommittedContractTest {

  @Test
  void theCommittedContractIsUpToDate() throws IOException {
    Committed.assertUpToDate(
        "openapi/footwell-v1.yaml",
        Files.readString(Path.of("target/classes/contract/openapi-3.0.yaml")));
  }
}
