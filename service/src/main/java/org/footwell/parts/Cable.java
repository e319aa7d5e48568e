package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.footwell.calculation.Built;
import org.footwell.physics.Conductors;

/**
 * A cable of stranded conductors, as it lies in the vehicle, whatever it feeds: what a calculation
 * cannot do without it says at its place.
 */
@Built
public record Cable(
    Double oneWayM,
    Double areaMm2,
    @Schema(description = "What the conductors are made of") ConductorMaterial material,
    @Schema(
            description =
                "Conductivity relative to annealed copper. When not given 1 for copper and 0.629"
                    + " for copper-clad aluminium: a tenth of copper by volume, the lowest that"
                    + " ASTM B566 allows")
        @DecimalMin("0.3")
        @DecimalMax("1")
        Double conductivity,
    @Schema(description = "Temperature of the conductor, °C, for its resistance")
        @DecimalMin("-40")
        @DecimalMax("150")
        Double conductorTemperatureC,
    Double insulationTemperatureC,
    @Schema(
            description =
                "Whether any part of it lies in an engine space, where it is 50 °C around it"
                    + " instead of 30 °C")
        Boolean engineSpace) {

  public Cable {
    if (conductivity == null && material != null) {
      conductivity = material.taken();
    }
  }

  /** A conductor is taken to have the temperature its resistance is stated at, °C. */
  private static final double STATED_AT_C = 20;

  /** Resistance of both conductors, ohm, where its length and area are known. */
  public double loopOhm() {
    double perKm = Conductors.CLASS_5_OHM_PER_KM.at(areaMm2);
    return Conductors.CONDUCTOR_OHM.at(
        Conductors.LOOP_LENGTH.at(oneWayM),
        conductivity == null ? perKm : Conductors.OF_CONDUCTIVITY.at(perKm, conductivity),
        conductorTemperatureC == null ? STATED_AT_C : conductorTemperatureC);
  }
}
