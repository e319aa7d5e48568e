package org.footwell.measured.response;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.Needs;

/** A channel, and the range of frequencies it is judged or corrected in. */
@Needs(field = "from_hz", beside = "to_hz")
@Needs(field = "to_hz", beside = "from_hz")
@Ascending({"from_hz", "to_hz"})
public record JudgedChannel(
    @Schema(description = "Name, unlike any other channel's") @NotNull @Size(min = 1, max = 60)
        String id,
    @Schema(
            description =
                "Lowest frequency it is judged or corrected at, Hz; both absent: the range around"
                    + " its strongest octave in which it is no more than 12 dB weaker")
        @DecimalMin("5")
        @DecimalMax("80000")
        Double fromHz,
    @Schema(description = "Highest frequency it is judged or corrected at, Hz")
        @DecimalMin("5")
        @DecimalMax("80000")
        Double toHz)
    implements RecordedSet.Identified {}
