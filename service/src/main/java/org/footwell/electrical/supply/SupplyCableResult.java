package org.footwell.electrical.supply;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.Built;

/** The supply cable and its fuses. */
public record SupplyCableResult(
    @Schema(
            description =
                "The main cable: the smallest size of IEC 60228 class 5 that does, or the one given"
                    + " in area_mm2; absent when none does")
        SizedCable metric,
    @Schema(
            description =
                "The main cable: the smallest American wire gauge that does; absent when none does"
                    + " or area_mm2 was given")
        SizedCable gauge,
    @Schema(description = "Largest distance of the main fuse from the battery, m")
        double fuseDistanceLimitM,
    @Schema(description = "The branches, in the order given") List<SizedBranch> branches) {

  /** A cable of one size with what follows from it. */
  @Built
  public record SizedCable(
      double areaMm2,
      @Schema(description = "American wire gauge, 0000 to 16, when it is one") String awg,
      @Schema(description = "Resistance of the conductors at their temperature, ohm")
          double cableOhm,
      @Schema(description = "Resistance of the loop with body and contacts, ohm") double loopOhm,
      @Schema(description = "Current, A") double currentA,
      @Schema(description = "Drop over the loop, V") double dropV,
      @Schema(description = "Drop in percent of the voltage at the start") double dropPercent,
      @Schema(description = "Power lost in the loop, W") double lossW,
      @Schema(description = "Voltage at the end, V") double endV,
      @Schema(description = "Current the cable may carry for long, A") double ampacityA,
      @Schema(
              description =
                  "The fuse advised, A: the smallest standard one that suits current and cable")
          Double fuseA,
      @Schema(description = "How that fuse is built") FuseSeries fuseSeries,
      @Schema(
              description =
                  "What the fuse must be rated at least, A: for the current that flows for minutes"
                      + " and, where bass is sustained, for the full sine")
          double fuseLeastA,
      @Schema(description = "Largest standard fuse the cable allows, A; 0 when there is none")
          double fuseLargestA,
      @Schema(description = "Why the next smaller size does not do; absent when there is none")
          LimitedBy limitedBy) {}

  /** A branch. */
  public record SizedBranch(
      @Schema(description = "What it feeds") String name,
      @Schema(
              description =
                  "Voltage at its start, V: the supply less the whole drop permitted to the main"
                      + " cable")
          double startV,
      @Schema(description = "Smallest size of IEC 60228 class 5 that does") SizedCable metric,
      @Schema(description = "Smallest American wire gauge that does") SizedCable gauge) {}

  /** How a fuse-link is built. */
  public enum FuseSeries {
    /** Blade, ISO 8820-3 type C. */
    BLADE,
    /** Blade of type E or bolt-down. */
    BLADE_OR_BOLT_DOWN,
    /** Bolt-down strip, ISO 8820-5. */
    BOLT_DOWN
  }

  /** Why a size is too small. */
  public enum LimitedBy {
    /** It carries less than the current. */
    AMPACITY,
    /** It carries the current, but no fuse is both above that and within what it carries. */
    FUSE,
    /** It drops too much. */
    DROP
  }
}
