package org.footwell.plan;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.footwell.calculation.Verdict;

/** The plan, channel by channel, and the system as a whole. */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record PlanReviewResult(
    @Schema(description = "Seat the levels are for: the one of largest weight") String mainSeat,
    @Schema(description = "One line per channel") List<ChannelLine> channels,
    @Schema(description = "Level of each group of channels, and how even it is")
        List<RoleLine> balance,
    @Schema(description = "One line per amplifier whose draw and feed are given")
        List<AmplifierLine> amplifiers,
    @Schema(description = "Arrival spread left at each seat") List<SeatLine> seats,
    @Schema(
            description =
                "Level of all channels together at the main seat, as sums of powers, dB SPL; absent"
                    + " when a level is")
        Double levelDbSpl,
    @Schema(description = "The same A-weighted, dBA") Double levelDba,
    @Schema(description = "A-weighted level above the road noise, dB") Double overRoadNoiseDb,
    @Schema(description = "Exposure allowed per day at this level by NIOSH 98-126, h")
        Double exposureAllowedH,
    @Schema(
            description =
                "Mass that comes in less what goes out, g; absent when the mass of a part or"
                    + " amplifier is")
        Double massChangeG,
    @Schema(description = "Price of all new parts and amplifiers; absent when one has none")
        BigDecimal price) {

  /** One channel. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record ChannelLine(
      @Schema(description = "Id of the channel") String id,
      @Schema(description = "Where it plays") VehiclePlan.Role role,
      @Schema(description = "Rated load, ohm") double loadOhm,
      @Schema(description = "Lowest modulus over frequency, ohm; where the drivers' data is there")
          Double lowestOhm,
      @Schema(description = "Clean sine power into the load, W") double cleanPowerW,
      @Schema(description = "Clean power over the drivers' continuous power, dB") Double headroomDb,
      @Schema(description = "Limiter for the drivers: RMS voltage, V") Double limiterRmsV,
      @Schema(description = "Limiter for the amplifier: peak voltage, V") double limiterPeakV,
      @Schema(
              description =
                  "Largest clean level of the programme at the main seat, dB SPL; absent without"
                      + " sensitivities")
          Double levelDbSpl,
      @Schema(
              description =
                  "RMS voltage to set with the test tone, V; where signal and sensitivity are given")
          Double gainTargetV,
      @Schema(description = "Delay to add, ms") double delayMs,
      @Schema(
              description =
                  "Trim that brings the channel to the level of the quietest, dB; by the distance law where a level is not known")
          double trimDb,
      @Schema(description = "The worst finding about this channel") Verdict verdict) {}

  /** One group of channels. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record RoleLine(
      @Schema(description = "Where the channels play") VehiclePlan.Role role,
      @Schema(description = "Level of the group, as a sum of powers, dB SPL") double levelDbSpl,
      @Schema(description = "Loudest less quietest channel of the group, dB") double spreadDb) {}

  /** One amplifier. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record AmplifierLine(
      @Schema(description = "Id of the amplifier") String id,
      @Schema(description = "Current from the battery with music at a third of full power, A")
          double currentA,
      @Schema(description = "Heat of the whole amplifier with that music, W") double heatW,
      @Schema(description = "Heat in all output stages at the sine that heats most, W")
          double worstStageHeatW,
      @Schema(description = "Supply cable, mm²; absent when none does") Double cableMm2,
      @Schema(description = "Drop over the whole loop, V") Double dropV,
      @Schema(description = "Main fuse, A; absent when none fits") Double fuseA) {}

  /** One seat. */
  public record SeatLine(
      @Schema(description = "Name of the seat") String name,
      @Schema(description = "Largest less smallest arrival left, ms") double spreadMs) {}
}
