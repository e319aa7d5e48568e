package org.footwell.web.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file of keys that changes while the service runs. */
class KeyFileTest {

  private static final String OF_ABC =
      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

  @TempDir private Path directory;
  private final AtomicLong now = new AtomicLong();
  private Path path;
  private KeyFile file;

  @BeforeEach
  void write() throws IOException {
    path = directory.resolve("keys");
    Files.writeString(path, "# keys\nshop:" + OF_ABC + "\n");
    file = new KeyFile(path, now::get);
  }

  private Optional<String> nameOf(String key) {
    return file.current().nameOf(key);
  }

  private void aSecondLater() {
    now.addAndGet(Duration.ofSeconds(1).toNanos());
  }

  @Test
  void aChangedFileIsReadAgainWithinASecond() throws IOException {
    assertEquals(Optional.of("shop"), nameOf("abc"));
    Files.writeString(path, "renamed:" + OF_ABC + "\n");
    assertEquals(Optional.of("shop"), nameOf("abc"));
    aSecondLater();
    assertEquals(Optional.of("renamed"), nameOf("abc"));
  }

  /** A secret of an orchestrator is a link to a directory that is changed for another. */
  @Test
  void aFileThatIsReplacedIsReadAgain() throws IOException {
    Path other = directory.resolve("other");
    Files.writeString(other, "# keys\npart:" + OF_ABC + "\n");
    Files.setLastModifiedTime(other, Files.getLastModifiedTime(path));
    Files.move(other, path, StandardCopyOption.REPLACE_EXISTING);
    aSecondLater();
    assertEquals(Optional.of("part"), nameOf("abc"));
  }

  @Test
  void aFileThatCannotBeUsedAnyMoreLeavesTheKeysAsTheyWere() throws IOException {
    for (String useless : new String[] {"", "nonsense\n", "shop:short\n", "\u00e9"}) {
      Files.writeString(path, useless);
      aSecondLater();
      assertEquals(Optional.of("shop"), nameOf("abc"));
    }
    Files.delete(path);
    aSecondLater();
    assertEquals(Optional.of("shop"), nameOf("abc"));
    Files.writeString(path, "again:" + OF_ABC);
    aSecondLater();
    assertEquals(Optional.of("again"), nameOf("abc"));
  }

  @Test
  void atTheStartEveryFaultIsTold() throws IOException {
    Files.writeString(path, "a\n\nb\n");
    assertEquals(
        """
        line 1: must be a name and a hash with a colon between them
        line 3: must be a name and a hash with a colon between them""",
        assertThrows(IllegalArgumentException.class, () -> new KeyFile(path, now::get))
            .getMessage());
  }

  @Test
  void aFileThatIsNoTextIsToldAsUnreadable() throws IOException {
    Files.write(path, new byte[] {(byte) 0xff, (byte) 0xfe, 0});
    assertEquals(
        "must be a file that can be read, not " + path,
        assertThrows(IllegalArgumentException.class, () -> new KeyFile(path, now::get))
            .getMessage());
  }
}
