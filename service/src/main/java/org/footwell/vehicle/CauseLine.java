package org.footwell.vehicle;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** One thing that would explain what was measured. */
public record CauseLine(
    @Schema(description = "What would be wrong") LikelyCause cause,
    @Schema(description = "Ids of the channels it is about") List<String> channels,
    @Schema(description = "Id of the driver, or of its voice coil; where it is about one")
        String driver,
    @Schema(description = "Corner that would be there instead, Hz; for a corner that is off")
        Double cornerHz,
    @Schema(description = "How much too loud it would be, dB; for a gain that is off")
        Double gainDb,
    @Schema(
            description =
                "RMS of how far all measured figures are from the plan, each over its usual uncertainty")
        double misfitBefore,
    @Schema(description = "The same with this cause") double misfitAfter) {}
