package org.footwell.analysis.tolerance;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;
import org.footwell.analysis.Point;
import org.footwell.calculation.DeadlinePassed;
import org.footwell.calculation.Patience;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;

/**
 * Works out all runs of an error budget, or says how many there is time for: how long one takes is known only once
 * some are done.
 */
final class RunsInTime {

  /** Of those there would be time for: the rest is for other work that comes between. */
  private static final double SURE = 0.8;

  /** Of the runs by half of the time: early ones take longer, until the code for them is compiled. */
  private static final double LEAST_BY_HALF = 0.25;

  private final Sampling sampling;
  private final Run run;
  private final Patience half;
  private final AtomicInteger done = new AtomicInteger();
  private final AtomicBoolean judged = new AtomicBoolean();
  private volatile boolean hopeless;

  private RunsInTime(Sampling sampling, Run run) {
    this.sampling = sampling;
    this.run = run;
    this.half = run.patience(0.5);
  }

  /** All runs; refuses those there is no time for, as soon as half of it is over. */
  static Runs of(Sampling sampling, int outputs, IntFunction<Point> one, Run run) {
    RunsInTime inTime = new RunsInTime(sampling, run);
    try {
      return new Runs(sampling.runCount(), outputs, n -> inTime.point(n, one));
    } catch (DeadlinePassed late) {
      inTime.refuse(late);
      throw run.refused();
    }
  }

  private Point point(int n, IntFunction<Point> one) {
    if (!judged.get() && !half.lasts() && judged.compareAndSet(false, true)) {
      hopeless = done.get() < LEAST_BY_HALF * sampling.runCount();
    }
    if (hopeless) {
      throw new DeadlinePassed();
    }
    Point point = one.apply(n);
    done.incrementAndGet();
    return point;
  }

  /** Says how many samples there is time for, where these are as many as must be. */
  private void refuse(DeadlinePassed late) {
    int runs = hopeless ? 2 * done.get() : done.get();
    int samples = (int) (SURE * runs * sampling.count() / sampling.runCount());
    if (samples < ToleranceRequest.LEAST_COUNT) {
      throw late;
    }
    run.refuse(ToleranceFault.OUT_OF_TIME)
        .at("/sample_count")
        .given(sampling.runCount())
        .limit(runs)
        .allowed(Allowed.atMost(samples, ""));
  }
}
