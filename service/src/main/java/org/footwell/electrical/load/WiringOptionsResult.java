package org.footwell.electrical.load;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;

/** The networks that the coils can be wired as, counted, and the best of them. */
@Built
public record WiringOptionsResult(
    @Schema(description = "How many distinct networks use all of the coils") int networkCount,
    @Schema(description = "How many of them are a lower load than the channel accepts")
        int belowWindowCount,
    @Schema(description = "How many are a higher load than wanted") int aboveWindowCount,
    @Schema(description = "How many are in the window") int inWindowCount,
    @Schema(description = "How many in the window share power evenly") int evenCount,
    @Schema(description = "How many in the window are not listed") int notListedCount,
    @Schema(description = "Smallest load accepted as connected, ohm") double smallestLoadOhm,
    @Schema(description = "The best network; absent when none is in the window") String bestNetwork,
    @Schema(description = "Its rated load, ohm") Double bestLoadOhm,
    @Schema(description = "Its evenness: 1 when all coils take the same power") Double bestEvenness,
    @Schema(description = "Clean power into it, W; with an amplifier") Double bestCleanPowerW,
    @Schema(
            description =
                "The networks in the window, best first: even sharing before uneven, then by clean"
                    + " power, or by rising load where there is no amplifier to tell")
        List<Option> options) {

  /** One network. */
  public record Option(
      @Schema(description = "The network in circuit notation, + in series, || in parallel")
          String network,
      @Schema(description = "Rated load at its terminals, ohm") double loadOhm,
      @Schema(description = "Whether all coils take the same power") boolean evenSharing,
      @Schema(
              description =
                  "Power of the coil that takes least over power of the one that takes most; 1 is"
                      + " even")
          double evenness,
      @Schema(description = "Clean sine power into it to count on, W; with an amplifier")
          Double cleanPowerW,
      @Schema(description = "Smallest likely clean power, W; with an amplifier")
          Double cleanPowerLowW,
      @Schema(description = "Largest likely clean power, W; with an amplifier")
          Double cleanPowerHighW,
      @Schema(description = "The coils in the order of the network") List<CoilPower> coils) {}

  /** What one coil takes. */
  public record CoilPower(
      @Schema(description = "Name of the coil, or its place in the network when it has none")
          String name,
      @Schema(description = "Rated impedance of the coil, ohm") double ratedOhm,
      @Schema(description = "Power of the coil over the power of the network") double powerShare,
      @Schema(description = "Voltage across the coil over the voltage across the network")
          double voltageShare,
      @Schema(description = "Its part of clean_power_w, W; with an amplifier")
          Double cleanPowerW) {}
}
