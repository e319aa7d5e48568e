package org.footwell.electrical.heat;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;

/** What an amplifier takes from the battery and turns into heat. */
public record AmplifierHeatResult(
    @Schema(description = "All channels together, converter included") Total total,
    @Schema(description = "One channel of each entry of the request, in its order")
        List<ChannelHeat> channels) {

  /** The whole amplifier. */
  public record Total(
      @Schema(description = "No signal") TotalDraw idle,
      @Schema(description = "Sine on all channels, at sine_swing_ratio of the full swing")
          TotalDraw sine,
      @Schema(description = "Gaussian noise whose peaks, by its crest factor, reach full swing")
          TotalDraw noise,
      @Schema(description = "Music at one eighth of full power: now and then at the limit")
          TotalDraw musicEighth,
      @Schema(description = "Music at one third of full power: driven hard, often clipping")
          TotalDraw musicThird,
      @Schema(
              description =
                  "Heat in all output stages with each channel at the sine that heats it most, W;"
                      + " without the converter")
          double worstStageHeatW,
      @Schema(description = "Power from all rails at the instant all channels peak together, W")
          double peakRailPowerW,
      @Schema(
              description =
                  "Current from the battery if that instant lasts longer than the rails' capacitors"
                      + " bridge it, A; at the voltage the amplifier has with the sine")
          double peakBatteryCurrentA) {}

  /** What the whole amplifier takes for one kind of signal. */
  public record TotalDraw(
      @Schema(description = "Power into all loads, W") double outputPowerW,
      @Schema(description = "Power from the rails, W") double railPowerW,
      @Schema(description = "Power into the amplifier, W") double batteryPowerW,
      @Schema(description = "Mean current from the battery, A") double batteryCurrentA,
      @Schema(description = "Voltage at the amplifier, V") double terminalV,
      @Schema(description = "Heat in the output stages, W") double stageHeatW,
      @Schema(description = "Heat in the converter, W") double converterHeatW,
      @Schema(description = "Heat of the whole amplifier, W") double heatW) {}

  /** One channel. */
  @Built
  public record ChannelHeat(
      @Schema(description = "Name as given") String name,
      int channelCount,
      @Schema(description = "Largest clean output, V peak, across the whole load")
          double fullSwingV,
      @Schema(
              description =
                  "Power of a sine at full swing, W: what really goes into the load, so less the"
                      + " more reactive it is")
          double fullPowerW,
      @Schema(
              description =
                  "Swing of the sine that heats the stage most, over the rail, as a ratio; in a"
                      + " bridge over both rails")
          double worstSwingRatio,
      @Schema(description = "Heat in the output stage with that sine, W") double worstHeatW,
      @Schema(description = "Peak current through the load at full swing, A")
          double peakOutputCurrentA,
      @Schema(
              description =
                  "Largest current a rail must give at an instant, A; for class D averaged over"
                      + " the switching, and no more than this")
          double peakRailCurrentA,
      @Schema(description = "Power from the rails at that instant, W") double peakRailPowerW,
      @Schema(description = "No signal") Draw idle,
      @Schema(description = "Sine at sine_swing_ratio of the full swing") Draw sine,
      @Schema(description = "Gaussian noise whose peaks, by its crest factor, reach full swing")
          Draw noise,
      @Schema(description = "Music at one eighth of full power") Draw musicEighth,
      @Schema(description = "Music at one third of full power") Draw musicThird) {}

  /** What one channel takes for one kind of signal. */
  public record Draw(
      @Schema(description = "Power into the load, W") double outputPowerW,
      @Schema(description = "Power from the rails, W") double railPowerW,
      @Schema(
              description =
                  "Mean current in each rail, A; for a single-supply bridge in its one supply")
          double railCurrentA,
      @Schema(description = "This channel's share of the current from the battery, A")
          double batteryCurrentA,
      @Schema(description = "Heat in the output stage, W") double heatW) {}
}
