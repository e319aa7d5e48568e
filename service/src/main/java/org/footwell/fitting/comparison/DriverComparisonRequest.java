package org.footwell.fitting.comparison;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.TextForm;
import org.footwell.calculation.rule.Unique;
import org.footwell.fitting.comparison.sides.ComparedPosition;
import org.footwell.parts.Money;
import org.footwell.parts.RoundedCurrency;

/** What is compared: position by position, and what comes in besides. */
@Built
@Unique("positions.*.name")
public record DriverComparisonRequest(
    @Schema(description = "The positions") @NotNull @Size(min = 1, max = 32)
        List<@NotNull ComparedPosition> positions,
    @Schema(description = "What comes in besides: amplifiers, boxes, cables") @Size(max = 64)
        List<@NotNull AddedItem> additions,
    @Schema(description = "Currency of all prices, by its ISO 4217 code")
        @Size(min = 3, max = 3)
        @Pattern(regexp = "[A-Z]{3}")
        @TextForm.Of(RoundedCurrency.class)
        String currency,
    @Schema(description = "From this mass on a single part gets the caution about restraint, g")
        @DecimalMin("1")
        @DecimalMax("100000")
        Double heavyG,
    @Schema(description = "From this added mass on, all doors together, they get a note, g")
        @DecimalMin("1")
        @DecimalMax("100000")
        Double heavyDoorsG,
    @Schema(description = "What the vehicle may still carry when in use, g, by its papers")
        @DecimalMin("0")
        @DecimalMax("50000000")
        Double payloadLeftG,
    Double temperatureC) {

  public DriverComparisonRequest {
    additions = additions == null ? List.of() : additions;
    heavyG = heavyG == null ? Double.valueOf(2000) : heavyG;
    heavyDoorsG = heavyDoorsG == null ? Double.valueOf(2000) : heavyDoorsG;
    temperatureC = temperatureC == null ? Double.valueOf(20) : temperatureC;
  }

  /** Something that comes in and is no driver. */
  public record AddedItem(
      @Schema(description = "What it is called") @NotNull @Size(min = 1, max = 80) String name,
      @Schema(description = "Where its mass goes") ComparedPosition.MountedAt at,
      Double massG,
      @Digits(integer = Money.MOST_DIGITS, fraction = Money.FINEST) BigDecimal price) {

    public AddedItem {
      at = at == null ? ComparedPosition.MountedAt.CABIN : at;
      price = Money.plain(price);
    }
  }
}
