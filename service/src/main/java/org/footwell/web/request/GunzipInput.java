package org.footwell.web.request;

import java.io.IOException;
import java.io.InputStream;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.footwell.calculation.text.Phrase;

/**
 * A body in gzip (RFC 1952), decoded as it comes. The stream of the JDK is not strict enough: it takes
 * what follows the end for nothing, and asks whether anything does by a guess.
 */
final class GunzipInput extends InputStream {

  /** Text and samples stay far below this; what goes beyond it was made to fill the memory. */
  static final int MOST_RATIO = 100;

  /** So much may come of any body, bytes. */
  static final int ALWAYS = 1 << 20;

  private static final int MAGIC = 0x8b1f;
  private static final int DEFLATE = 8;

  private static final int HEADER_CRC = 2;
  private static final int EXTRA = 4;
  private static final int NAME = 8;
  private static final int COMMENT = 16;
  private static final int RESERVED = 0xe0;

  private final InputStream in;
  private final Inflater inflater = new Inflater(true);
  private final CRC32 checksum = new CRC32();
  private final CRC32 headerChecksum = new CRC32();
  private final byte[] buffer = new byte[8 * 1024];
  private int at;
  private int end;
  private long coded;
  private long decoded;
  private boolean begun;
  private boolean within;

  GunzipInput(InputStream in) {
    this.in = in;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
  }

  @Override
  public int read(byte[] into, int offset, int length) throws IOException {
    if (length == 0) {
      return 0;
    }
    while (within || beginMember()) {
      int count = inflate(into, offset, length);
      if (count > 0) {
        checksum.update(into, offset, count);
        decoded += count;
        requireRatio();
        return count;
      }
      if (inflater.finished()) {
        endMember();
      } else {
        feed();
      }
    }
    return -1;
  }

  private int inflate(byte[] into, int offset, int length) {
    try {
      return inflater.inflate(into, offset, length);
    } catch (DataFormatException notDeflated) {
      throw broken(ProblemWords.GZIP_BROKEN);
    }
  }

  /** Gives the inflater more to work on. */
  private void feed() throws IOException {
    if (!inflater.needsInput()) {
      throw broken(ProblemWords.GZIP_BROKEN);
    }
    if (!fill()) {
      throw broken(ProblemWords.GZIP_ENDS_EARLY);
    }
    inflater.setInput(buffer, at, end - at);
    at = end;
  }

  private void requireRatio() {
    if (decoded > ALWAYS + MOST_RATIO * coded) {
      throw ProblemException.of(
          ProblemType.TOO_LARGE, Phrase.of(ProblemWords.GZIP_RATIO).with("most", MOST_RATIO));
    }
  }

  /** Reads the header of a member; gzip may have several, one after the other. */
  private boolean beginMember() throws IOException {
    if (begun && !fill()) {
      return false;
    }
    headerChecksum.reset();
    if (two() != MAGIC) {
      throw broken(begun ? ProblemWords.GZIP_HOLDS_MORE : ProblemWords.GZIP_BROKEN);
    }
    int method = one();
    int flags = one();
    if (method != DEFLATE || (flags & RESERVED) != 0) {
      throw broken(ProblemWords.GZIP_BROKEN);
    }
    skip(6); // time, extra flags and system
    if ((flags & EXTRA) != 0) {
      skip(two());
    }
    for (int text : new int[] {NAME, COMMENT}) {
      if ((flags & text) != 0) {
        skipText();
      }
    }
    if ((flags & HEADER_CRC) != 0) {
      int expected = (int) headerChecksum.getValue() & 0xffff;
      require(two() == expected);
    }
    begun = true;
    within = true;
    inflater.reset();
    checksum.reset();
    inflater.setInput(buffer, at, end - at);
    at = end;
    return true;
  }

  /** Reads checksum and length behind a member. */
  private void endMember() throws IOException {
    at = end - inflater.getRemaining();
    within = false;
    long expected = checksum.getValue();
    long length = inflater.getBytesWritten() & 0xffff_ffffL;
    require(four() == expected);
    require(four() == length);
  }

  private void skip(int count) throws IOException {
    for (int i = 0; i < count; i++) {
      one();
    }
  }

  private void skipText() throws IOException {
    int character = one();
    while (character != 0) {
      character = one();
    }
  }

  private long four() throws IOException {
    int low = two();
    return low | (long) two() << 16;
  }

  private int two() throws IOException {
    int low = one();
    return low | one() << 8;
  }

  private int one() throws IOException {
    if (!fill()) {
      throw broken(ProblemWords.GZIP_ENDS_EARLY);
    }
    int next = buffer[at++] & 0xff;
    headerChecksum.update(next);
    return next;
  }

  /** Whether there is more of what was sent; waits for it. */
  private boolean fill() throws IOException {
    if (at == end) {
      at = 0;
      end = Math.max(0, in.read(buffer, 0, buffer.length));
      coded += end;
    }
    return end > 0;
  }

  private static void require(boolean asItMustBe) {
    if (!asItMustBe) {
      throw broken(ProblemWords.GZIP_BROKEN);
    }
  }

  private static ProblemException broken(ProblemWords how) {
    return ProblemException.of(ProblemType.UNREADABLE, how);
  }

  @Override
  public void close() throws IOException {
    inflater.end();
    in.close();
  }
}
