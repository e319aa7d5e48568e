package org.footwell.parts.plan;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.rule.Ascending;
import org.footwell.parts.LevelAt;
import org.footwell.parts.ModulusAt;

/** What was measured of a channel with everything set. */
@Ascending("response.*.frequency_hz")
@Ascending("impedance.*.frequency_hz")
public record MeasuredChannel(
    @Schema(description = "Id of the channel") @NotNull @Size(min = 1, max = 40) String channel,
    @Schema(
            description =
                "Level at the main seat with the channel alone and the programme of the plan, dB SPL")
        @DecimalMin("20")
        @DecimalMax("180")
        Double levelDbSpl,
    @Schema(
            description =
                "Response at the main seat with the channel alone, dB: only its shape counts, unless"
                    + " level_db_spl is given too")
        @Size(min = 3, max = 200)
        List<@NotNull LevelAt> response,
    @Schema(description = "DC resistance at the amplifier's end of its cable, ohm")
        @DecimalMin("0.05")
        @DecimalMax("5000")
        Double meterOhm,
    @Schema(
            description =
                "Impedance at the amplifier's end of its cable, the wires taken off the amplifier")
        @Size(min = 1, max = 200)
        List<@NotNull ModulusAt> impedance,
    @Schema(
            description =
                "Arrival at the main seat, ms; only the differences between channels count")
        Double arrivalMs,
    @Schema(description = "Polarity found: 1 pushes outward, -1 inward") Integer polarity) {}
