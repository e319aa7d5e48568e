package org.footwell.electrical.supply;

import io.swagger.v3.oas.annotations.media.Schema;
import org.footwell.calculation.Built;

/** Whether alternator and battery bear the sound system. */
@Built
public record SupplyBudgetResult(
    @Schema(description = "Average power into the loudspeakers, W") double averageOutputW,
    @Schema(description = "Power into the loudspeakers at the programme's peaks, W")
        double peakOutputW,
    @Schema(description = "Average power the amplifiers draw, W") double averageInputW,
    @Schema(description = "Power the amplifiers draw at the programme's peaks, W, at at_v")
        double peakInputW,
    @Schema(description = "Cruising") SupplyState cruise,
    @Schema(description = "Engine at idle") SupplyState idle,
    @Schema(description = "Cruising while a smart alternator holds its low voltage")
        SupplyState smartLow,
    @Schema(description = "Engine off") SupplyState engineOff,
    @Schema(description = "While the engine is started") SupplyState cranking,
    @Schema(description = "Balance of charge over idle and cruise, A") Double averageBalanceA,
    @Schema(description = "Time of listening with the engine off down to the depth, min")
        Double listeningMin,
    @Schema(description = "Peukert's exponent taken") double peukertExponent,
    @Schema(
            description =
                "Days parked until the engine no longer starts; absent when nothing drains")
        Double standbyDays) {

  /** What the supply does in one situation. */
  public record SupplyState(
      @Schema(description = "Average current of the sound system, A; absent when it collapses")
          Double averageCurrentA,
      @Schema(description = "Current at the programme's peaks, A; absent when the supply collapses")
          Double peakCurrentA,
      @Schema(description = "Voltage at the battery at the peaks, V") Double peakBatteryV,
      @Schema(description = "Average voltage at the amplifier, V") Double averageAmplifierV,
      @Schema(description = "Voltage at the amplifier at the peaks, V") Double peakAmplifierV,
      @Schema(description = "Clean power at that voltage, W; 0 below the amplifier's minimum")
          Double cleanPowerW,
      @Schema(description = "Current into the battery on average, A; negative discharges it")
          Double balanceA) {}
}
