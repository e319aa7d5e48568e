package org.footwell.web;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** A body that ends with a problem where it grows larger than it may. */
final class BodyLimit extends FilterInputStream {

  private final int most;
  private long read;

  BodyLimit(InputStream in, int most) {
    super(in);
    this.most = most;
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
    count(n);
    return n;
  }

  private void count(int n) {
    read += Math.max(0, n);
    if (read > most) {
      throw Exchange.tooLarge(most);
    }
  }
}
