package org.footwell.web.request;

import com.fasterxml.jackson.core.io.IOContext;
import com.fasterxml.jackson.core.io.InputDecorator;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PushbackInputStream;
import java.io.Reader;

/**
 * Passes over the byte order mark of UTF-8. Every other encoding of letters is refused as malformed, since
 * no parser guesses it: guessing would take JSON that nobody announced, and fails outside of what callers
 * are told where the bytes are of no encoding at all.
 */
final class Utf8Only extends InputDecorator {

  private static final long serialVersionUID = 1L;

  private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

  @Override
  public InputStream decorate(IOContext context, InputStream in) throws IOException {
    PushbackInputStream text = new PushbackInputStream(in, MARK.length);
    int first = text.read();
    if (first < 0) {
      return text;
    }
    text.unread(first);
    if ((byte) first == MARK[0]) {
      byte[] begin = text.readNBytes(MARK.length);
      if (!marked(begin, 0, begin.length)) {
        text.unread(begin);
      }
    }
    return text;
  }

  @Override
  public InputStream decorate(IOContext context, byte[] text, int from, int length) {
    return marked(text, from, length)
        ? new ByteArrayInputStream(text, from + MARK.length, length - MARK.length)
        : null;
  }

  @Override
  public Reader decorate(IOContext context, Reader text) {
    return text;
  }

  private static boolean marked(byte[] text, int from, int length) {
    return length >= MARK.length
        && text[from] == MARK[0]
        && text[from + 1] == MARK[1]
        && text[from + 2] == MARK[2];
  }
}
