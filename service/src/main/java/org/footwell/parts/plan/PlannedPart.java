package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.rule.Needed;
import org.footwell.parts.Driver;
import org.footwell.parts.WayRole;
import org.footwell.physics.SensitivityBases;

/** A driver as its data sheet has it, bought or found in the vehicle. */
@Needed("driver.rated_ohm")
public record PlannedPart(
    @Schema(description = "Id, unlike that of any other part of the list")
        @NotNull
        @Size(min = 1, max = 40)
        @Pattern(regexp = VehiclePlan.ID)
        String id,
    @Schema(description = "What it is made to be used as") WayRole role,
    Integer coilCount,
    @Schema(
            description =
                "Its data. With several voice coils rated_ohm, re_ohm and le_mh are those of one,"
                    + " all else holds with all of them driven")
        @NotNull
        Driver driver,
    @Schema(
            description =
                "Impedance the sensitivity was stated for, ohm: of all voice coils in parallel when"
                    + " not given")
        @DecimalMin("0.5")
        @DecimalMax("600")
        Double sensitivityOhm,
    @Schema(description = "Diameter of the cut-out its maker asks for, mm; of an oval the longer")
        @DecimalMin("5")
        @DecimalMax("1000")
        Double cutOutMm,
    @Schema(description = "From the mounting face to the rearmost point, mm")
        @DecimalMin("1")
        @DecimalMax("600")
        Double mountingDepthMm) {

  public PlannedPart {
    coilCount = coilCount == null ? Integer.valueOf(1) : coilCount;
  }

  /** The load the sensitivity is for, ohm. */
  public double sensitivityLoadOhm() {
    return sensitivityOhm == null ? driver.ratedOhm() / coilCount : sensitivityOhm;
  }

  /** Its stated level at 2.83 V on that load, 1 m and half space, dB SPL; its sensitivity must be there. */
  public double voltageDbSpl() {
    return driver
        .sensitivity()
        .voltageDbSpl(SensitivityBases.BASIS_DIFFERENCE.at(sensitivityLoadOhm()));
  }

  /** What it is called, or its id. */
  public String calledName() {
    return driver.name() == null ? id : driver.name();
  }
}
