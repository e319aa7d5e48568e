package org.footwell.web.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;

/**
 * A calculation whose results lie ready after its first calls, which must come from one thread: what a
 * batch costs when nothing is computed, only read, checked and written.
 */
final class Remembered<Q extends Record, R extends Record> implements Calculation<Q, R> {

  private final Calculation<Q, R> calculation;
  private final int count;
  private final List<R> results = new ArrayList<>();
  private final AtomicInteger next = new AtomicInteger();

  Remembered(Calculation<Q, R> calculation, int count) {
    this.calculation = calculation;
    this.count = count;
  }

  @Override
  public Card<Q, R> card() {
    return calculation.card();
  }

  @Override
  public R compute(Q request, Run run) {
    if (results.size() == count) {
      return results.get(Math.floorMod(next.getAndIncrement(), count));
    }
    R result = calculation.compute(request, run);
    results.add(result);
    return result;
  }
}
