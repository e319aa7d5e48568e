package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import org.footwell.parts.Money;

/** Something that costs or weighs and is neither driver nor amplifier. */
public record Extra(
    @Schema(description = "What it is") @NotNull @Size(min = 1, max = 80) String name,
    @Schema(description = "How many of them") @Min(1) @Max(1000) Integer extraCount,
    @Schema(description = "Price of one")
        @Digits(integer = Money.MOST_DIGITS, fraction = Money.FINEST)
        BigDecimal price,
    @Schema(description = "Mass of one, g") Double massG) {

  public Extra {
    extraCount = extraCount == null ? Integer.valueOf(1) : extraCount;
    massG = massG == null ? Double.valueOf(0) : massG;
    price = Money.plain(price);
  }
}
