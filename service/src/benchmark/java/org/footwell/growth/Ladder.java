package org.footwell.growth;

import java.time.Duration;
import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.DeadlinePassed;
import org.footwell.calculation.Refused;

/**
 * Requests of one calculation from small to large.
 *
 * @param unit what their size counts
 * @param grows what makes them larger, up to where
 */
record Ladder(String id, String unit, String grows, Calculation<?, ?> calculation, List<Rung> rungs) {

  /**
   * One request.
   *
   * @param request its bytes, or untyped where it has recordings
   */
  record Rung(long size, Object request) {}

  /**
   * What one answer takes.
   *
   * @param stopped whether it would have taken more
   */
  record Cost(long size, double ms, double kb, boolean stopped) {}

  /** The standard of {@code FOOTWELL_DEADLINE_MS}. */
  static final Duration DEADLINE = Duration.ofSeconds(10);

  /** How long each is warmed up, ms of a processor. */
  private static final double WARM = 300;

  /** How long each is measured. */
  private static final double MEASURED = 200;

  Ladder {
    rungs = List.copyOf(rungs);
  }

  /** All are warm before the first is measured, since each makes the others quicker. */
  List<Cost> costs() {
    rungs.forEach(rung -> cost(rung, WARM));
    return rungs.stream().map(rung -> cost(rung, MEASURED)).toList();
  }

  /** The mean of as many answers as take so long. */
  private Cost cost(Rung rung, double longMs) {
    Asking<?, ?> asking = Asking.of(calculation, DEADLINE);
    boolean[] answered = new boolean[1];
    double ms = 0;
    double kb = 0;
    int runs = 0;
    while (ms < longMs) {
      Meter one = Meter.of(() -> answered[0] = answers(asking, rung.request()));
      ms += one.ms();
      kb += one.kb();
      runs++;
    }
    return new Cost(rung.size(), ms / runs, kb / runs, !answered[0]);
  }

  /** Whether it is answered; not if time runs out, or would: all it may be refused for else was tried before. */
  static boolean answers(Asking<?, ?> asking, Object request) {
    try {
      if (request instanceof byte[] bytes) {
        asking.answer(bytes);
      } else {
        asking.answerUntyped(request);
      }
      return true;
    } catch (DeadlinePassed | Refused stopped) {
      return false;
    }
  }
}
