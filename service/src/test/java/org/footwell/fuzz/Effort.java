package org.footwell.fuzz;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;

/**
 * What reading may cost: processor time and memory of this thread, so that a busy machine changes
 * nothing. Generous, since the search slows everything down; what grows faster than what is read
 * passes any bound.
 */
final class Effort {

  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private static final long MOST_NANOS = 5_000_000_000L;

  private static final long MOST_BYTES = 256L << 20;
  private static final long MOST_BYTES_EACH = 64L << 10;

  private Effort() {}

  /** Has a target read, within bounds; what is too much at first may be preparation, and is tried again. */
  static void read(Target target, byte[] given) throws Throwable {
    if (excess(target, given) != null) {
      String again = excess(target, given);
      Refusals.require(again == null, again);
    }
  }

  /** What it took too much of, or null. */
  private static String excess(Target target, byte[] given) throws Throwable {
    long nanos = THREADS.getCurrentThreadCpuTime();
    long bytes = THREADS.getCurrentThreadAllocatedBytes();
    target.read(given);
    long took = THREADS.getCurrentThreadCpuTime() - nanos;
    long made = THREADS.getCurrentThreadAllocatedBytes() - bytes;
    return took > MOST_NANOS || made > MOST_BYTES + given.length * MOST_BYTES_EACH
        ? "took " + took / 1_000_000 + " ms and made " + made + " bytes"
        : null;
  }
}
