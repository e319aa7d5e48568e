package org.footwell.vehicle;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.footwell.parts.Money;
import org.footwell.parts.plan.Extra;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.parts.plan.Quote;
import org.footwell.vehicle.QuoteTotals.QuoteItem;

/** What a plan costs its customer: rounded line by line, as an invoice is, and the tax once. */
final class Quoting {

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private final Quote quote;
  private final int decimals;
  private final List<QuoteItem> items = new ArrayList<>();

  private Quoting(Quote quote) {
    this.quote = quote;
    decimals = quote.inCurrency().getDefaultFractionDigits();
  }

  /** The totals of a plan that is quoted; null for another. */
  static QuoteTotals of(PlanIndex index) {
    Quote quote = index.plan().quote();
    return quote == null ? null : new Quoting(quote).totals(index);
  }

  private QuoteTotals totals(PlanIndex index) {
    Map<PlannedPart, Integer> parts = new LinkedHashMap<>();
    for (int d = 0; d < index.plan().drivers().size(); d++) {
      parts.merge(index.part(d), 1, Integer::sum);
    }
    parts.forEach((part, count) -> item(part.calledName(), count, part.driver().price()));
    for (PlannedAmplifier amplifier : index.plan().amplifiers()) {
      item(amplifier.calledName(), 1, amplifier.price());
    }
    for (Extra extra : index.plan().extras()) {
      item(extra.name(), extra.extraCount(), extra.price());
    }
    for (Quote.Labour work : quote.labour()) {
      items.add(
          new QuoteItem(
              work.name(),
              work.workH(),
              true,
              work.hourPrice(),
              amount(work.workH(), work.hourPrice())));
    }
    BigDecimal sum = Money.sum(items.stream().map(QuoteItem::amount).toList());
    return sum == null
        ? new QuoteTotals(quote.currency(), items, null, null, null)
        : taxed(sum.setScale(decimals, RoundingMode.UNNECESSARY));
  }

  /** What the customer owns already costs nothing and is no item. */
  private void item(String name, int count, BigDecimal price) {
    if (price == null || price.signum() != 0) {
      BigDecimal quantity = BigDecimal.valueOf(count);
      BigDecimal amount = price == null ? null : amount(quantity, price);
      items.add(new QuoteItem(name, quantity, false, price, amount));
    }
  }

  private BigDecimal amount(BigDecimal quantity, BigDecimal price) {
    return quantity.multiply(price).setScale(decimals, RoundingMode.HALF_UP);
  }

  private QuoteTotals taxed(BigDecimal sum) {
    BigDecimal rate = quote.taxPercent();
    BigDecimal whole = quote.taxIncluded() ? HUNDRED.add(rate) : HUNDRED;
    BigDecimal tax = sum.multiply(rate).divide(whole, decimals, RoundingMode.HALF_UP);
    return quote.taxIncluded()
        ? new QuoteTotals(quote.currency(), items, sum.subtract(tax), tax, sum)
        : new QuoteTotals(quote.currency(), items, sum, tax, sum.add(tax));
  }
}
