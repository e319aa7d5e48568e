package org.footwell.catalogue.service;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/**
 * The body of an answer that remembers whether there is more of it. What reads JSON calls an answer
 * that breaks off malformed, sometimes, and hides what the connection said.
 */
final class AnswerBody extends FilterInputStream {

  private boolean ended;
  private IOException failure;

  AnswerBody(InputStream body) {
    super(body);
  }

  @Override
  public int read(byte[] into, int offset, int length) throws IOException {
    try {
      int count = super.read(into, offset, length);
      ended |= count < 0;
      return count;
    } catch (IOException lost) {
      failure = lost;
      throw lost;
    }
  }

  /** Whether it was read to its end; a failure that came before is thrown. */
  boolean ended() throws IOException {
    if (failure != null) {
      throw failure;
    }
    return ended;
  }
}
