package org.footwell.web.request;

import java.io.IOException;
import java.io.InputStream;

/** A body whose caller may be waited for, unless what was stated is there. */
final class WaitingInput extends CountedInput {

  private final Waits waits;
  private final long stated;
  private long read;

  /**
   * A body.
   *
   * @param stated its length, negative if it is not stated
   */
  WaitingInput(InputStream body, long stated, Waits waits) {
    super(body);
    this.stated = stated;
    this.waits = waits;
  }

  @Override
  protected void count(int bytes) {
    read += bytes;
  }

  @Override
  public int read() throws IOException {
    return isThere() ? super.read() : waits.forMore(super::read);
  }

  @Override
  public int read(byte[] into, int offset, int length) throws IOException {
    return isThere()
        ? super.read(into, offset, length)
        : waits.forMore(() -> super.read(into, offset, length));
  }

  private boolean isThere() throws IOException {
    return read == stated || available() > 0;
  }
}
