package org.footwell.web;

import java.time.Duration;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.NetworkConnector;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.handler.StatisticsHandler;

/**
 * How the service ends without losing an answer. It is not ready any more, but takes requests as
 * before, until whoever sends them has learned of it; then the port closes; then what was accepted is
 * finished.
 *
 * @param delay time between the word that it stops and the closing of the port
 * @param finish time that what is under way when the port closes may still take
 */
public record OrderlyStop(Duration delay, Duration finish) {

  /** Time in which a request sent just before the port closed arrives. */
  private static final Duration QUIET = Duration.ofMillis(200);

  private static final long LOOK_EVERY_MS = 10;

  /**
   * Closes the port after the delay, then waits until nothing is under way or the time is over.
   *
   * @return how many requests are still under way
   */
  int drain(Server server) {
    try {
      Thread.sleep(delay.toMillis());
      for (Connector connector : server.getConnectors()) {
        // Not its shutdown, which cuts off whatever pauses for a second.
        ((NetworkConnector) connector).close();
      }
      return untilNothingIsUnderWay(server.getDescendant(StatisticsHandler.class));
    } catch (InterruptedException atOnce) {
      Thread.currentThread().interrupt();
      return 0;
    }
  }

  private int untilNothingIsUnderWay(StatisticsHandler requests) throws InterruptedException {
    long closed = System.nanoTime();
    long lastBusy = closed;
    while (System.nanoTime() - lastBusy < QUIET.toNanos()
        && System.nanoTime() - closed < finish.toNanos()) {
      Thread.sleep(LOOK_EVERY_MS);
      if (requests.getRequestsActive() > 0) {
        lastBusy = System.nanoTime();
      }
    }
    return requests.getRequestsActive();
  }
}
