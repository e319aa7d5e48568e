package org.footwell.parts.offer;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.rule.Needed;
import org.footwell.parts.plan.PlannedPart;

/** A driver as it is offered. */
@Needed({
  "part.role",
  "part.driver.fs_hz",
  "part.driver.sd_cm2",
  "part.driver.xmax_mm",
  "part.driver.sensitivity",
  "part.driver.continuous_power_w",
  "part.driver.mass_g",
  "part.driver.price"
})
public record OfferedDriver(
    @Schema(description = "The driver as its data sheet has it") @NotNull PlannedPart part) {

  /** What names it. */
  public String id() {
    return part.id();
  }
}
