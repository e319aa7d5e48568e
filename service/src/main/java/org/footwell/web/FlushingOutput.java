package org.footwell.web;

import java.io.BufferedOutputStream;
import java.io.Flushable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;

/**
 * Output of a batch: sends what is ready whenever the caller has nothing more to say for now, so
 * that a slow sender sees each answer at once and a fast one gets full packets.
 */
final class FlushingOutput extends BufferedOutputStream {

  private static final int SIZE = 16 * 1024;

  private final InputStream input;

  FlushingOutput(InputStream input, OutputStream output) {
    super(output, SIZE);
    this.input = input;
  }

  /** Sends what is ready if the caller has nothing more to say for now. */
  void rowDone(Flushable writer) throws IOException {
    if (input.available() == 0) {
      writer.flush();
    }
  }
}
