package org.footwell.catalogue.input;

import java.io.BufferedInputStream;
import java.io.Closeable;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;
import org.footwell.catalogue.row.CannotRun;

/** The bytes of a catalogue, from a file or from standard input, unpacked if they are gzipped. */
public final class Source implements Closeable {

  private static final int BUFFER = 64 * 1024;

  private final Counted counted;
  private final InputStream stream;
  private final String name;
  private final long size;

  private Source(InputStream in, String name, long size) throws IOException {
    this.counted = new Counted(in);
    this.stream = unpacked(new BufferedInputStream(counted, BUFFER));
    this.name = name;
    this.size = size;
  }

  /**
   * Opens the source.
   *
   * @param file null for standard input
   */
  public static Source open(Path file) throws IOException, CannotRun {
    if (file == null) {
      return new Source(System.in, "standard-input", 0);
    }
    if (!Files.isReadable(file) || Files.isDirectory(file)) {
      throw new CannotRun("There is no file " + file + " that can be read.");
    }
    return new Source(Files.newInputStream(file), file.toString(), Files.size(file));
  }

  private static InputStream unpacked(BufferedInputStream in) throws IOException {
    in.mark(2);
    boolean gzipped = in.read() == 0x1f && in.read() == 0x8b;
    in.reset();
    return gzipped ? new GZIPInputStream(in, BUFFER) : in;
  }

  public InputStream stream() {
    return stream;
  }

  /** What the catalogue is called in reports. */
  public String name() {
    return name;
  }

  /** How much of it was read, from 0 to 1, or -1 where its size is not known. */
  public double share() {
    return size == 0 ? -1 : Math.min(1, (double) counted.bytes / size);
  }

  @Override
  public void close() throws IOException {
    stream.close();
  }

  /** Counts what was read, packed as it may be. */
  private static final class Counted extends FilterInputStream {
    private volatile long bytes;

    Counted(InputStream in) {
      super(in);
    }

    @Override
    public int read() throws IOException {
      int b = super.read();
      count(b < 0 ? 0 : 1);
      return b;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
      int n = super.read(into, offset, length);
      count(Math.max(0, n));
      return n;
    }

    @SuppressWarnings("NonAtomicVolatileUpdate") // one thread reads the catalogue
    private void count(int n) {
      bytes += n;
    }
  }
}
