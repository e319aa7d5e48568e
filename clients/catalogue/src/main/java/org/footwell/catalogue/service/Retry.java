package org.footwell.catalogue.service;

import java.time.Duration;
import java.util.Locale;
import java.util.function.Consumer;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Counted;

/** Does something until it works, waiting between tries, a limited number of times. */
final class Retry {

  /** A service that asks for more than this is given up. */
  private static final Duration LONGEST_WAIT = Duration.ofMinutes(10);

  private final int retries;
  private final Backoff backoff;
  private final Consumer<String> messages;

  Retry(int retries, Backoff backoff, Consumer<String> messages) {
    this.retries = retries;
    this.backoff = backoff;
    this.messages = messages;
  }

  /** Something that may fail for a while. */
  interface Attempt<T> {
    T make() throws TryAgain, CannotRun, InterruptedException;
  }

  <T> T until(String what, Attempt<T> attempt) throws CannotRun, InterruptedException {
    for (int failures = 1; ; failures++) {
      try {
        return attempt.make();
      } catch (TryAgain failure) {
        Duration wait = backoff.after(failures, failure.notBefore());
        if (failures > retries || wait.compareTo(LONGEST_WAIT) > 0) {
          throw new CannotRun(
              what + ": " + failure.getMessage() + " Tried " + Counted.of(failures, "time") + ".");
        }
        messages.accept(
            String.format(
                Locale.ROOT,
                "%s: %s Trying again in %.1f s.",
                what,
                failure.getMessage(),
                wait.toMillis() / 1000.0));
        Thread.sleep(wait.toMillis());
      }
    }
  }
}
