package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Without;
import org.footwell.parts.Box;
import org.footwell.parts.BoxPort;
import org.footwell.parts.LeakyBaffle;

/** What the back of one driver works into, its own share of it where drivers share a box. */
@ExactlyOne({"closed", "vented", "baffle"})
@Needed("closed.volume_l")
@Without({"closed.fb_hz", "closed.qp", "closed.qtc", "closed.ripple_db"})
@Needed("vented.box.volume_l")
@ExactlyOne({"vented.box.fb_hz", "vented.port.length_mm"})
@Without({"vented.box.qtc", "vented.box.ripple_db", "vented.box.fill_factor"})
public record Enclosure(
    @Schema(description = "A closed box") Box closed,
    @Schema(description = "A vented box") Vented vented,
    @Schema(description = "A door, a rear shelf or another large leaky volume")
        LeakyBaffle baffle) {

  /** A box with its port. */
  public record Vented(
      @Schema(description = "The box") @NotNull Box box,
      @Schema(description = "The port or ports") @NotNull BoxPort port) {}
}
