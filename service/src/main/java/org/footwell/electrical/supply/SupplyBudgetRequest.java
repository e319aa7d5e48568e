package org.footwell.electrical.supply;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.Ascending;
import org.footwell.calculation.rule.AtMostOne;

/** What feeds a sound system, what else draws from it, and what is played. */
@Built
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

  /** The alternator. */
  @Built
  @Ascending({"low_v", "voltage_v"})
  @Ascending(
      value = {"idle_a", "cruise_a"},
      orEqual = true)
  public record Alternator(
      @Schema(description = "Output when hot with the engine at idle, A")
          @NotNull
          @DecimalMin("0")
          @DecimalMax("1000")
          Double idleA,
      @Schema(description = "Output when hot at cruising speed, A")
          @NotNull
          @DecimalMin("1")
          @DecimalMax("1000")
          Double cruiseA,
      @Schema(description = "Voltage it holds while it can give the current, V")
          @NotNull
          @DecimalMin("5")
          @DecimalMax("60")
          Double voltageV,
      @Schema(
              description =
                  "Lowest voltage the vehicle commands from a smart alternator to save fuel, V; when"
                      + " given, also what that does")
          @DecimalMin("5")
          @DecimalMax("60")
          Double lowV) {}

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

  /** The battery. */
  @Built
  @AtMostOne({"peukert_exponent", "reserve_min"})
  public record Battery(
      @Schema(description = "Capacity at the 20 h rate, Ah")
          @NotNull
          @DecimalMin("5")
          @DecimalMax("2000")
          Double capacityAh,
      @Schema(
              description =
                  "Peukert's exponent; when neither this nor reserve_min is given 1.0, which"
                      + " flatters: 1.05 to 1.15 is usual for absorbed glass mat, 1.2 and more for"
                      + " flooded batteries")
          @DecimalMin("1")
          @DecimalMax("1.6")
          Double peukertExponent,
      @Schema(
              description =
                  "Reserve capacity, min: how long 25 A last from full to 10.5 V; gives Peukert's"
                      + " exponent")
          @DecimalMin("5")
          @DecimalMax("5000")
          Double reserveMin,
      @Schema(description = "State of charge to begin with, as a share of the capacity")
          @DecimalMin("0.05")
          @DecimalMax("1")
          Double charge,
      @Schema(description = "Voltage at rest, halfway through the discharge, V; about 12.4")
          @NotNull
          @DecimalMin("5")
          @DecimalMax("60")
          Double restingV,
      @Schema(description = "Internal resistance with its terminals, ohm")
          @DecimalMin("0.0005")
          @DecimalMax("1")
          Double internalOhm,
      @Schema(
              description =
                  "Share of the capacity that still starts the engine (the default is common"
                      + " practice; cold weather asks for more)")
          @DecimalMin("0")
          @DecimalMax("1")
          Double startCharge,
      @Schema(
              description =
                  "Share of the capacity lost by itself in 30 days (the default is common practice"
                      + " at 20 °C)")
          @DecimalMin("0")
          @DecimalMax("0.5")
          Double selfDischarge) {

    public Battery {
      charge = charge == null ? Double.valueOf(1) : charge;
      internalOhm = internalOhm == null ? Double.valueOf(0.01) : internalOhm;
      startCharge = startCharge == null ? Double.valueOf(0.5) : startCharge;
      selfDischarge = selfDischarge == null ? Double.valueOf(0.03) : selfDischarge;
    }
  }

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
