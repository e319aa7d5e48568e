package org.footwell.web.request;

import java.io.IOException;
import java.util.concurrent.Semaphore;
import java.util.function.LongSupplier;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * How long the service has waited for the caller of a request. A thread stands still with each that
 * waits, so only so many may at once: the others are for callers who are there.
 */
final class Waits {

  /** Of the 250 threads there are. */
  static final int MOST_AT_ONCE = 100;

  private final Pace pace;
  private final Semaphore room;
  private final Watch watch;
  private final LongSupplier nanos;
  private long ns;

  /**
   * None so far.
   *
   * @param room for those that wait, shared by all requests
   * @param watch over those that write, likewise
   */
  Waits(Pace pace, Semaphore room, Watch watch, LongSupplier nanos) {
    this.pace = pace;
    this.room = room;
    this.watch = watch;
    this.nanos = nanos;
  }

  Pace pace() {
    return pace;
  }

  /** How long in all, ns. */
  long ns() {
    return ns;
  }

  /** Reads what may not be there yet. */
  interface Read {
    int run() throws IOException;
  }

  /** Writes what may not be taken at once. */
  interface Write {
    void run() throws IOException;
  }

  /**
   * Waits for more of a body.
   *
   * @throws ProblemException if too many do
   */
  int forMore(Read read) throws IOException {
    if (!room.tryAcquire()) {
      throw ProblemException.of(ProblemType.BUSY, ProblemWords.MANY_WAIT);
    }
    long begin = nanos.getAsLong();
    try {
      return read.run();
    } finally {
      ns += nanos.getAsLong() - begin;
      room.release();
    }
  }

  /** Has the caller take some of the answer; a connection is closed that does not within a time. */
  void forTaking(Write write, long withinNs, EndPoint connection, Scheduler scheduler)
      throws IOException {
    Taking taking = new Taking(withinNs, connection, room);
    watch.begin(taking, scheduler);
    long begin = nanos.getAsLong();
    try {
      write.run();
    } finally {
      ns += nanos.getAsLong() - begin;
      watch.end(taking);
    }
  }
}
