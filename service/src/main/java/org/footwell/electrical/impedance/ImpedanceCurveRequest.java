package org.footwell.electrical.impedance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Needs;
import org.footwell.calculation.rule.Without;
import org.footwell.parts.Box;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Driver;

/** A driver, what it is mounted in, and the frequencies of interest. */
@Needed({"driver.re_ohm", "driver.le_mh", "driver.fs_hz", "driver.qms", "driver.qes"})
@Needed("box.volume_l")
@Needs(field = "box", beside = "driver.vas_l")
@Without({"box.qtc", "box.ripple_db"})
public record ImpedanceCurveRequest(
    @Schema(description = "The driver; with rated_ohm that is judged") @NotNull Driver driver,
    @Schema(
            description =
                "The box it is in, vented when it has a tuning; without it the driver is in free"
                    + " air")
        Box box,
    CurveFrequencies frequencies) {

  public ImpedanceCurveRequest {
    frequencies = frequencies == null ? CurveFrequencies.standard() : frequencies;
  }
}
