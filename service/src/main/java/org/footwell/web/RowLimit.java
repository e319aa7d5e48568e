package org.footwell.web;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Input that ends with an error when one row of it grows too large. */
final class RowLimit extends FilterInputStream {

  /** What a reader may have fetched of the next row already. */
  private static final int AHEAD = 8_192;

  private final int most;
  private long sinceRow;

  RowLimit(InputStream in, int most) {
    super(in);
    this.most = most;
  }

  /** A row is larger than allowed. */
  static final class Passed extends IOException {
    private static final long serialVersionUID = 1L;
  }

  void rowDone() {
    sinceRow = 0;
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

  private void count(int n) throws Passed {
    sinceRow += Math.max(0, n);
    if (sinceRow > (long) most + AHEAD) {
      throw new Passed();
    }
  }
}
