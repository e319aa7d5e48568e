package org.footwell.web.upload;

import java.io.ByteArrayInputStream;

/** Gives at most so many bytes at a time. */
final class Drip extends ByteArrayInputStream {

  private final int portion;

  Drip(byte[] bytes, int portion) {
    super(bytes);
    this.portion = portion;
  }

  @Override
  public synchronized int read(byte[] into, int offset, int length) {
    return super.read(into, offset, Math.min(length, portion));
  }
}
