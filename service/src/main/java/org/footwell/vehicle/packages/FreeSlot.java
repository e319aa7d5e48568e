package org.footwell.vehicle.packages;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.offer.OuterSize;

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
        SlotOpening opening,
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

  /** What a driver must fit into. */
  public record SlotOpening(
      @Schema(
              description =
                  "Largest cut-out of a driver, mm: the opening itself, or what an adapter ring makes"
                      + " of it")
          @NotNull
          @DecimalMin("5")
          @DecimalMax("1000")
          Double cutOutMm,
      @Schema(
              description =
                  "Largest depth of a driver behind its mounting face, mm, with the ring before and the"
                      + " air wanted behind taken into account")
          @NotNull
          @DecimalMin("1")
          @DecimalMax("600")
          Double depthMm) {}
}
