package org.footwell.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import org.footwell.catalogue.row.CannotRun;
import org.junit.jupiter.api.Test;

class PairsTest {

  private static String fault(String... given) {
    return assertThrows(CannotRun.class, () -> Pairs.of("--column", List.of(given))).getMessage();
  }

  @Test
  void theFirstEqualsSignParts() throws CannotRun {
    assertEquals(
        Map.of("qts", "Q = total", "qes", ""),
        Pairs.of("--column", List.of("qts=Q = total", "qes=")));
  }

  @Test
  void aFieldGivenTwiceAndWhatIsNoPairAreRefused() {
    assertEquals("--column is given twice for qts.", fault("qts=Q", "qts=Qt"));
    assertEquals("--column must be like qts=Q, not Q.", fault("Q"));
    assertEquals("--column must be like qts=Q, not =Q.", fault("=Q"));
  }
}
