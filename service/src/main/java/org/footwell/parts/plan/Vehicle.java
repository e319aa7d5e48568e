package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Without;
import org.footwell.parts.Cabin;

/** The vehicle, as far as it bears on the sound system and on who works in it. */
@Built
@Needed("cabin.length_m")
@Without("cabin.volume_m3")
public record Vehicle(
    @Schema(description = "What it is called") @NotNull @Size(min = 1, max = 80) String name,
    @Schema(description = "The inside of the vehicle") @NotNull Cabin cabin,
    Double temperatureC,
    Double roadNoiseDba,
    @Schema(description = "Voltage its circuits are named after, V: 12, 24 or 48")
        @DecimalMin("6")
        @DecimalMax("60")
        Double nominalV,
    @Schema(description = "Whether it has a traction battery or another source above 60 V")
        Boolean highVoltage,
    @Schema(description = "Whether it stops and starts its engine by itself") Boolean startStop,
    @Schema(description = "Whether its starter battery is a lithium one") Boolean lithiumStarter,
    @Schema(description = "Whether a sensor sits at the negative post of its battery")
        Boolean batterySensor) {

  public Vehicle {
    temperatureC = temperatureC == null ? Double.valueOf(20) : temperatureC;
    nominalV = nominalV == null ? Double.valueOf(12) : nominalV;
  }
}
