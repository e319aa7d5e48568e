package org.footwell.fitting.comparison.sides;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import org.footwell.calculation.Built;

/** One part in its position. Levels are of one driver, at 1 m in half space. */
@Built
public record ComparedSide(
    @Schema(description = "What the part is called") String name,
    @Schema(description = "Level of one driver at 1 W into its rated impedance, dB SPL")
        Double oneWattLevelDbSpl,
    @Schema(description = "Level of one driver at 2.83 V, dB SPL")
        Double twoPointEightThreeVoltLevelDbSpl,
    @Schema(description = "Clean power the amplifier has for one driver, W") Double amplifierPowerW,
    @Schema(description = "Level of one driver at its continuous power, dB SPL")
        Double thermalLevelDbSpl,
    @Schema(
            description =
                "Level of one driver at full travel at the position's displacement_hz, dB SPL")
        Double displacementLevelDbSpl,
    @Schema(description = "Level of one driver at the amplifier's clean power, dB SPL")
        Double amplifierLevelDbSpl,
    @Schema(description = "Lowest of the three, as far as they are known, dB SPL")
        Double largestLevelDbSpl,
    @Schema(description = "Which of the three it is") LevelLimit limitedBy,
    @Schema(
            description =
                "Below this frequency travel holds the level, above it power or amplifier, Hz")
        Double displacementLimitedBelowHz,
    @Schema(description = "Lowest useful frequency at the position's reach_level_db_spl, Hz")
        Double lowestUsefulHz,
    @Schema(description = "What that frequency comes from") ReachLimit lowestUsefulBy,
    @Schema(description = "Cone area of all drivers of the position, cm²") Double coneAreaCm2,
    @Schema(
            description =
                "Air moved from rest to one side by all drivers of the position, cm³: cone area"
                    + " times one-way travel")
        Double displacementCm3,
    @Schema(description = "Continuous power of all drivers of the position, W")
        Double continuousPowerW,
    @Schema(description = "Peak power of all drivers of the position, W") Double peakPowerW,
    @Schema(description = "Peak over continuous power, dB") Double peakOverContinuousDb,
    @Schema(description = "Mass of all drivers of the position, g") Double massG,
    @Schema(description = "Price of all drivers of the position") BigDecimal price) {}
