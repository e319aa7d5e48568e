package org.footwell.electrical.passive;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;
import org.footwell.electrical.impedance.ImpedanceBox;
import org.footwell.electrical.impedance.ImpedanceDriver;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Filter;
import org.footwell.parts.PreferredSeries;

/** What a passive filter is to do, and for which load. */
@Built
public record PassiveFilterRequest(
    @Schema(description = "Resistance the values are for, ohm") @NotNull Double loadOhm,
    @Schema(description = "High-pass of order 1 to 4; with low_pass a band-pass") Filter highPass,
    @Schema(description = "Low-pass of order 1 to 4; with high_pass a band-pass") Filter lowPass,
    @Schema(description = "Attenuation of a level pad that keeps load_ohm, dB")
        @DecimalMin("0.1")
        @DecimalMax("40")
        Double padDb,
    @Schema(
            description =
                "Average power the amplifier puts into load_ohm, W; with it the heat in the"
                    + " resistors of the pad is given in watt")
        Double powerW,
    @Schema(
            description =
                "Whether a resistor and a capacitor across the driver are to cancel its"
                    + " inductance; needs driver")
        Boolean compensate,
    @Schema(description = "The driver, to see what the filter does with it") ImpedanceDriver driver,
    @Schema(description = "The box of the driver; without it the driver is in free air")
        ImpedanceBox box,
    @Schema(description = "Series of preferred values the parts are taken from")
        PreferredSeries series,
    @Schema(description = "Range and points; without it twelfth octaves from 20 Hz to 20 kHz")
        CurveFrequencies frequencies,
    @Schema(
            description =
                "Smallest rated load the amplifier allows, ohm, to judge the lowest load; without"
                    + " it that is held against load_ohm")
        @DecimalMin("0.1")
        @DecimalMax("100")
        Double amplifierMinimumOhm) {

  public PassiveFilterRequest {
    compensate = compensate == null ? Boolean.FALSE : compensate;
    series = series == null ? PreferredSeries.E12 : series;
    frequencies = frequencies == null ? CurveFrequencies.standard() : frequencies;
  }
}
