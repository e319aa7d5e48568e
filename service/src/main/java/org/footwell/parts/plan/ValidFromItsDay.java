package org.footwell.parts.plan;

import java.time.LocalDate;
import java.util.List;
import org.footwell.calculation.rule.Rule;

/** A quote holds at least on the day it is made. */
final class ValidFromItsDay implements Rule {

  @Override
  public String kind() {
    return "not_before";
  }

  @Override
  public List<String> fields() {
    return List.of("quote.valid_until", "date");
  }

  @Override
  public String sentence() {
    return "quote.valid_until is not before date.";
  }

  @Override
  public void check(List<List<Place>> places, Breaches breaches) {
    Place until = places.get(0).get(0);
    Place day = places.get(1).get(0);
    if (until.given() && day.given() && day(until).isBefore(day(day))) {
      breaches.told(PlanFault.VALID_BEFORE_DATE, until.pointer(), until.value());
    }
  }

  private static LocalDate day(Place place) {
    return LocalDate.parse((String) place.value());
  }
}
