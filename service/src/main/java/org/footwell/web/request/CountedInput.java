package org.footwell.web.request;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Input that counts the bytes read. */
public abstract class CountedInput extends FilterInputStream {

  protected CountedInput(InputStream in) {
    super(in);
  }

  /** So many more bytes were read. */
  protected abstract void count(int bytes) throws IOException;

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
}
