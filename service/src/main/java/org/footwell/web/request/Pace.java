package org.footwell.web.request;

import java.time.Duration;
import java.util.concurrent.TimeUnit;

/**
 * How fast a caller must send a request and take an answer, so that nobody holds what others need.
 *
 * @param patience how long it may stand still, in all
 * @param bytesPerS how fast it must be apart from that
 * @param longest how long a whole request may take
 */
public record Pace(Duration patience, int bytesPerS, Duration longest) {

  /** Time within which so many bytes must have passed, ns. */
  long within(long bytes) {
    return patience.toNanos() + bytes * TimeUnit.SECONDS.toNanos(1) / bytesPerS;
  }
}
