package org.footwell.fitting.comparison.sides;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.Built;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Needs;
import org.footwell.calculation.text.Words;
import org.footwell.parts.Driver;

/** One place of the vehicle, or several alike: what is in it and what shall be. */
@Built
@Needed({"factory.rated_ohm", "replacement.rated_ohm"})
@Needs(field = "factory_f3_hz", beside = "factory")
@Needs(field = "amplifier_before", beside = "factory")
public record ComparedPosition(
    @Schema(description = "What the place is called, once only") @NotNull @Size(min = 1, max = 80)
        String name,
    @Schema(description = "Where in the sound stage it plays") @NotNull Zone zone,
    @Schema(description = "What part of the range it plays; with zone it makes the group") @NotNull
        Band band,
    @Schema(description = "Where its mass goes") MountedAt at,
    Integer driverCount,
    @Schema(
            description =
                "What is in it, its voice coils together as they are wired; left out where there"
                    + " was nothing. xmax_mm and fs_hz are taken alike for both parts: geometric or"
                    + " by distortion, in free air or in the box")
        Driver factory,
    @Schema(description = "What shall be in it, likewise") @NotNull Driver replacement,
    @Schema(
            description =
                "Frequency where the response of the factory part in place is 3 dB down, Hz. Counts"
                    + " instead of fs_hz when both parts have it")
        @DecimalMin("1")
        @DecimalMax("20000")
        Double factoryF3Hz,
    @Schema(description = "The same of the replacement, Hz") @DecimalMin("1") @DecimalMax("20000")
        Double replacementF3Hz,
    @Schema(description = "What drives the factory part") ComparedAmplifier amplifierBefore,
    @Schema(
            description =
                "What shall drive the replacement; when not given, amplifier_before stays with the"
                    + " voltage it has")
        ComparedAmplifier amplifierAfter,
    @Schema(
            description =
                "Frequency at which the movement of the cone is held against its limit, Hz: the"
                    + " lowest to be played at full level, usually the high-pass. When not given, by"
                    + " band: subwoofer 40, woofer and full_range 80, midrange 400, tweeter 3000")
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

  /** What is in it, or null. */
  public ComparedPart before() {
    return factory == null ? null : new ComparedPart(factory, factoryF3Hz);
  }

  /** What shall be in it. */
  public ComparedPart after() {
    return new ComparedPart(replacement, replacementF3Hz);
  }

  /** A part of the sound stage. */
  public enum Zone implements Words {
    FRONT,
    CENTRE,
    REAR
  }

  /** A part of the range, with the frequency its travel is judged at; common practice, no source. */
  public enum Band implements Words {
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
  public enum MountedAt implements Words {
    CABIN,
    DOOR,
    BOOT
  }
}
