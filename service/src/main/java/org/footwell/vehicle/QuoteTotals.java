package org.footwell.vehicle;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;

/** What the customer is to pay, in exact decimals. */
public record QuoteTotals(
    @Schema(description = "Currency of all prices, by its ISO 4217 code") String currency,
    @Schema(description = "Everything that is paid for, a line each") List<QuoteItem> items,
    @Schema(
            description =
                "Sum before tax; absent, like tax and total, while the price of an item is not known")
        BigDecimal net,
    @Schema(
            description =
                "Tax on the sum, rounded to the smallest unit of the currency, a half upward")
        BigDecimal tax,
    @Schema(description = "Sum with tax") BigDecimal total) {

  /** An item. */
  public record QuoteItem(
      @Schema(description = "What it is called") String name,
      @Schema(description = "How many, or how many hours") BigDecimal quantity,
      @Schema(description = "Whether they are hours") boolean byTheHour,
      @Schema(description = "Price of one; absent where it is not known") BigDecimal unitPrice,
      @Schema(
              description =
                  "Price of all, rounded to the smallest unit of the currency, a half upward")
          BigDecimal amount) {}
}
