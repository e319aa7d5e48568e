package org.footwell.acoustic.enclosure;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.footwell.acoustic.enclosure.lowend.PlayedBox;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Without;
import org.footwell.parts.Box;
import org.footwell.parts.Cabin;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Driver;
import org.footwell.parts.Filter;
import org.footwell.parts.LeakyBaffle;

/** A driver in a closed box or in a large leaky baffle, and what drives it. */
@Built
@ExactlyOne({"box", "baffle"})
@ExactlyOne({"box.volume_l", "box.qtc", "box.ripple_db"})
@Without({"box.fb_hz", "box.qp"})
public record ClosedBoxRequest(
    @Schema(description = "The driver") @NotNull Driver driver,
    @Schema(description = "The closed box: its volume, or the total Q or the peak it shall give")
        Box box,
    @Schema(description = "A door, a rear shelf or another large leaky volume") LeakyBaffle baffle,
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

  public ClosedBoxRequest {
    sourceOhm = sourceOhm == null ? Double.valueOf(0) : sourceOhm;
    temperatureC = temperatureC == null ? Double.valueOf(20) : temperatureC;
    subsonicOrder = subsonicOrder == null ? Integer.valueOf(4) : subsonicOrder;
    frequencies = frequencies == null ? PlayedBox.bass() : frequencies;
  }

  /** The field that decides the size of the box. */
  String sizePointer() {
    return box.volumeL() != null
        ? "/box/volume_l"
        : box.qtc() != null ? "/box/qtc" : "/box/ripple_db";
  }
}
