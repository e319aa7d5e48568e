package org.footwell.web.batch;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.footwell.web.request.Coding;

/**
 * Input that says when it is about to wait for the caller: the moment to send what is ready, so that
 * a slow sender sees every answer at once and a fast one gets full packets. What is coded is decoded.
 */
final class AnnouncedInput extends FilterInputStream {

  /** What is done before waiting. */
  interface BeforeWaiting {
    void run() throws IOException;
  }

  private final Sent sent;

  AnnouncedInput(InputStream in, Coding coding) throws IOException {
    this(new Sent(in), coding);
  }

  private AnnouncedInput(Sent sent, Coding coding) throws IOException {
    super(coding.decoded(sent));
    this.sent = sent;
  }

  void beforeWaiting(BeforeWaiting action) {
    sent.beforeWaiting = action;
  }

  /** What the caller sends, as it comes. */
  private static final class Sent extends FilterInputStream {
    private BeforeWaiting beforeWaiting = () -> {};

    Sent(InputStream in) {
      super(in);
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
}
