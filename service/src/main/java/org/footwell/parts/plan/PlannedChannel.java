package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needed;
import org.footwell.parts.Cable;
import org.footwell.parts.Filter;

/** One channel of the system: what hangs on its output, and what its filters do. */
@Built
@ExactlyOne({"network", "branches"})
@Needed({"cable.one_way_m", "cable.area_mm2"})
@Ascending(
    value = {"high_pass.frequency_hz", "low_pass.frequency_hz"},
    orEqual = true)
public record PlannedChannel(
    @Schema(description = "Id") @NotNull @Size(min = 1, max = 40) @Pattern(regexp = VehiclePlan.ID)
        String id,
    @Schema(description = "Where it plays") @NotNull ChannelRole role,
    @Schema(description = "Id of the amplifier") @NotNull @Size(min = 1, max = 40) String amplifier,
    @Schema(description = "Id of the output, or of the two that are bridged")
        @NotNull
        @Size(min = 1, max = 2)
        List<@NotNull @Size(min = 1, max = 40) String> outputs,
    @Schema(description = "Id of the factory output it is fed from, where bands are split there")
        @Size(min = 1, max = 40)
        String factoryOutput,
    @Schema(
            description =
                "Network of voice coils, by the ids of drivers: + in series, || in parallel,"
                    + " parentheses")
        @Size(min = 1, max = 2000)
        String network,
    @Schema(description = "Branches of a passive crossover, all at the same terminals, instead")
        @Size(min = 1, max = 8)
        List<@NotNull Branch> branches,
    @Schema(description = "Speaker cable") Cable cable,
    Filter highPass,
    Filter lowPass,
    Boolean fullRange,
    @Schema(description = "Filters of its equaliser") @Size(max = 32)
        List<@NotNull ParametricFilter> equaliser,
    @Schema(description = "1 as wired for a push outward, -1 where it is wired inverted")
        Integer polarity,
    Double chainDelayMs,
    @Schema(
            description =
                "Whether an RMS limiter set as advised guards the voice coils; without one the gain"
                    + " comes down to what the drivers can take")
        Boolean rmsLimiter,
    @Schema(description = "Band its trim is found in; without it between its corners")
        @Size(min = 2, max = 2)
        List<@NotNull @DecimalMin("10") @DecimalMax("40000") Double> bandHz) {

  public PlannedChannel {
    fullRange = fullRange == null ? Boolean.FALSE : fullRange;
    polarity = polarity == null ? Integer.valueOf(1) : polarity;
    chainDelayMs = chainDelayMs == null ? Double.valueOf(0) : chainDelayMs;
    rmsLimiter = rmsLimiter == null ? Boolean.FALSE : rmsLimiter;
    equaliser = equaliser == null ? List.of() : equaliser;
  }

  /** The branches of its passive crossover, none without one. */
  public List<Branch> branchList() {
    return branches == null ? List.of() : branches;
  }

  /** Whether two outputs drive it as one. */
  public boolean bridged() {
    return outputs.size() == 2;
  }
}
