package org.footwell.web.request;

import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * Looks at all writes under way now and then, while there are any. A task for each of them would cost
 * more than most of them do.
 */
final class Watch {

  private static final long EVERY_NS = Taking.NOTICED_NS / 2;

  private final Set<Taking> underWay = ConcurrentHashMap.newKeySet();
  private final AtomicBoolean looking = new AtomicBoolean();

  void begin(Taking taking, Scheduler scheduler) {
    underWay.add(taking);
    lookSoon(scheduler);
  }

  void end(Taking taking) {
    underWay.remove(taking);
    taking.end();
  }

  private void lookSoon(Scheduler scheduler) {
    if (!looking.get() && looking.compareAndSet(false, true)) {
      scheduler.schedule(() -> look(scheduler), EVERY_NS, TimeUnit.NANOSECONDS);
    }
  }

  private void look(Scheduler scheduler) {
    try {
      underWay.forEach(Taking::look);
    } finally {
      looking.set(false);
      // One that began just before saw that there is a look to come.
      if (!underWay.isEmpty()) {
        lookSoon(scheduler);
      }
    }
  }
}
