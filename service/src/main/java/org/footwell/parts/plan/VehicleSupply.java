package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needs;
import org.footwell.parts.Alternator;
import org.footwell.parts.Battery;
import org.footwell.parts.Consumers;

/** What feeds the amplifiers with current. */
@Built
@ExactlyOne({"battery_v", "alternator"})
@Needs(
    field = "alternator",
    beside = {"battery", "consumers"})
public record VehicleSupply(
    @Schema(
            description =
                "Voltage at the battery while the amplifiers play, V, where no more is known")
        @DecimalMin("5")
        @DecimalMax("60")
        Double batteryV,
    @Schema(description = "The alternator, or what charges the battery while driving")
        Alternator alternator,
    @Schema(description = "The battery the amplifiers hang on") Battery battery,
    @Schema(description = "Everything else that draws current from it") Consumers consumers,
    @Schema(description = "Whether it is a second battery that a relay or converter charges")
        Boolean splitCharge,
    @Schema(description = "Winches, heaters and other loads that draw a lot for a while")
        @Size(max = 8)
        List<@NotNull HeavyLoad> heavyLoads) {

  public VehicleSupply {
    splitCharge = splitCharge == null ? Boolean.FALSE : splitCharge;
  }

  /** The loads that draw a lot, none where none are given. */
  public List<HeavyLoad> drawingALot() {
    return heavyLoads == null ? List.of() : heavyLoads;
  }

  /** A load that draws a lot for a while. */
  public record HeavyLoad(
      @Schema(description = "What it is called") @NotNull @Size(min = 1, max = 60) String name,
      @Schema(description = "What it draws, A") @NotNull @DecimalMin("0.1") @DecimalMax("2000")
          Double currentA) {}
}
