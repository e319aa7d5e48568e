package org.footwell.web.batch;

import java.io.FilterReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackReader;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;

/** UTF-8 without its byte order mark, and a text of one's own after its end. */
final class EndedReader extends FilterReader {

  private static final int BYTE_ORDER_MARK = 0xFEFF;

  private final Reader end;

  EndedReader(InputStream in, String end) throws IOException {
    super(withoutMark(new InputStreamReader(in, StandardCharsets.UTF_8)));
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
    int character = super.read();
    return character >= 0 ? character : end.read();
  }

  @Override
  public int read(char[] into, int offset, int length) throws IOException {
    int count = super.read(into, offset, length);
    return count >= 0 ? count : end.read(into, offset, length);
  }
}
