package org.footwell.electrical.amplifier;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.Needed;
import org.footwell.parts.Amplifier;

/** Published powers of an amplifier, and what to predict from them. */
@Built
@Needed("amplifier.ratings")
@Keeps(PossibleRatings.class)
public record AmplifierRatingsRequest(
    @Schema(
            description =
                "The amplifier by its published powers; bridged_ratings are held against those of"
                    + " one output")
        @NotNull
        Amplifier amplifier,
    @Schema(
            description =
                "Loads to predict the clean power into, ohm, as connected: one channel and bridged"
                    + " alike")
        @NotNull
        @Size(min = 1, max = 24)
        List<@NotNull @DecimalMin("0.25") @DecimalMax("600") Double> loadsOhm,
    @Schema(
            description =
                "Supply voltages of the vehicle to predict for, V; absent: the one the powers are"
                    + " stated at")
        @Size(min = 1, max = 16)
        List<@NotNull @DecimalMin("9") @DecimalMax("32") Double> suppliesV) {}
