package org.footwell.analysis;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;

/** A request of a calculation, and what is varied in it. */
public record SweepRequest(
    @Schema(
            description =
                "The request as a single POST takes it; what is varied may be left out or stand there")
        @NotNull
        Map<String, Object> request,
    @Schema(
            description =
                "One input or two. With two, the second goes through all its values for each of the"
                    + " first")
        @NotNull
        @Size(min = 1, max = 2)
        List<@NotNull SweepInput> inputs,
    @Schema(
            description =
                "Single values of the result to show, by their paths; without it, all that stand in"
                    + " no list")
        @Size(min = 1, max = 50)
        List<@NotNull @Size(min = 1, max = 300) String> outputs) {}
