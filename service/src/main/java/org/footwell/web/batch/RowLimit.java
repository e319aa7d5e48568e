package org.footwell.web.batch;

import java.io.IOException;
import java.io.InputStream;
import org.footwell.web.request.CountedInput;

/** Input that ends with an error when one row of it grows too large. */
final class RowLimit extends CountedInput {

  /** What a reader may have fetched of the next row already. */
  private static final int AHEAD = 8_192;

  private final int most;
  private long sinceRow;

  RowLimit(InputStream in, int most) {
    super(in);
    this.most = most;
  }

  /** A row is larger than allowed. */
  static final class Passed extends IOException {
    private static final long serialVersionUID = 1L;
  }

  void rowDone() {
    sinceRow = 0;
  }

  @Override
  protected void count(int bytes) throws Passed {
    sinceRow += bytes;
    if (sinceRow > (long) most + AHEAD) {
      throw new Passed();
    }
  }
}
