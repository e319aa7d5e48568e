package org.footwell.growth;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;

/**
 * Processor time and garbage of all threads that run Java, which other work on the machine disturbs less
 * than the clock.
 */
record Meter(double ms, double kb) {

  private static final ThreadMXBean THREADS =
      (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private static Meter now() {
    long[] ids = THREADS.getAllThreadIds();
    long nanos = Arrays.stream(THREADS.getThreadCpuTime(ids)).filter(one -> one > 0).sum();
    long bytes = Arrays.stream(THREADS.getThreadAllocatedBytes(ids)).filter(one -> one > 0).sum();
    return new Meter(nanos / 1e6, bytes / 1e3);
  }

  /** What some work takes. */
  static Meter of(Runnable work) {
    Meter before = now();
    work.run();
    Meter after = now();
    return new Meter(after.ms - before.ms, after.kb - before.kb);
  }
}
