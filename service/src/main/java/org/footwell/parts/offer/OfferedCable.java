package org.footwell.parts.offer;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Without;
import org.footwell.parts.Cable;
import org.footwell.parts.Money;
import org.footwell.parts.plan.VehiclePlan;

/** A supply cable as it is offered, by the metre; where it lies is up to the vehicle. */
@Needed({"cable.area_mm2", "cable.material", "cable.insulation_temperature_c"})
@Without({"cable.one_way_m", "cable.engine_space"})
public record OfferedCable(
    @Schema(description = "Id, unlike that of any other cable")
        @NotNull
        @Size(min = 1, max = 40)
        @Pattern(regexp = VehiclePlan.ID)
        String id,
    @Schema(description = "The cable") @NotNull Cable cable,
    @Schema(description = "Price of a metre of one conductor; at most four decimals")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("1000")
        @Digits(integer = 4, fraction = Money.FINEST)
        BigDecimal pricePerM,
    @Schema(description = "Mass of a metre of one conductor, g")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("10000")
        Double massGPerM) {}
