package org.footwell.web.request;

import java.io.InputStream;
import org.footwell.calculation.text.Phrase;

/** A body that ends with a problem where it comes too slowly. */
final class PacedInput extends CountedInput {

  private final Pace pace;
  private final long begin = System.nanoTime();
  private long read;

  PacedInput(InputStream in, Pace pace) {
    super(in);
    this.pace = pace;
  }

  @Override
  protected void count(int bytes) {
    read += bytes;
    long took = System.nanoTime() - begin;
    if (took > Math.min(pace.longest().toNanos(), pace.within(read))) {
      throw ProblemException.of(
          ProblemType.UNREADABLE,
          Phrase.of(ProblemWords.TOO_SLOW)
              .with("rate", pace.bytesPerS())
              .with("patience", pace.patience().toSeconds())
              .with("longest", pace.longest().toSeconds()));
    }
  }
}
