package org.footwell.acoustic.crossover;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;

/** Where to part the bands, and what each way then gets. */
public record CrossoverPlanResult(
    @Schema(description = "The lowest crossover proposed, Hz; absent when it has no proposal")
        Double lowestCrossoverHz,
    @Schema(description = "Its order") Integer lowestCrossoverOrder,
    @Schema(
            description =
                "The highest crossover proposed, Hz, that of the last way; absent when it has no"
                    + " proposal")
        Double highestCrossoverHz,
    @Schema(description = "Its order") Integer highestCrossoverOrder,
    @Schema(description = "One entry per pair of neighbouring ways, from low to high")
        List<PlannedCrossover> crossovers,
    @Schema(description = "One entry per way, from low to high") List<WayShare> ways,
    @Schema(description = "The capacitor in series with the last way; absent unless asked for")
        ProtectionCapacitor protection) {

  /** The crossover between two ways. */
  @Built
  public record PlannedCrossover(
      @Schema(description = "The way below") String lowerId,
      @Schema(description = "The way above") String upperId,
      @Schema(description = "Lowest frequency of the window, Hz; absent when nothing decides it")
          Double lowestHz,
      @Schema(description = "What decides the low end") LowReason lowestReason,
      @Schema(description = "Highest frequency of the window, Hz") double highestHz,
      @Schema(description = "What decides the high end") HighReason highestReason,
      @Schema(description = "Width of the window, octaves; negative when there is none")
          Double windowOctaves,
      @Schema(description = "Proposed frequency, Hz; absent when none can be proposed")
          Double frequencyHz,
      @Schema(description = "Why this frequency") Choice frequencyReason,
      @Schema(
              description =
                  "Proposed order: the lowest allowed one that keeps the upper way's displacement"
                      + " within xmax, or the highest allowed where that is not known or where"
                      + " there is no window")
          Integer order,
      @Schema(description = "Slope of that order, dB per octave") Double slopeDb,
      @Schema(description = "Circumference of the lower cone over the wavelength there")
          Double lowerKa,
      @Schema(description = "Everything that speaks against lower, from low to high")
          List<LowLimit> lowLimits,
      @Schema(description = "Everything that speaks against higher, from low to high")
          List<HighLimit> highLimits,
      @Schema(
              description =
                  "The upper way's displacement with each order; absent when it is not known")
          List<PlannedSlope> slopes) {}

  /** How a frequency was chosen. */
  public enum Choice {
    /** The geometric middle of the window. */
    MIDDLE,
    /** An octave above the low end of a wide window: safe, and better for even sound. */
    OCTAVE_ABOVE_LOWEST,
    /** The low end, where there is no window: safe for the driver at a cost in sound. */
    LOWEST
  }

  /** One thing that speaks against a lower crossover. */
  public record LowLimit(
      @Schema(description = "What") LowReason reason,
      @Schema(description = "Not below, Hz") double frequencyHz) {}

  /** One thing that speaks against a higher crossover. */
  public record HighLimit(
      @Schema(description = "What") HighReason reason,
      @Schema(description = "Not above, Hz") double frequencyHz) {}

  /** One order of the upper way's high-pass. */
  public record PlannedSlope(
      @Schema(description = "Order of the high-pass") int order,
      @Schema(
              description =
                  "Lowest corner that keeps the displacement within xmax at the wanted level, Hz;"
                      + " absent when it stays so without a filter")
          Double lowestHz,
      @Schema(description = "Largest displacement with the corner proposed, one-way peak, mm")
          Double displacementMm,
      @Schema(description = "Where it is largest, Hz") Double displacementAtHz,
      @Schema(description = "Whether it is within xmax with the corner proposed")
          Boolean withinXmax) {}

  /** What one way gets. */
  @Built
  public record WayShare(
      @Schema(description = "The way") String id,
      @Schema(description = "Diameter of a circle of its area, mm") double effectiveDiameterMm,
      @Schema(description = "Where it reaches the ka asked for, Hz") double beamingHz,
      @Schema(description = "Where the wanted level takes all of xmax, Hz: full level from here up")
          Double fullLevelFromHz,
      @Schema(description = "Its part of the programme's power behind the proposed filters, dB")
          Double shareDb,
      @Schema(description = "Voltage for the wanted level of a sine in its band, V RMS")
          Double sineV,
      @Schema(description = "Clean sine power its amplifier needs for the wanted level, W")
          Double sinePowerW,
      @Schema(description = "Peak voltage for the wanted level, V") Double peakV,
      @Schema(description = "Peak current for the wanted level into re, A") Double peakA,
      @Schema(description = "Average power from programme at the wanted level, W")
          Double programmePowerW,
      @Schema(description = "Continuous power it stands over that, dB; negative is too much")
          Double programmeMarginDb,
      @Schema(
              description =
                  "Its part of the average power when programme peaks just clip the amplifier of"
                      + " all ways, W, before any pad")
          Double amplifierShareW,
      @Schema(description = "Continuous power it stands over that, dB; negative is too much")
          Double amplifierMarginDb) {}

  /** The capacitor in series with the last way. */
  @Built
  public record ProtectionCapacitor(
      @Schema(description = "The way it protects") String id,
      @Schema(description = "Value that gives the ratio asked for, uF") double wantedUf,
      @Schema(description = "Nearest preferred value, uF") double capacitorUf,
      @Schema(description = "Its -3.01 dB point with the rated impedance, Hz") double cornerHz,
      @Schema(description = "Crossover over that point") double ratio,
      @Schema(description = "Level it takes at the crossover, dB") double levelDb,
      @Schema(description = "Phase it turns forward at the crossover, degrees") double phaseDeg,
      @Schema(description = "Group delay it adds at the crossover, ms") double groupDelayMs,
      @Schema(description = "Level it takes at 50 Hz, where bass reaches the way by mistake, dB")
          double bassLevelDb) {}
}
