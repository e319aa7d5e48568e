package org.footwell.vehicle.packages;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.offer.OuterSize;
import org.footwell.parts.plan.DriverOpening;

/** Positions of the plan that take parts alike, such as left and right. */
@Built
@Unique("drivers.*")
public record FreeSlot(
    @Schema(description = "What it is called") @NotNull @Size(min = 1, max = 40) String name,
    @Schema(description = "Ids of the drivers of the plan in it; all get the same part")
        @NotNull
        @Size(min = 1, max = 8)
        List<@NotNull @Size(min = 1, max = 30) String> drivers,
    @Schema(description = "The opening a driver must fit into; without it any is taken to fit")
        DriverOpening opening,
    @Schema(
            description =
                "Room for a box; where it is given every new driver comes in an offered box, without it"
                    + " the enclosure of the plan stays")
        OuterSize room,
    @Schema(
            description =
                "Whether the part of the plan may stay as one of the choices; parts that are unlike each"
                    + " other cannot")
        Boolean mayStay) {

  public FreeSlot {
    mayStay = mayStay == null ? Boolean.TRUE : mayStay;
  }
}
