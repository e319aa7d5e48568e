package org.footwell.web.upload;

import java.io.InputStream;
import org.footwell.web.request.CountedInput;
import org.footwell.web.request.Exchange;

/** A body that ends with a problem where it grows larger than it may. */
final class BodyLimit extends CountedInput {

  private final int most;
  private long read;

  BodyLimit(InputStream in, int most) {
    super(in);
    this.most = most;
  }

  @Override
  protected void count(int bytes) {
    read += bytes;
    if (read > most) {
      throw Exchange.tooLarge(most);
    }
  }
}
