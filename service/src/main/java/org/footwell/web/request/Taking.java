package org.footwell.web.request;

import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.io.EndPoint;

/** One write to a caller, from its begin to its end. */
final class Taking {

  /** What the network takes in the usual course is no wait. */
  static final long NOTICED_NS = TimeUnit.MILLISECONDS.toNanos(100);

  private final long begin = System.nanoTime();
  private final long withinNs;
  private final EndPoint connection;
  private final Semaphore room;
  private boolean hasRoom;
  private boolean over;

  /**
   * Begins.
   *
   * @param withinNs time after which the connection is closed
   * @param room that it takes once it is noticed
   */
  Taking(long withinNs, EndPoint connection, Semaphore room) {
    this.withinNs = withinNs;
    this.connection = connection;
    this.room = room;
  }

  /** Closes the connection of a caller whose time is over, or who is to be waited for without room. */
  synchronized void look() {
    long took = System.nanoTime() - begin;
    if (over || took < Math.min(withinNs, NOTICED_NS)) {
      return;
    }
    hasRoom = hasRoom || room.tryAcquire();
    if (!hasRoom || took >= withinNs) {
      connection.close();
    }
  }

  synchronized void end() {
    over = true;
    if (hasRoom) {
      room.release();
    }
  }
}
