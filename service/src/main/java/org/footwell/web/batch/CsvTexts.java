package org.footwell.web.batch;

import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;

/** Texts that tables are written in, used again and again: as many as there are workers on a table. */
final class CsvTexts {

  private final CsvForm form;
  private final Queue<CsvText> idle = new ConcurrentLinkedQueue<>();

  CsvTexts(CsvForm form) {
    this.form = form;
  }

  /** One with nothing in it. */
  CsvText borrow() {
    CsvText text = idle.poll();
    return text == null ? new CsvText(form) : text;
  }

  /** What was written, and the text back. */
  Part taken(CsvText text) {
    byte[] bytes = text.take();
    idle.add(text);
    return Part.of(bytes);
  }
}
