package org.footwell.electrical.passive;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.electrical.impedance.ImpedanceBox;
import org.footwell.electrical.impedance.ImpedanceDriver;
import org.footwell.parts.CurveFrequencies;

/** A passive network between an amplifier and a driver. */
@Built
public record PassiveNetworkRequest(
    @Schema(description = "The elements from the amplifier to the driver")
        @NotNull
        @Size(min = 1, max = 32)
        List<@NotNull LadderElement> elements,
    @Schema(description = "The driver it ends in. Exactly one of driver and load_ohm")
        ImpedanceDriver driver,
    @Schema(description = "The box of the driver; without it the driver is in free air")
        ImpedanceBox box,
    @Schema(description = "A resistor it ends in instead, ohm. Exactly one of driver and load_ohm")
        Double loadOhm,
    @Schema(description = "Range and points; without it twelfth octaves from 20 Hz to 20 kHz")
        CurveFrequencies frequencies,
    @Schema(description = "Smallest rated load the amplifier allows, ohm, to judge the lowest load")
        @DecimalMin("0.1")
        @DecimalMax("100")
        Double amplifierMinimumOhm,
    @Schema(description = "RMS voltage of the amplifier, V, for the current to expect")
        Double voltageV) {

  public PassiveNetworkRequest {
    frequencies = frequencies == null ? CurveFrequencies.standard() : frequencies;
  }
}
