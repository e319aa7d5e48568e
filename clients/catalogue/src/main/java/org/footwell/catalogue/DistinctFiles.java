package org.footwell.catalogue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.footwell.catalogue.row.CannotRun;

/** Files that must not be the same: nothing read is overwritten, and no report by another. */
final class DistinctFiles {

  private final Map<Path, String> names = new HashMap<>();

  /** Adds a file, or nothing where it is null. */
  DistinctFiles with(String name, Path file) throws IOException, CannotRun {
    String other = file == null ? null : names.putIfAbsent(real(file), name);
    if (other != null) {
      throw new CannotRun(other + " and " + name + " are the same file, " + file + ".");
    }
    return this;
  }

  /** Where it is or will be, links followed. */
  private static Path real(Path file) throws IOException {
    if (Files.exists(file)) {
      return file.toRealPath();
    }
    Path whole = file.toAbsolutePath().normalize();
    Path folder = whole.getParent();
    return folder != null && Files.isDirectory(folder)
        ? folder.toRealPath().resolve(whole.getFileName())
        : whole;
  }
}
