package org.footwell.web.limits;

import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;

/** What one caller has left: calls in a bucket that fills steadily, and requests under way. */
final class Caller {

  private final CallerRules rules;
  private final Bucket calls;
  private final AtomicInteger underWay = new AtomicInteger();

  Caller(CallerRules rules, TimeMeter clock) {
    this.rules = rules;
    this.calls =
        rules.countsCalls()
            ? Bucket.builder()
                .addLimit(
                    bucket ->
                        bucket
                            .capacity(rules.callsAtOnce())
                            .refillGreedy(rules.callsPerMinute(), Duration.ofMinutes(1)))
                .withCustomTimePrecision(clock)
                .build()
            : null;
  }

  /** Takes a call, and says whether there was one and what is left. */
  ConsumptionProbe call() {
    return calls.tryConsumeAndReturnRemaining(1);
  }

  /** Begins a request; false if too many are under way. */
  boolean begin() {
    if (underWay.incrementAndGet() > rules.underWay() && rules.countsUnderWay()) {
      underWay.decrementAndGet();
      return false;
    }
    return true;
  }

  /**
   * Ends a request.
   *
   * @param more calls that it counts for besides the one it began with. Nobody ever owes more than may
   *     be saved up, so that the wait after the dearest request has a bound.
   */
  void end(long more) {
    underWay.decrementAndGet();
    if (calls != null && more > 0) {
      long bounded = Math.min(more, calls.getAvailableTokens() + rules.callsAtOnce());
      if (bounded > 0) {
        calls.consumeIgnoringRateLimits(bounded);
      }
    }
  }

  int underWay() {
    return underWay.get();
  }
}
