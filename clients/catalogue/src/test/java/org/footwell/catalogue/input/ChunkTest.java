package org.footwell.catalogue.input;

import static org.footwell.catalogue.input.Reading.AS_IT_IS;
import static org.footwell.catalogue.input.Reading.COMMAS;
import static org.footwell.catalogue.input.Reading.csv;
import static org.footwell.catalogue.input.Reading.lines;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Row;
import org.junit.jupiter.api.Test;

class ChunkTest {

  /** What the service reads whole before it answers. */
  private static final int READ_FIRST = 2 << 20;

  @Test
  void aChunkHasTheRowsAskedForAndTheLastOneTheRest() throws IOException, CannotRun {
    Catalogue catalogue = csv("part_id,rated_ohm\nA,4\nB,4,\nC,4\nD,4\nE,4\n", COMMAS, AS_IT_IS);
    Chunk first = Chunk.of(catalogue, 3);
    assertEquals(3, first.rows().size());
    assertEquals(List.of(2L, 4L), first.sent().stream().map(Row::line).toList());
    assertEquals("lines 2 to 4", first.lines());
    assertEquals(
        "{\"rated_ohm\":4,\"part_id\":\"2\"}\n{\"rated_ohm\":4,\"part_id\":\"4\"}\n",
        new String(first.body(), StandardCharsets.UTF_8));
    assertEquals(2, Chunk.of(catalogue, 3).rows().size());
    assertNull(Chunk.of(catalogue, 3));
  }

  @Test
  void largeRowsMakeAChunkShorterSoThatItStaysUnderTheLimit() throws IOException, CannotRun {
    String large = "{\"part_id\":\"" + "p".repeat(900_000) + "\"}\n";
    Catalogue catalogue = lines(large.repeat(5), AS_IT_IS);
    int rows = 0;
    for (Chunk chunk = Chunk.of(catalogue, 1000);
        chunk != null;
        chunk = Chunk.of(catalogue, 1000)) {
      assertTrue(chunk.body().length < READ_FIRST);
      rows += chunk.rows().size();
    }
    assertEquals(5, rows);
  }
}
