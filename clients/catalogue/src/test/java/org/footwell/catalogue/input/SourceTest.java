package org.footwell.catalogue.input;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPOutputStream;
import org.footwell.catalogue.row.CannotRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceTest {

  private static final byte[] TEXT = "part_id,rated_ohm\nA,4\n".getBytes(StandardCharsets.UTF_8);

  @TempDir private Path folder;

  @Test
  void aGzippedFileIsUnpackedWhateverItIsCalled() throws IOException, CannotRun {
    Path packed = folder.resolve("drivers.csv");
    try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(packed))) {
      out.write(TEXT);
    }
    assertReadWhole(packed);
  }

  @Test
  void aPlainFileIsReadAsItIsEvenWhenItIsTiny() throws IOException, CannotRun {
    assertReadWhole(Files.write(folder.resolve("drivers.csv"), TEXT));
    Path empty = Files.createFile(folder.resolve("empty"));
    try (Source source = Source.open(empty)) {
      assertEquals(0, source.stream().readAllBytes().length);
      assertEquals(-1, source.share());
    }
  }

  private static void assertReadWhole(Path file) throws IOException, CannotRun {
    try (Source source = Source.open(file)) {
      assertArrayEquals(TEXT, source.stream().readAllBytes());
      assertEquals(1, source.share());
    }
  }

  @Test
  void aFileThatIsNotThereIsSaidToBeSo() {
    assertThrows(CannotRun.class, () -> Source.open(folder.resolve("none.csv")));
    assertThrows(CannotRun.class, () -> Source.open(folder));
  }
}
