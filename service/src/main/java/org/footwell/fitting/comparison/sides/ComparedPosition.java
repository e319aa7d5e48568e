package org.footwell.fitting.comparison.sides;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.Built;

/** One place of the vehicle, or several alike: what is in it and what shall be. */
@Built
public record ComparedPosition(
    @Schema(description = "What the place is called, once only") @NotNull @Size(min = 1, max = 80)
        String name,
    @Schema(description = "Where in the sound stage it plays") @NotNull Zone zone,
    @Schema(description = "What part of the range it plays; with zone it makes the group") @NotNull
        Band band,
    @Schema(description = "Where its mass goes") MountedAt at,
    Integer driverCount,
    @Schema(description = "What is in it; left out where there was nothing") ComparedDriver factory,
    @Schema(description = "What shall be in it") @NotNull ComparedDriver replacement,
    @Schema(description = "What drives the factory part") ComparedAmplifier amplifierBefore,
    @Schema(
            description =
                "What shall drive the replacement; when not given, amplifier_before stays with the"
                    + " voltage it has")
        ComparedAmplifier amplifierAfter,
    @Schema(
            description =
                "Frequency at which the cone's travel is held against the level, Hz: the lowest"
                    + " the position plays at full level, usually its high-pass. When not given, by"
                    + " band: subwoofer 40, woofer and full_range 80, midrange 400, tweeter 3000")
        @DecimalMin("5")
        @DecimalMax("20000")
        Double displacementHz,
    Double reachLevelDbSpl) {

  public ComparedPosition {
    at = at == null ? MountedAt.CABIN : at;
    driverCount = driverCount == null ? Integer.valueOf(1) : driverCount;
    displacementHz =
        displacementHz == null && band != null
            ? Double.valueOf(band.displacementHz)
            : displacementHz;
    reachLevelDbSpl = reachLevelDbSpl == null ? Double.valueOf(90) : reachLevelDbSpl;
  }

  /** A part of the sound stage. */
  public enum Zone {
    FRONT,
    CENTRE,
    REAR
  }

  /** A part of the range, with the frequency its travel is judged at; common practice, no source. */
  public enum Band {
    SUBWOOFER(40),
    WOOFER(80),
    MIDRANGE(400),
    TWEETER(3000),
    FULL_RANGE(80);

    private final double displacementHz;

    Band(double displacementHz) {
      this.displacementHz = displacementHz;
    }
  }

  /** Where something is fixed. */
  public enum MountedAt {
    CABIN,
    DOOR,
    BOOT
  }
}
