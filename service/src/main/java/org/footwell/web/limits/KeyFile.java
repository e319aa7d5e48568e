package org.footwell.web.limits;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keys in a file, a pair a line, read again when the file has changed. One that cannot be used any
 * more changes nothing: the keys that held go on, and the log says why.
 */
final class KeyFile implements Keys {

  private static final Logger LOG = LoggerFactory.getLogger(KeyFile.class);

  private static final long LOOK_EVERY_NS = TimeUnit.SECONDS.toNanos(1);

  private final Path path;
  private final LongSupplier nanos;
  private final ReentrantLock looking = new ReentrantLock();
  private volatile KeyRing ring;
  private volatile long looked;
  private Seen seen;

  /** By what a file that has changed is told from itself. */
  private record Seen(FileTime changed, long size, Object identity) {}

  /**
   * Reads the file.
   *
   * @throws IllegalArgumentException with every fault of it
   */
  KeyFile(Path path, LongSupplier nanos) {
    this.path = path;
    this.nanos = nanos;
    looked = nanos.getAsLong();
    try {
      seen = look();
      ring = read();
    } catch (IOException unreadable) {
      throw new IllegalArgumentException(
          "must be a file that can be read, not " + path, unreadable);
    }
  }

  @Override
  public KeyRing current() {
    if (nanos.getAsLong() - looked >= LOOK_EVERY_NS && looking.tryLock()) {
      try {
        looked = nanos.getAsLong();
        readIfChanged();
      } finally {
        looking.unlock();
      }
    }
    return ring;
  }

  private void readIfChanged() {
    try {
      Seen now = look();
      if (!now.equals(seen)) {
        seen = now;
        ring = read();
        LOG.info("the keys were read again");
      }
    } catch (IOException | IllegalArgumentException unusable) {
      LOG.error("the keys stay as they were, their file cannot be used: {}", unusable.toString());
    }
  }

  private Seen look() throws IOException {
    BasicFileAttributes file = Files.readAttributes(path, BasicFileAttributes.class);
    return new Seen(file.lastModifiedTime(), file.size(), file.fileKey());
  }

  private KeyRing read() throws IOException {
    return KeyRing.of(Files.readAllLines(path), "line");
  }
}
