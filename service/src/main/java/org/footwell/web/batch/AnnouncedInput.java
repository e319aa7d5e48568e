package org.footwell.web.batch;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * Input that says when it is about to wait for the caller: the moment to send what is ready, so that
 * a slow sender sees every answer at once and a fast one gets full packets.
 */
final class AnnouncedInput extends FilterInputStream {

  /** What is done before waiting. */
  interface BeforeWaiting {
    void run() throws IOException;
  }

  private BeforeWaiting beforeWaiting = () -> {};

  AnnouncedInput(InputStream in) {
    super(in);
  }

  void beforeWaiting(BeforeWaiting action) {
    this.beforeWaiting = action;
  }

  @Override
  public int read() throws IOException {
    announce();
    return super.read();
  }

  @Override
  public int read(byte[] into, int offset, int length) throws IOException {
    announce();
    return super.read(into, offset, length);
  }

  private void announce() throws IOException {
    if (available() == 0) {
      beforeWaiting.run();
    }
  }
}
