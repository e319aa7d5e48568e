package org.footwell.electrical.passive;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Needs;
import org.footwell.calculation.rule.Without;
import org.footwell.parts.Amplifier;
import org.footwell.parts.Box;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Driver;
import org.footwell.parts.Filter;
import org.footwell.parts.PreferredSeries;

/** What a passive filter is to do, and for which load. */
@Built
@Needed({"driver.re_ohm", "driver.le_mh", "driver.fs_hz", "driver.qms", "driver.qes"})
@Needed({"box.volume_l", "amplifier.minimum_ohm"})
@Needs(field = "box", beside = "driver.vas_l")
@Without({"box.qtc", "box.ripple_db"})
@Ascending({"high_pass.frequency_hz", "low_pass.frequency_hz"})
@Keeps(
    value = PassiveOrder.class,
    of = {"high_pass", "low_pass"})
@Keeps(SomethingToDesign.class)
@Keeps(CompensatedDriver.class)
@Keeps(PartsWithinReach.class)
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
    @Schema(description = "The driver, to see what the filter does with it") Driver driver,
    @Schema(description = "The box of the driver; without it the driver is in free air") Box box,
    @Schema(description = "Series of preferred values the parts are taken from")
        PreferredSeries series,
    CurveFrequencies frequencies,
    @Schema(
            description =
                "The amplifier, to judge the lowest load by; without it that is held against load_ohm")
        Amplifier amplifier,
    Boolean bridged) {

  public PassiveFilterRequest {
    bridged = bridged == null ? Boolean.FALSE : bridged;
    compensate = compensate == null ? Boolean.FALSE : compensate;
    series = series == null ? PreferredSeries.E12 : series;
    frequencies = frequencies == null ? CurveFrequencies.standard() : frequencies;
  }
}
