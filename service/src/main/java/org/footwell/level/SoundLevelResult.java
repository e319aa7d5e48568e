package org.footwell.level;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.media.Schema;

/** How loud it is at the seat. */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record SoundLevelResult(
    @Schema(description = "Continuous level at the seat, dB SPL") double levelDbSpl,
    @Schema(description = "Instantaneous peak level at the seat, dB SPL") double peakLevelDbSpl,
    @Schema(description = "Sensitivity of one driver per 1 W, dB SPL") double oneWattLevelDbSpl,
    @Schema(description = "Sensitivity of one driver at 2.83 V, dB SPL")
        double twoPointEightThreeVoltLevelDbSpl,
    @Schema(description = "Average power of one driver, W") double driverPowerW,
    @Schema(description = "Level gained or lost by the number of drivers, dB") double driverCountDb,
    @Schema(description = "Level change by distance, dB") double distanceDb,
    @Schema(description = "Low-frequency gain of the cabin, dB") Double cabinGainDb,
    @Schema(description = "Level lost to thermal compression, dB") double compressionDb,
    @Schema(description = "Power that reaches the target, W, counted as power_w is")
        Double powerNeededW,
    @Schema(description = "A-weighted level at the seat, dBA") Double levelDba,
    @Schema(description = "A-weighted level above the road noise, dB") Double overRoadNoiseDb,
    @Schema(description = "Exposure allowed per day at this level by NIOSH 98-126, h")
        Double exposureAllowedH) {}
