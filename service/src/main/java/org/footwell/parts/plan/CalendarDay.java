package org.footwell.parts.plan;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.footwell.calculation.FaultCode;
import org.footwell.calculation.TextForm;

/** A day that the calendar has. */
final class CalendarDay implements TextForm {

  @Override
  public String name() {
    return "calendar_day";
  }

  @Override
  public boolean holds(String text) {
    try {
      LocalDate.parse(text);
      return true;
    } catch (DateTimeParseException noSuchDay) {
      return false;
    }
  }

  @Override
  public FaultCode fault() {
    return PlanFault.DAY_NOT_IN_CALENDAR;
  }
}
