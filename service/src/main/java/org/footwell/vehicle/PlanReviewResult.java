package org.footwell.vehicle;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import org.footwell.acoustic.crossover.HighReason;
import org.footwell.acoustic.crossover.LowReason;
import org.footwell.acoustic.level.SoundLevelResult;
import org.footwell.calculation.Built;
import org.footwell.calculation.Verdict;
import org.footwell.parts.Filter;

/** The plan, channel by channel, and the system as a whole. */
@JsonInclude(JsonInclude.Include.NON_NULL)
@Built
public record PlanReviewResult(
    @Schema(description = "Seat the levels are for: the one of largest weight") String mainSeat,
    @Schema(description = "One line per channel") List<ChannelLine> channels,
    @Schema(
            description =
                "Each band of each channel by its drivers: a channel without a passive crossover has"
                    + " one")
        List<BandLine> bands,
    @Schema(description = "One line per driver whose enclosure is given") List<BoxLine> boxes,
    @Schema(description = "Level of each group of channels, and how even it is")
        List<RoleLine> balance,
    @Schema(description = "One line per amplifier whose draw and feed are given")
        List<AmplifierLine> amplifiers,
    @Schema(
            description =
                "One line per crossover: where both drivers are at ease; left out where area and"
                    + " resonance of a driver are not given")
        List<CrossoverLine> crossovers,
    @Schema(description = "What to set, and what was measured, one line per channel")
        List<SetupLine> setupSheet,
    @Schema(description = "Level and arrival spread at each seat") List<SeatLine> seats,
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
  @Built
  public record ChannelLine(
      @Schema(description = "Id of the channel") String id,
      @Schema(description = "Where it plays") VehiclePlan.Role role,
      double loadOhm,
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
                  "The same held back by heat and movement of the drivers, dB SPL; where a driver's"
                      + " continuous power, or area and travel, are given")
          Double largestLevelDbSpl,
      @Schema(description = "What holds it") SoundLevelResult.Holds heldBy,
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

  /** One band of a channel, at the clip point of its amplifier. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record BandLine(
      @Schema(description = "Id of the channel") String channel,
      @Schema(description = "Band of its passive crossover; absent without one") String band,
      @Schema(description = "Ids of the drivers in it") List<String> drivers,
      @Schema(description = "Clean sine power of the driver that has the least headroom, W")
          double driverPowerW,
      @Schema(description = "That power over its continuous power, dB; absent where one has none")
          Double headroomDb,
      @Schema(description = "Level of the programme at the main seat, dB SPL") Double levelDbSpl,
      @Schema(description = "The same held back by heat and movement, dB SPL")
          Double largestLevelDbSpl,
      @Schema(description = "What holds it") SoundLevelResult.Holds heldBy) {}

  /** A driver in its box, at the peaks of its clean power, behind the filters of its channel. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record BoxLine(
      @Schema(description = "Id of the driver") String driver,
      @Schema(description = "Resonance in a closed box, tuning of a vented one, Hz")
          double resonanceHz,
      @Schema(description = "Total Q in a closed box") Double qtc,
      @Schema(description = "Highest frequency at which the response has fallen by 3 dB, Hz")
          Double f3Hz,
      @Schema(description = "Largest displacement, one-way peak, mm") double displacementMm,
      @Schema(description = "Where it is, Hz") double displacementHz,
      @Schema(description = "Largest air speed in the port, peak, m/s") Double portVelocityMPerS,
      @Schema(
              description =
                  "High-pass that would keep the cone within its limit; absent when none"
                      + " is needed, or none can do it")
          Filter subsonic) {}

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

  /** Where one channel hands over to another. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record CrossoverLine(
      @Schema(description = "Id of the channel below") String lower,
      @Schema(description = "Id of the channel above") String upper,
      @Schema(description = "Crossover frequency of the plan, Hz") double frequencyHz,
      @Schema(description = "Lowest frequency the upper driver is at ease with, Hz")
          Double lowestHz,
      @Schema(description = "What decides it") LowReason lowestReason,
      @Schema(description = "Highest frequency the lower driver is at ease with, Hz")
          double highestHz,
      @Schema(description = "What decides it") HighReason highestReason) {}

  /** What to set on one channel. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  @Built
  public record SetupLine(
      @Schema(description = "Id of the channel") String id,
      @Schema(description = "Id of the amplifier") String amplifier,
      @Schema(description = "Its outputs, two when bridged") List<String> outputs,
      @Schema(description = "High-pass") Filter highPass,
      @Schema(description = "Low-pass") Filter lowPass,
      @Schema(description = "RMS voltage to set with the test tone, V") Double gainTargetV,
      @Schema(description = "Trim, dB") double trimDb,
      @Schema(description = "Delay, ms: on the steps of the processor where there is one")
          double delayMs,
      @Schema(description = "Delay in samples; where there is a processor") Double delaySamples,
      @Schema(description = "Exact delay as path, mm") double delayMm,
      @Schema(description = "1 or -1") int polarity,
      @Schema(description = "Limiter for the drivers: RMS voltage, V") Double limiterRmsV,
      @Schema(description = "Limiter for the amplifier: peak voltage, V") double limiterPeakV,
      @Schema(description = "Filters of the equaliser") List<ParametricFilter> filters,
      @Schema(description = "Level predicted at the main seat, dB SPL") Double levelDbSpl,
      @Schema(description = "What was measured") MeasuredLine measured) {}

  /** What was measured of one channel. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record MeasuredLine(
      @Schema(description = "Level, dB SPL") Double levelDbSpl,
      @Schema(description = "Measured less predicted level, dB") Double levelOffDb,
      @Schema(description = "RMS voltage with the test tone, V") Double gainV,
      @Schema(description = "Measured over target voltage, dB") Double gainOffDb,
      @Schema(description = "How much later than the earliest channel it arrives, ms")
          Double lateMs,
      @Schema(description = "Polarity found") Integer polarity,
      @Schema(description = "Whether it is that of the plan") Boolean polarityRight) {}

  /** One seat. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record SeatLine(
      @Schema(description = "Name of the seat") String name,
      @Schema(
              description =
                  "Level of all channels together there, as sums of powers, dB SPL; absent when a"
                      + " level is")
          Double levelDbSpl,
      @Schema(description = "Largest less smallest arrival left, ms") double spreadMs) {}
}
