package org.footwell.parts.plan;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Currency;
import org.footwell.calculation.Run;

/** Whether the days of a plan are days and its currency is one. */
final class QuoteChecks {

  private QuoteChecks() {}

  static void check(VehiclePlan plan, Run run) {
    LocalDate day = day(plan.date(), "/date", run);
    Quote quote = plan.quote();
    if (quote == null) {
      return;
    }
    LocalDate until = day(quote.validUntil(), "/quote/valid_until", run);
    if (day != null && until != null && until.isBefore(day)) {
      run.refuse(PlanFault.VALID_BEFORE_DATE).at("/quote/valid_until").given(quote.validUntil());
    }
    if (!isRounded(quote.currency())) {
      run.refuse(PlanFault.CURRENCY_UNKNOWN).at("/quote/currency").given(quote.currency());
    }
  }

  private static LocalDate day(String written, String at, Run run) {
    if (written == null) {
      return null;
    }
    try {
      return LocalDate.parse(written);
    } catch (DateTimeParseException noSuchDay) {
      run.refuse(PlanFault.DAY_NOT_IN_CALENDAR).at(at).given(written);
      return null;
    }
  }

  /** Metals, funds and codes for tests have no smallest unit. */
  private static boolean isRounded(String code) {
    return Currency.getAvailableCurrencies().stream()
        .anyMatch(one -> one.getCurrencyCode().equals(code) && one.getDefaultFractionDigits() >= 0);
  }
}
