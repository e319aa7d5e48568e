package org.footwell.web;

import java.io.Writer;

/** Writes into a text, without the locks of the library's own writer for that. */
final class Appender extends Writer {

  private final StringBuilder text;

  Appender(StringBuilder text) {
    this.text = text;
  }

  @Override
  public void write(char[] characters, int from, int length) {
    text.append(characters, from, length);
  }

  @Override
  public void flush() {}

  @Override
  public void close() {}
}
