package org.footwell.catalogue.input;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * The characters of a CSV. After its last line comes one more that holds {@link #END} alone: where a
 * quote is never closed, the cell it opens swallows that line too.
 */
final class CsvText extends Reader {

  /** Both are no characters of any text. */
  static final String END = "\uFFFF";

  /** Stands where bytes are none of the character set. */
  static final char MALFORMED = '\uFFFE';

  private static final byte[] UTF8_MARK = {(byte) 0xef, (byte) 0xbb, (byte) 0xbf};
  private static final byte[] BIG_ENDIAN_MARK = {(byte) 0xfe, (byte) 0xff};
  private static final byte[] LITTLE_ENDIAN_MARK = {(byte) 0xff, (byte) 0xfe};

  private final Charset charset;
  private final Reader text;
  private final Reader end = new StringReader("\n" + END);

  /**
   * Begins to read.
   *
   * @param otherwise the character set where no byte order mark says another one
   */
  CsvText(InputStream in, Charset otherwise) throws IOException {
    BufferedInputStream bytes = new BufferedInputStream(in);
    if (startsWith(UTF8_MARK, bytes)) {
      bytes.skipNBytes(UTF8_MARK.length);
      charset = StandardCharsets.UTF_8;
    } else if (startsWith(BIG_ENDIAN_MARK, bytes) || startsWith(LITTLE_ENDIAN_MARK, bytes)) {
      charset = StandardCharsets.UTF_16; // reads the mark itself
    } else {
      charset = otherwise;
    }
    text =
        new InputStreamReader(
            bytes,
            charset
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .onUnmappableCharacter(CodingErrorAction.REPLACE)
                .replaceWith(String.valueOf(MALFORMED)));
  }

  private static boolean startsWith(byte[] mark, BufferedInputStream in) throws IOException {
    in.mark(mark.length);
    byte[] start = in.readNBytes(mark.length);
    in.reset();
    return Arrays.equals(mark, start);
  }

  Charset charset() {
    return charset;
  }

  @Override
  public int read(char[] into, int offset, int length) throws IOException {
    int count = text.read(into, offset, length);
    return count >= 0 ? count : end.read(into, offset, length);
  }

  @Override
  public void close() throws IOException {
    text.close();
  }
}
