package org.footwell.vehicle;

import io.swagger.v3.oas.annotations.media.Schema;

/** A position before against after; what the data of one of both do not say is left out. */
public record ReplacementLine(
    @Schema(description = "Id of the position") String driver,
    @Schema(description = "Id of the factory part that leaves it") String factoryPart,
    @Schema(description = "Id of the part that comes in") String newPart,
    @Schema(description = "How much louder the new part is at 2.83 V, dB") Double levelChangeDb,
    @Schema(description = "How much heavier it is, g") Double massChangeG,
    @Schema(
            description =
                "How much lower it plays, octaves: by the stated lower limits of both, else by their"
                    + " resonances in free air")
        Double lowerReachOctaves) {}
