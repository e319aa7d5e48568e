package org.footwell.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import org.footwell.catalogue.row.CannotRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DistinctFilesTest {

  @TempDir private Path folder;

  private void assertSame(Path one, Path other) {
    assertEquals(
        "the catalogue and --sarif are the same file, " + other + ".",
        assertThrows(
                CannotRun.class,
                () -> new DistinctFiles().with("the catalogue", one).with("--sarif", other))
            .getMessage());
  }

  @Test
  void aFileIsTheSameByWhateverPath() throws Exception {
    Path file = Files.createFile(folder.resolve("d.csv"));
    Path link = Files.createSymbolicLink(folder.resolve("link"), file);
    Path folderLink = Files.createSymbolicLink(folder.resolve("here"), folder);
    assertSame(file, file);
    assertSame(file, link);
    assertSame(file, folder.resolve("x/../d.csv"));
    assertSame(file, folderLink.resolve("d.csv"));
    // Not there yet.
    assertSame(folder.resolve("new"), folderLink.resolve("new"));
    assertSame(Path.of("new"), Path.of("./new"));
  }

  @Test
  void differentFilesAndNoFileAreInOrder() throws Exception {
    new DistinctFiles()
        .with("the catalogue", null)
        .with("--junit", null)
        .with("--sarif", folder.resolve("a"))
        .with("--markdown", folder.resolve("b"));
  }
}
