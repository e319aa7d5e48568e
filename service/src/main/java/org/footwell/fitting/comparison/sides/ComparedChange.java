package org.footwell.fitting.comparison.sides;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import org.footwell.calculation.Built;

/** Replacement less factory part. */
@Built
public record ComparedChange(
    @Schema(description = "Mass that comes in less mass that goes out, all drivers, g")
        Double massG,
    @Schema(description = "Continuous power, replacement over factory part, dB")
        Double continuousPowerDb,
    @Schema(description = "Peak power, replacement over factory part, dB") Double peakPowerDb,
    @Schema(
            description =
                "Level change at equal voltage, dB: what is heard when the volume control stays")
        Double sensitivityAtEqualVoltageDb,
    @Schema(
            description =
                "Level change at equal power into the rated impedances, dB: which part makes more"
                    + " of a watt")
        Double sensitivityAtEqualPowerDb,
    @Schema(description = "Power for the level of the factory part, as a multiple of its own power")
        Double powerRatioForFactoryLevel,
    @Schema(
            description =
                "Change of the largest clean level, dB; at least this where"
                    + " limits_of_factory_unknown is true")
        Double largestLevelDb,
    @Schema(
            description =
                "Whether a limit is known of the replacement only: then the changes of level and"
                    + " reach are at least what is given")
        Boolean limitsOfFactoryUnknown,
    @Schema(description = "Octaves the lowest useful frequency moves down; negative is up")
        Double lowerReachOctaves,
    @Schema(description = "Change of the cone area of all drivers, cm²") Double coneAreaCm2,
    @Schema(description = "Change of the air moved from rest to one side, all drivers, cm³")
        Double displacementCm3,
    @Schema(description = "Price of the replacements; what goes out is not counted")
        BigDecimal price,
    @Schema(
            description =
                "That price for each dB of largest clean level, to the cent, a half rounded up;"
                    + " only for gains of 0.1 dB or more, and not where the gain is only known to"
                    + " be at least something")
        BigDecimal pricePerDb) {}
