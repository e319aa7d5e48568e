package org.footwell.electrical.passive;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.footwell.Answers;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Fault;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;

/** Filters to be designed, and what is answered. */
final class PassiveFilters {

  static final PassiveFilter CALCULATION = new PassiveFilter();

  private PassiveFilters() {}

  /** 8 ohm, nothing else. */
  static PassiveFilterRequestBuilder eightOhms() {
    return PassiveFilterRequestBuilder.builder().loadOhm(8.0);
  }

  static Filter filter(Kind kind, int order, double hz) {
    return Filter.of(kind, order, hz);
  }

  static Answer<PassiveFilterResult> answer(PassiveFilterRequestBuilder filter) {
    return Answers.of(CALCULATION, filter.build());
  }

  static PassiveFilterResult result(PassiveFilterRequestBuilder filter) {
    return answer(filter).result();
  }

  static Fault fault(PassiveFilterRequestBuilder filter) {
    List<Fault> faults = Answers.faults(CALCULATION, filter.build());
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0);
  }
}
