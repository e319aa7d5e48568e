package org.footwell.catalogue.input;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Lines of bytes with a largest length; a longer one is passed over, an empty one skipped. */
final class Lines {

  private static final int[] BYTE_ORDER_MARK = {0xef, 0xbb, 0xbf};

  private final InputStream in;
  private final int most;
  private final byte[] buffer = new byte[64 * 1024];
  private final ByteArrayOutputStream line = new ByteArrayOutputStream(512);
  private int at;
  private int end;
  private long number;
  private boolean tooLong;

  Lines(InputStream in, int most) {
    this.in = in;
    this.most = most;
  }

  /** Goes to the next line that holds anything; false at the end. */
  boolean next() throws IOException {
    while (fill()) {
      number++;
      read();
      if (tooLong || !line.toString(StandardCharsets.UTF_8).isBlank()) {
        return true;
      }
    }
    return false;
  }

  long number() {
    return number;
  }

  boolean tooLong() {
    return tooLong;
  }

  byte[] bytes() {
    byte[] bytes = line.toByteArray();
    return number == 1 && marked(bytes)
        ? Arrays.copyOfRange(bytes, BYTE_ORDER_MARK.length, bytes.length)
        : bytes;
  }

  private static boolean marked(byte[] bytes) {
    for (int i = 0; i < BYTE_ORDER_MARK.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xff) != BYTE_ORDER_MARK[i]) {
        return false;
      }
    }
    return true;
  }

  private boolean fill() throws IOException {
    if (at == end) {
      at = 0;
      end = Math.max(0, in.read(buffer));
    }
    return end > 0;
  }

  private void read() throws IOException {
    line.reset();
    tooLong = false;
    while (fill()) {
      int from = at;
      while (at < end && buffer[at] != '\n') {
        at++;
      }
      tooLong |= line.size() + at - from > most;
      if (!tooLong) {
        line.write(buffer, from, at - from);
      }
      if (at < end) {
        at++;
        return;
      }
    }
  }
}
