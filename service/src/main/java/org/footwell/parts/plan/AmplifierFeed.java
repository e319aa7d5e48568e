package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.Needed;
import org.footwell.parts.Cable;
import org.footwell.parts.ReturnPath;

/** The supply cable of an amplifier, from the battery, and what protects it. */
@Built
@Needed({
  "cable.one_way_m",
  "cable.material",
  "cable.insulation_temperature_c",
  "cable.engine_space"
})
public record AmplifierFeed(
    @Schema(description = "The cable; with area_mm2 the one that lies there, else one is found")
        @NotNull
        Cable cable,
    @Schema(description = "What brings the current back") @NotNull ReturnPath returnPath,
    Double bodyOhm,
    @Schema(description = "Resistance of all joints, fuses and holders of the loop together, ohm")
        @DecimalMin("0")
        @DecimalMax("1")
        Double contactsOhm,
    @Schema(description = "Drop permitted over the whole loop, V")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("60")
        Double permittedDropV,
    @Schema(description = "Fuse at the battery that protects the cable, A; without it one is found")
        @DecimalMin("0.5")
        @DecimalMax("1000")
        Double fuseA,
    Double fuseDistanceM) {

  public AmplifierFeed {
    contactsOhm = contactsOhm == null ? Double.valueOf(0) : contactsOhm;
  }
}
