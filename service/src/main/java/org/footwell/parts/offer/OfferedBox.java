package org.footwell.parts.offer;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.Without;
import org.footwell.parts.Money;
import org.footwell.parts.plan.Enclosure;
import org.footwell.parts.plan.VehiclePlan;

/** A box as it is offered, empty. */
@Built
@Without("enclosure.baffle")
public record OfferedBox(
    @Schema(description = "Id, unlike that of any other box")
        @NotNull
        @Size(min = 1, max = 40)
        @Pattern(regexp = VehiclePlan.ID)
        String id,
    @Schema(description = "What it is called") @Size(min = 1, max = 60) String name,
    @Schema(description = "What it is to one driver: of a box for several its share") @NotNull
        Enclosure enclosure,
    @Schema(description = "How many drivers it holds") @Min(1) @Max(8) Integer driverCount,
    @Schema(description = "Its outside") @NotNull OuterSize size,
    @Schema(description = "Diameter of the cut-out there is or can be made for a driver, mm")
        @NotNull
        @DecimalMin("5")
        @DecimalMax("1000")
        Double cutOutMm,
    @Schema(description = "Depth there is for a driver, mm")
        @NotNull
        @DecimalMin("1")
        @DecimalMax("2000")
        Double depthMm,
    @NotNull Double massG,
    @NotNull @Digits(integer = Money.MOST_DIGITS, fraction = Money.FINEST) BigDecimal price) {

  public OfferedBox {
    driverCount = driverCount == null ? Integer.valueOf(1) : driverCount;
    price = Money.plain(price);
  }
}
