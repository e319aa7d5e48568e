package org.footwell.parts.offer;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Without;
import org.footwell.parts.plan.PlannedAmplifier;

/** An amplifier as it is offered; how it is fed is up to the vehicle. */
@Needed({
  "amplifier.mass_g",
  "amplifier.price",
  "amplifier.draw",
  "amplifier.outputs.*.minimum_ohm"
})
@Without("amplifier.feed")
public record OfferedAmplifier(
    @Schema(description = "The amplifier as a plan has it, without its supply cable") @NotNull
        PlannedAmplifier amplifier,
    @Schema(description = "Its outside, with what its plugs need") OuterSize size) {

  /** What names it. */
  public String id() {
    return amplifier.id();
  }
}
