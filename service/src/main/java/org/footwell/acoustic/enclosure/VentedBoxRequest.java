package org.footwell.acoustic.enclosure;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.footwell.acoustic.enclosure.lowend.PlayedBox;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.AtMostOne;
import org.footwell.calculation.rule.Needs;
import org.footwell.calculation.rule.Without;
import org.footwell.parts.Box;
import org.footwell.parts.BoxPort;
import org.footwell.parts.Cabin;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Driver;
import org.footwell.parts.Filter;

/**
 * A driver in a vented box, and what drives it. With a volume one of the tuning of the box and the
 * length of the port is needed; without one the box is found.
 */
@Built
@AtMostOne({"box.fb_hz", "port.length_mm"})
@Needs(field = "box.fb_hz", beside = "box.volume_l")
@Needs(field = "port.length_mm", beside = "box.volume_l")
@Without({"box.qtc", "box.ripple_db", "box.fill_factor"})
@Keeps(TunedOnce.class)
public record VentedBoxRequest(
    @Schema(description = "The driver") @NotNull Driver driver,
    @Schema(
            description =
                "The box without its port, whose own volume is no part of volume_l; without volume_l"
                    + " volume and tuning are found for a maximally flat response or the nearest"
                    + " one that driver and ql allow")
        @NotNull
        Box box,
    @Schema(description = "The port or ports") @NotNull BoxPort port,
    Double voltageV,
    Double powerW,
    Double sourceOhm,
    Double temperatureC,
    Integer subsonicOrder,
    Filter highPass,
    Filter lowPass,
    Cabin cabin,
    @Schema(
            description =
                "Range and points; without it twelfth octaves from 10 to 200 Hz. Largest"
                    + " displacement and air speed are looked for in the range")
        CurveFrequencies frequencies)
    implements PlayedBox {

  public VentedBoxRequest {
    sourceOhm = sourceOhm == null ? Double.valueOf(0) : sourceOhm;
    temperatureC = temperatureC == null ? Double.valueOf(20) : temperatureC;
    subsonicOrder = subsonicOrder == null ? Integer.valueOf(4) : subsonicOrder;
    frequencies = frequencies == null ? PlayedBox.bass() : frequencies;
  }
}
