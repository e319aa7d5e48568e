package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.AtMostOne;
import org.footwell.parts.Filter;
import org.footwell.parts.LadderElement;

/**
 * One branch of a passive crossover: a ladder of parts, or where its values are not known the filters
 * that its maker states, and the coils behind it.
 */
@Built
@AtMostOne({"elements", "high_pass"})
@AtMostOne({"elements", "low_pass"})
@AtMostOne({"elements", "pad_db"})
public record Branch(
    @Schema(description = "Name of its band, such as low or high")
        @NotNull
        @Size(min = 1, max = 20)
        @Pattern(regexp = "[a-z][a-z0-9_-]*")
        String band,
    @Schema(
            description =
                "Network of voice coils behind it, by the ids of drivers: + in series, || in"
                    + " parallel, parentheses")
        @NotNull
        @Size(min = 1, max = 2000)
        String network,
    @Schema(description = "Its parts from the amplifier to the coils; none for a plain wire")
        @Size(min = 1, max = 32)
        List<@NotNull LadderElement> elements,
    @Schema(description = "High-pass that its maker states, where the parts are not known")
        Filter highPass,
    @Schema(description = "Low-pass that its maker states, where the parts are not known")
        Filter lowPass,
    @Schema(description = "Level its maker's pad takes, dB, where the parts are not known")
        @DecimalMin("0.1")
        @DecimalMax("40")
        Double padDb) {

  /** Its parts, none for a plain wire or where only filters are stated. */
  public List<LadderElement> ladder() {
    return elements == null ? List.of() : elements;
  }
}
