package org.footwell.factory.sum;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Called;

/** The sum as it is, and the best that the outputs allow. */
@Built
public record SignalSumResult(
    @Schema(description = "The sum of what is connected, as it is") Evenness sum,
    @Schema(
            description =
                "The flattest sum with some outputs left out, turned over or their delays undone;"
                    + " the fewest changes among those that are within half a dB of it")
        Evenness best,
    @Schema(description = "What to do with each output for the best sum") List<Advice> outputs,
    @Schema(description = "Where the sum as it is stays more than the tolerance below its median")
        List<Region> holes,
    @Schema(description = "Where the sum as it is stays more than the tolerance above its median")
        List<Region> overlaps,
    @Schema(
            description =
                "RMS voltage of a full-scale sine after a summing stage that adds the inputs as"
                    + " they are, V: at the median level of the best sum")
        Double summedV,
    @Schema(
            description =
                "The same where the best sum is highest, V: what the next input must take")
        Double highestSummedV,
    @Schema(description = "The same for the sum as it is, where it is highest, V")
        Double highestSummedNowV,
    @Schema(
            description =
                "RMS voltage of a full-scale sine that a gain chain behind the summing stage begins"
                    + " with, V: gain-chain takes it as head_unit.clean_output_v. It is"
                    + " highest_summed_v, so that no frequency is too much for what follows")
        Double cleanOutputV,
    @Schema(description = "Points of the sum as it is and of the best one")
        List<SummedPoint> points) {

  /** How even a sum is. */
  @Built
  public record Evenness(
      @Schema(description = "Start of the band it is judged in, Hz") double fromHz,
      @Schema(description = "End of that band, Hz") double toHz,
      @Schema(description = "Median level in it, dB; with voltages dB over 1 V") double medianDb,
      @Schema(description = "Highest level over the median, dB") double highestDb,
      @Called("highest_at_hz") @Schema(description = "Where, Hz") double highestHz,
      @Schema(description = "Lowest level over the median, dB, -60 or more") double lowestDb,
      @Called("lowest_at_hz") @Schema(description = "Where, Hz") double lowestHz,
      @Schema(description = "Highest minus lowest level, dB") double spreadDb,
      @Schema(description = "Whether all of it lies within the tolerance of the median")
          boolean flatEnough) {}

  /** What to do with one output. */
  public record Advice(
      @Schema(description = "Name as given") String id,
      @Schema(description = "Whether to connect it to the sum") boolean connect,
      @Schema(description = "Whether to turn its polarity") boolean turnPolarity,
      @Schema(
              description =
                  "How much later it comes than the earliest output of the best sum, beside the"
                      + " delay of its filters, ms: the delay to undo")
          double laterMs,
      @Schema(
              description =
                  "Delay to give it in the summing stage so that all of the best sum come together,"
                      + " ms; 0 when delays may stay")
          double delayMs,
      @Schema(
              description =
                  "Frequency at which an all-pass in it turns the phase by half its way, Hz;"
                      + " absent: none found")
          Double allPassHz) {}

  /** A region of the sum. */
  public record Region(
      @Schema(description = "Where it begins, Hz") double fromHz,
      @Schema(description = "Where it ends, Hz") double toHz,
      @Schema(description = "Level over the median at its worst, dB, -60 or more") double levelDb,
      @Schema(description = "Where that is, Hz") double worstHz,
      @Schema(description = "What phases cost there against all in phase, dB, 60 or less")
          double phaseLossDb) {}

  /** One point. */
  public record SummedPoint(
      double frequencyHz,
      @Schema(description = "Level of the sum as it is over its median, dB, -60 or more")
          double levelDb,
      @Schema(description = "What it would be if all added in phase, dB: the sum of magnitudes")
          double inPhaseLevelDb,
      @Schema(description = "Level of the best sum over its median, dB, -60 or more")
          double bestLevelDb) {}
}
