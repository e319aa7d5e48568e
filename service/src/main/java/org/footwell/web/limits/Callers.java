package org.footwell.web.limits;

import io.github.bucket4j.TimeMeter;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The callers of late, in the memory of this copy. Of more than there is room for, the one not heard of
 * for longest is forgotten, and begins anew when it comes back; whoever has a request under way is kept.
 */
final class Callers {

  static final int MOST = 10_000;

  private final CallerRules rules;
  private final TimeMeter clock;
  private final Map<String, Caller> known = new LinkedHashMap<>(16, 0.75f, true);

  Callers(CallerRules rules, TimeMeter clock) {
    this.rules = rules;
    this.clock = clock;
  }

  synchronized Caller of(String name) {
    Caller caller = known.get(name);
    if (caller == null) {
      makeRoom();
      caller = new Caller(rules, clock);
      known.put(name, caller);
    }
    return caller;
  }

  private void makeRoom() {
    Iterator<Caller> eldestFirst = known.values().iterator();
    while (known.size() >= MOST && eldestFirst.hasNext()) {
      if (eldestFirst.next().underWay() == 0) {
        eldestFirst.remove();
      }
    }
  }

  synchronized int count() {
    return known.size();
  }
}
