package org.footwell.acoustic.crossover;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.Built;
import org.footwell.parts.Sensitivity;

/** The driver of one way, on one side of the vehicle. */
@Built
public record CrossoverWay(
    @Schema(description = "Name of the way, used in the answer") @NotNull @Size(min = 1, max = 40)
        String id,
    @Schema(
            description =
                "What it is used as. A tweeter is kept at a multiple of its resonance; below a"
                    + " subwoofer's crossover the ear must not find the place. Without it the last"
                    + " way counts as a tweeter")
        WayRole role,
    @NotNull Double sdCm2,
    @Schema(description = "Resonance in free air, Hz; of a tweeter as its data sheet states it")
        Double fsHz,
    @Schema(
            description =
                "Total Q at fs_hz; without it the driver's own roll-off counts as Butterworth,"
                    + " 0.707")
        Double qts,
    @Schema(
            description =
                "Resonance in its closed box, Hz, which then counts instead of fs_hz; Q rises with"
                    + " it. Without it the driver is as in free air")
        @DecimalMin("5")
        @DecimalMax("5000")
        Double fcHz,
    Double xmaxMm,
    @NotNull Double ratedOhm,
    @Schema(description = "Resistance by direct current, ohm, for the peak current to expect")
        Double reOhm,
    @Schema(description = "Sensitivity in its band") Sensitivity sensitivity,
    Double continuousPowerW,
    Double lowerLimitHz,
    Double upperLimitHz,
    @Schema(
            description =
                "Lowest crossover as a multiple of the resonance; without it 2 for a tweeter and 1"
                    + " for others (common practice)")
        @DecimalMin("0.5")
        @DecimalMax("10")
        Double resonanceMultiple,
    @Schema(description = "Distance between its centre and that of the next way, mm")
        @DecimalMin("1")
        @DecimalMax("5000")
        Double spacingToNextMm) {

  /** What a driver is used as. */
  public enum WayRole {
    /** The lowest octaves only, from a place the ear must not find. */
    SUBWOOFER,
    /** Bass, or bass and middle. */
    WOOFER,
    /** The middle. */
    MIDRANGE,
    /** The top. */
    TWEETER,
    /** As much as it can. */
    FULL_RANGE;

    /** Whether two roles tell which lies below; full range may stand anywhere. */
    static boolean decideOrder(WayRole one, WayRole other) {
      return one != null
          && other != null
          && one != other
          && one != FULL_RANGE
          && other != FULL_RANGE;
    }
  }

  /** The resonance that counts, Hz, or null when none is known. */
  Double resonanceHz() {
    return fcHz == null ? fsHz : fcHz;
  }
}
