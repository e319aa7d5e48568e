package org.footwell.parts.offer;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import org.footwell.parts.Money;
import org.footwell.parts.plan.VehiclePlan;

/** A fuse with its holder as it is offered. */
public record OfferedFuse(
    @Schema(description = "Id, unlike that of any other fuse")
        @NotNull
        @Size(min = 1, max = 40)
        @Pattern(regexp = VehiclePlan.ID)
        String id,
    @Schema(description = "Its rating, A") @NotNull @DecimalMin("0.5") @DecimalMax("1000")
        Double ratingA,
    @NotNull Double massG,
    @NotNull @Digits(integer = Money.MOST_DIGITS, fraction = Money.FINEST) BigDecimal price) {

  public OfferedFuse {
    price = Money.plain(price);
  }
}
