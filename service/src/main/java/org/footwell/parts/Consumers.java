package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;

/** Everything else that draws current. */
@Built
public record Consumers(
    @Schema(description = "Drawn with the engine running, A: lights, heater, fans, engine")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("500")
        Double runningA,
    @Schema(description = "Drawn with the engine off while listening, A")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("500")
        Double engineOffA,
    @Schema(
            description =
                "Drawn by the parked vehicle asleep, mA, sound system and any camera included")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("10000")
        Double standbyMa) {}
