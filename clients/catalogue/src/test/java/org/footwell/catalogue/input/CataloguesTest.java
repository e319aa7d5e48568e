package org.footwell.catalogue.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import java.util.Set;
import org.footwell.catalogue.row.CannotRun;
import org.junit.jupiter.api.Test;

class CataloguesTest {

  private static String fault(Map<String, String> renamed, Set<String> ignored) {
    Mapping mapping = new Mapping(null, renamed, ignored, Map.of());
    return assertThrows(CannotRun.class, () -> new Catalogues(Reading.MAPPER, mapping))
        .getMessage();
  }

  @Test
  void aColumnHasOneUse() {
    String sentence = "Column Q has more than one use: give one field.";
    assertEquals(sentence, fault(Map.of("qts", "Q", "qes", "Q"), Set.of()));
    assertEquals(sentence, fault(Map.of("qts", "Q"), Set.of("Q")));
  }
}
