package org.footwell.electrical.supply;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.parts.Alternator;
import org.footwell.parts.Battery;
import org.footwell.parts.Consumers;

/** What feeds a sound system, what else draws from it, and what is played. */
@Built
@Keeps(DepthLeft.class)
@Keeps(VoltagesMatch.class)
@Keeps(value = PossibleReserve.class, of = "battery")
public record SupplyBudgetRequest(
    @Schema(description = "The alternator") @NotNull Alternator alternator,
    @Schema(description = "Everything else that draws current") @NotNull Consumers consumers,
    @Schema(description = "The battery") @NotNull Battery battery,
    @Schema(description = "The sound system and what is played on it") @NotNull SoundSystem system,
    @Schema(
            description =
                "Depth of discharge to which one may listen with the engine off, as a share of the"
                    + " capacity counted from full: 0.3 leaves 70 %")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("100")
        Double depth,
    @Schema(description = "Share of the driving time at idle, 0 to 1, for the average balance")
        @DecimalMin("0")
        @DecimalMax("1")
        Double idleShare,
    @Schema(description = "Lowest voltage at the battery while the engine is started, V")
        @DecimalMin("1")
        @DecimalMax("60")
        Double crankingV) {

  /** The sound system, all its amplifiers taken together, and what is played. */
  @Built
  public record SoundSystem(
      @Schema(
              description =
                  "Clean power of all channels together at supply_v, W: sine, clipping onset")
          @NotNull
          @DecimalMin("1")
          @DecimalMax("50000")
          Double cleanPowerW,
      @Schema(description = "Voltage at the amplifier for which clean_power_w is stated, V")
          @NotNull
          Double supplyV,
      @Schema(
              description =
                  "Whether the amplifier holds its clean power whatever the voltage; otherwise it"
                      + " goes with the square of the voltage")
          @NotNull
          Boolean supplyRegulated,
      @Schema(description = "Output over input power at full clean power, idle_a left out")
          @NotNull
          @DecimalMin("0.05")
          @DecimalMax("1")
          Double fullEfficiency,
      @Schema(
              description =
                  "Output over input power at the average level of the programme, idle_a left out;"
                      + " far lower in class AB")
          @NotNull
          @DecimalMin("0.02")
          @DecimalMax("1")
          Double averageEfficiency,
      @Schema(description = "Current drawn switched on but silent, at supply_v, A")
          @DecimalMin("0")
          @DecimalMax("100")
          Double idleA,
      @Schema(
              description =
                  "Level of the programme's peaks below clipping at supply_v, dB: 0 just reaches it, −10"
                      + " is ten below")
          @NotNull
          @DecimalMin("-80")
          @DecimalMax("0")
          Double levelDb,
      @NotNull @DecimalMin("3.01") @DecimalMax("40") Double crestFactorDb,
      // Without any, what the supply can give at most would have no bound.
      @NotNull @DecimalMin("0.00001") Double supplyCableOhm,
      @Schema(description = "Voltage at the amplifier below which it mutes or switches off, V")
          @DecimalMin("1")
          @DecimalMax("60")
          Double minimumV) {

    public SoundSystem {
      idleA = idleA == null ? Double.valueOf(0) : idleA;
    }
  }
}
