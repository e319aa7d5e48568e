package org.footwell.web.attack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.footwell.RunningJar;
import org.footwell.web.ContractDocument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Attacks every operation of the contract with requests made of its examples and bounds. {@code
 * -Dfootwell.attack.requests=200000} sends so many, {@code -Dfootwell.attack.seed=2} others, {@code
 * -Dfootwell.attack.only=17} the one of that number.
 */
@Tag("long")
class AttackIT {

  private static final int CALLERS = 4;
  private static final int MOST_FAULTS = 20;

  /** The deadline of a calculation, and what a busy machine adds. */
  private static final Duration LIMIT = Duration.ofSeconds(15);

  private static final long MEMORY_BYTES = 16L << 20;

  private final ContractDocument contract = ContractDocument.built();
  private final Shots shots = new Shots(contract, Long.getLong("footwell.attack.seed", 1));
  private final Judge judge = new Judge(contract, shots, LIMIT);
  private final ConcurrentLinkedQueue<String> faults = new ConcurrentLinkedQueue<>();

  @Test
  void noRequestBreaksThePromisesOfTheContract() throws Exception {
    try (RunningJar service = new RunningJar("-Xmx256m", "-XX:+UseSerialGC", "-ea")) {
      Long only = Long.getLong("footwell.attack.only");
      if (only != null) {
        attack(service.port(), only, only + 1);
        assertEquals(List.of(), List.copyOf(faults));
        return;
      }
      long requests = Long.getLong("footwell.attack.requests", 3_000);
      long warm = requests / 3;
      attack(service.port(), 0, warm);
      long before = LiveMemory.of(service);
      attack(service.port(), warm, requests);
      long after = LiveMemory.of(service);
      report(requests, before, after);
      assertTrue(faults.isEmpty(), () -> String.join("\n\n", faults));
      assertTrue(after - before < MEMORY_BYTES, before + " bytes in use became " + after);
      assertTrue(
          judge.statuses().get(200).sum() > requests / 10, "enough of them are answered to matter");
    }
  }

  private void attack(int port, long from, long to) {
    AtomicLong next = new AtomicLong(from);
    CompletableFuture.allOf(
            IntStream.range(0, CALLERS)
                .mapToObj(i -> CompletableFuture.runAsync(() -> call(port, next, to)))
                .toArray(CompletableFuture[]::new))
        .join();
  }

  private void call(int port, AtomicLong next, long to) {
    Attacker attacker = new Attacker(port, LIMIT);
    for (long n = next.getAndIncrement(); n < to; n = next.getAndIncrement()) {
      if (faults.size() < MOST_FAULTS) {
        faults.addAll(judge.faults(n, attacker));
      }
    }
    attacker.hangUp();
  }

  /** What an attack is judged by besides, for whoever runs a long one. */
  private void report(long requests, long before, long after) {
    String slowest =
        judge.milliseconds().entrySet().stream()
            .sorted((a, b) -> Long.compare(b.getValue().sum(), a.getValue().sum()))
            .limit(5)
            .map(Map.Entry::toString)
            .collect(Collectors.joining(", "));
    System.out.printf(
        "%d requests, statuses %s, live memory %d bytes, then %d; most ms in all: %s%n",
        requests, judge.statuses(), before, after, slowest);
  }
}
