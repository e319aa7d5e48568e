package org.footwell.web.batch;

import java.io.FilterReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackReader;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;

/**
 * UTF-8 without its byte order mark, and a text of one's own after its end.
 *
 * <p>FastCSV, up to 4.2.0 at least, takes the line feed that ends a row for the second half of a line end
 * where the row's last cell stands in quotes and holds a carriage return alone: that cell would be lost,
 * and the next row appended to this one. Such a line feed is read as a carriage return, which ends a row
 * as well.
 */
final class EndedReader extends FilterReader {

  private static final int BYTE_ORDER_MARK = 0xFEFF;

  private final Reader end;
  private final char separator;

  /** How many characters were read before these, and the last of them. */
  private long before;

  private char last = '\n';

  private boolean quoted;

  /** Where a quote last ended what stood in quotes; one more behind it begins that again. */
  private long closing = Long.MIN_VALUE;

  /** Whether a return has stood in quotes of this row. */
  private boolean returned;

  /**
   * Of a text.
   *
   * @param separator what stands between cells, to know where one begins
   * @param end what follows the text
   */
  EndedReader(InputStream in, char separator, String end) throws IOException {
    super(withoutMark(new InputStreamReader(in, StandardCharsets.UTF_8)));
    this.separator = separator;
    this.end = new StringReader(end);
  }

  private static Reader withoutMark(Reader text) throws IOException {
    PushbackReader reader = new PushbackReader(text);
    int first = reader.read();
    if (first >= 0 && first != BYTE_ORDER_MARK) {
      reader.unread(first);
    }
    return reader;
  }

  @Override
  public int read() throws IOException {
    char[] one = new char[1];
    return read(one, 0, 1) < 0 ? -1 : one[0];
  }

  @Override
  public int read(char[] into, int offset, int length) throws IOException {
    int count = super.read(into, offset, length);
    if (count < 0) {
      count = end.read(into, offset, length);
    }
    keepRowsApart(into, offset, offset + count);
    return count;
  }

  private void keepRowsApart(char[] text, int from, int to) {
    for (int i = from; i < to; i++) {
      char c = text[i];
      if (c > '"') {
        continue; // Letters, figures and separators, nearly all there is.
      }
      char previous = i > from ? text[i - 1] : last;
      boolean closed = closing == before + (i - from) - 1;
      if (c == '"') {
        if (quoted) {
          closing = before + (i - from);
        }
        quoted = !quoted && (closed || beginsCell(previous));
      } else if (quoted) {
        returned |= c == '\r';
      } else if (c == '\n' || c == '\r') {
        if (c == '\n' && closed && returned) {
          text[i] = '\r';
        }
        returned = false;
      }
    }
    if (to > from) {
      before += to - from;
      last = text[to - 1];
    }
  }

  private boolean beginsCell(char previous) {
    return previous == separator || previous == '\n' || previous == '\r';
  }
}
