package org.footwell.web.attack;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.LongAdder;
import org.footwell.web.ContractCheck;
import org.footwell.web.ContractCheck.Asked;
import org.footwell.web.ContractCheck.Told;
import org.footwell.web.ContractDocument;

/** Sends requests and says what is wrong with their answers. */
final class Judge {

  private static final String PROBLEM = "application/problem+json";
  private static final int NOT_NOW = 503;

  private final Shots shots;
  private final ContractCheck check;
  private final Duration limit;

  /** What is told once is not told again. */
  private final Set<String> known = ConcurrentHashMap.newKeySet();

  private final Map<Integer, LongAdder> statuses = new ConcurrentHashMap<>();
  private final Map<String, LongAdder> milliseconds = new ConcurrentHashMap<>();

  Judge(ContractDocument contract, Shots shots, Duration limit) {
    this.check = new ContractCheck(contract);
    this.shots = shots;
    this.limit = limit;
  }

  /** How often each status came. */
  Map<Integer, LongAdder> statuses() {
    return new TreeMap<>(statuses);
  }

  /** Time of each operation in all. */
  Map<String, LongAdder> milliseconds() {
    return milliseconds;
  }

  /** What is wrong with the answer to a request; nothing where all is well. */
  List<String> faults(long number, Attacker attacker) {
    Shot shot = shots.shot(number);
    long start = System.nanoTime();
    List<String> faults = new ArrayList<>();
    try {
      Told told = attacker.send(shot);
      statuses.computeIfAbsent(told.status(), any -> new LongAdder()).increment();
      faults.addAll(faults(shot, told));
    } catch (IOException | RuntimeException none) {
      faults.add("no answer: " + none);
    }
    Duration took = Duration.ofNanos(System.nanoTime() - start);
    milliseconds.computeIfAbsent(shot.operation(), any -> new LongAdder()).add(took.toMillis());
    if (took.compareTo(limit) > 0) {
      faults.add("took " + took.toMillis() + " ms");
    }
    return faults.isEmpty() || !known.add(faults.toString())
        ? List.of()
        : List.of(faults + "\nrequest " + number + ":\n" + shot);
  }

  private List<String> faults(Shot shot, Told told) {
    List<String> faults = new ArrayList<>();
    boolean comeAgain = told.status() == NOT_NOW && told.header().apply("Retry-After") != null;
    if (told.status() >= 500 && !comeAgain) {
      faults.add("status " + told.status());
    }
    Asked asked = shot.asked().orElse(null);
    if (asked != null) {
      faults.addAll(check.faults(asked, told));
    } else if (told.status() >= 400 && !PROBLEM.equals(told.mediaType())) {
      faults.add("a problem came as " + told.mediaType());
    }
    return faults;
  }
}
