package org.footwell.catalogue.report;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A file that appears under its name only when it is complete. */
final class ReportFile implements Closeable {

  private final Path file;
  private final Path part;
  private final OutputStream out;

  ReportFile(Path file) throws IOException {
    this.file = file;
    this.part = file.resolveSibling(file.getFileName() + ".part");
    this.out = new BufferedOutputStream(Files.newOutputStream(part));
    part.toFile().deleteOnExit();
  }

  OutputStream out() {
    return out;
  }

  /** Closes what was written so far and gives it its name. */
  void complete() throws IOException {
    out.close();
    Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
  }

  @Override
  public void close() throws IOException {
    out.close();
    Files.deleteIfExists(part);
  }
}
