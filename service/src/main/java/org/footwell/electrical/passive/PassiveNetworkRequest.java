package org.footwell.electrical.passive;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Needs;
import org.footwell.calculation.rule.Without;
import org.footwell.parts.Amplifier;
import org.footwell.parts.Box;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Driver;
import org.footwell.parts.LadderElement;

/** A passive network between an amplifier and a driver. */
@Built
@Needed({"driver.re_ohm", "driver.le_mh", "driver.fs_hz", "driver.qms", "driver.qes"})
@Needed({"box.volume_l", "amplifier.minimum_ohm"})
@ExactlyOne({"driver", "load_ohm"})
@Needs(field = "box", beside = "driver.vas_l")
@Without({"box.qtc", "box.ripple_db"})
@Keeps(value = PartsOfElement.class, of = "elements.*")
@Keeps(value = ResistanceInLoops.class, of = "elements")
public record PassiveNetworkRequest(
    @Schema(description = "The elements from the amplifier to the driver")
        @NotNull
        @Size(min = 1, max = 32)
        List<@NotNull LadderElement> elements,
    @Schema(description = "The driver it ends in") Driver driver,
    @Schema(description = "The box of the driver; without it the driver is in free air") Box box,
    @Schema(description = "A resistor it ends in instead, ohm") Double loadOhm,
    CurveFrequencies frequencies,
    @Schema(description = "The amplifier, to judge the lowest load by") Amplifier amplifier,
    Boolean bridged,
    @Schema(description = "RMS voltage of the amplifier, V, for the current to expect")
        Double voltageV) {

  public PassiveNetworkRequest {
    bridged = bridged == null ? Boolean.FALSE : bridged;
    frequencies = frequencies == null ? CurveFrequencies.standard() : frequencies;
  }
}
