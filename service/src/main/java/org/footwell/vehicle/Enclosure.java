package org.footwell.vehicle;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Without;
import org.footwell.parts.Box;
import org.footwell.parts.BoxPort;
import org.footwell.parts.LeakyBaffle;

/**
 * What the back of one driver works into, its own share of it where drivers share a box. Exactly one
 * of {@code closed}, {@code vented} and {@code baffle}.
 */
@ExactlyOne({"closed.volume_l", "closed.qtc", "closed.ripple_db"})
@Without({"closed.fb_hz", "closed.qp"})
@Without({"vented.box.qtc", "vented.box.ripple_db", "vented.box.fill_factor"})
public record Enclosure(
    @Schema(description = "A closed box. Exactly one of closed, vented and baffle") Box closed,
    @Schema(description = "A vented box. Exactly one of closed, vented and baffle") Vented vented,
    @Schema(
            description =
                "A door, a rear shelf or another large leaky volume. Exactly one of closed, vented"
                    + " and baffle")
        LeakyBaffle baffle) {

  /** A box with its port. */
  public record Vented(
      @Schema(description = "The box") @NotNull Box box,
      @Schema(description = "The port or ports") @NotNull BoxPort port) {}
}
