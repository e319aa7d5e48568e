package org.footwell.vehicle.curves;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.vehicle.PlanReviewResult.SupplyLine;
import org.footwell.vehicle.chain.Limit;

/** What a plan does over frequency with a full-scale sine and the settings of its sheet. */
@Built
public record PlanCurvesResult(
    @Schema(description = "Seat of largest weight, for which levels of channels are")
        String mainSeat,
    @Schema(description = "Frequencies of every list, Hz: five places in each third octave")
        List<Double> frequenciesHz,
    @Schema(description = "One entry per channel") List<ChannelCurve> channels,
    @Schema(description = "One entry per driver on a channel whose movement can be worked out")
        List<DriverCurve> drivers,
    @Schema(
            description =
                "All channels together at each seat; absent when a sensitivity is. Pressures are"
                    + " added with their phases up to 300 Hz, as powers above")
        List<SeatCurve> seats,
    @Schema(
            description =
                "The wanted curve, dB SPL, at the height where it differs from the main seat by 0 dB"
                    + " on average")
        List<Double> targetDbSpl,
    @Schema(
            description =
                "One entry per position a factory part leaves, where the sensitivities of both parts"
                    + " are given; absent without any")
        List<ReplacementCurve> replacements,
    @Schema(description = "One entry per driver on a channel: its way to the main seat")
        List<Path> paths,
    @Schema(description = "What the supply does in each situation, as plan-review has it")
        List<SupplyLine> supply) {

  /** One channel. */
  public record ChannelCurve(
      @Schema(description = "Id of the channel") String id,
      @Schema(description = "Level of the channel alone at the main seat, dB SPL")
          List<Double> levelDbSpl,
      @Schema(description = "Modulus of what the amplifier meets, with the cable, ohm")
          List<Double> impedanceOhm,
      @Schema(description = "Smallest rated load of its output as it is connected, ohm")
          Double minimumOhm,
      @Schema(
              description =
                  "How much more drive a lasting sine is allowed there, dB; below 0 it is too much")
          List<Double> headroomDb,
      @Schema(description = "What ends it there") List<Limit> heldBy) {}

  /** One driver. */
  public record DriverCurve(
      @Schema(description = "Id of the driver") String id,
      @Schema(description = "Id of its channel") String channel,
      @Schema(description = "Displacement, one-way peak, mm") List<Double> displacementMm,
      Double xmaxMm) {}

  /** One seat. */
  public record SeatCurve(
      @Schema(description = "Name of the seat") String name,
      @Schema(description = "Level there, dB SPL") List<Double> levelDbSpl) {}

  /**
   * One position before against after: both drivers alone in what their back works into there, at 1 m in
   * half space with 2.83 V and no filter.
   */
  public record ReplacementCurve(
      @Schema(description = "Id of the position") String driver,
      @Schema(description = "Id of the factory part that leaves it") String factoryPart,
      @Schema(description = "Id of the part that comes in") String newPart,
      @Schema(description = "Level of the factory part, dB SPL at 1 m in half space with 2.83 V")
          List<Double> beforeDbSpl,
      @Schema(description = "The same of the new part, in the same enclosure")
          List<Double> afterDbSpl) {}

  /** The way of one driver to the main seat. */
  public record Path(
      @Schema(description = "Id of the driver") String driver,
      @Schema(description = "Id of its channel") String channel,
      @Schema(description = "How far it is in space, m") double distanceM,
      @Schema(description = "How long the sound takes for it, ms") double flightMs,
      @Schema(description = "Delay set on its channel, else that of the sheet, ms") double delayMs,
      @Schema(
              description =
                  "When it arrives, ms after the signal enters the processor: with what the chain"
                      + " behind it adds")
          double arrivalMs) {}
}
