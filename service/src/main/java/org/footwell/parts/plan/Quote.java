package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.TextForm;
import org.footwell.parts.Money;
import org.footwell.parts.RoundedCurrency;

/** What makes an offer to a customer of the plan; its day is that of the plan. */
@Built
public record Quote(
    @Schema(description = "Number of the quote") @Size(min = 1, max = 40) String number,
    @Schema(description = "Last day it holds, as in 2026-06-30")
        @Size(max = 10)
        @Pattern(regexp = VehiclePlan.DAY)
        @TextForm.Of(CalendarDay.class)
        String validUntil,
    @Schema(description = "Who makes it") Party shop,
    @Schema(description = "Who gets it") Party customer,
    @Schema(description = "Currency of all prices, by its ISO 4217 code")
        @NotNull
        @Size(min = 3, max = 3)
        @Pattern(regexp = "[A-Z]{3}")
        @TextForm.Of(RoundedCurrency.class)
        String currency,
    @Schema(description = "Work by the hour") @Size(max = 32) List<@NotNull Labour> labour,
    @Schema(description = "Rate of the tax, percent; 0 where there is none")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("100")
        @Digits(integer = 3, fraction = 4)
        BigDecimal taxPercent,
    @Schema(description = "Whether the prices have the tax in them; without it they have not")
        Boolean taxIncluded) {

  public Quote {
    labour = labour == null ? List.of() : labour;
    taxPercent = Money.plain(taxPercent);
    taxIncluded = taxIncluded == null ? Boolean.FALSE : taxIncluded;
  }

  /** The currency of all prices. */
  public Currency inCurrency() {
    return Currency.getInstance(currency);
  }

  /** A shop or a customer. */
  public record Party(
      @Schema(description = "Name") @NotNull @Size(min = 1, max = 80) String name,
      @Schema(description = "Address and whatever else belongs below the name, line by line")
          @Size(max = 6)
          List<@NotNull @Size(min = 1, max = 80) String> lines) {

    public Party {
      lines = lines == null ? List.of() : lines;
    }
  }

  /** A piece of work. */
  public record Labour(
      @Schema(description = "What is done") @NotNull @Size(min = 1, max = 80) String name,
      @Schema(description = "Hours it takes")
          @NotNull
          @DecimalMin("0")
          @DecimalMax("1000")
          @Digits(integer = 4, fraction = 2)
          BigDecimal workH,
      @Schema(description = "Price of an hour")
          @NotNull
          @DecimalMin("0")
          @DecimalMax("10000000")
          @Digits(integer = Money.MOST_DIGITS, fraction = Money.FINEST)
          BigDecimal hourPrice) {

    public Labour {
      workH = Money.plain(workH);
      hourPrice = Money.plain(hourPrice);
    }
  }
}
