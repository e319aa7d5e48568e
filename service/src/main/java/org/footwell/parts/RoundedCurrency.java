package org.footwell.parts;

import java.util.Currency;
import org.footwell.calculation.FaultCode;
import org.footwell.calculation.TextForm;

/** A currency that sums are rounded in: metals, funds and codes for tests have no smallest unit. */
public final class RoundedCurrency implements TextForm {

  @Override
  public String name() {
    return "currency";
  }

  @Override
  public boolean holds(String text) {
    return Currency.getAvailableCurrencies().stream()
        .anyMatch(one -> one.getCurrencyCode().equals(text) && one.getDefaultFractionDigits() >= 0);
  }

  @Override
  public FaultCode fault() {
    return MoneyFault.CURRENCY_UNKNOWN;
  }
}
