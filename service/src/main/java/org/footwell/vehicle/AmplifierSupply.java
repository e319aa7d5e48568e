package org.footwell.vehicle;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.parts.ClassD;
import org.footwell.parts.ConductorMaterial;
import org.footwell.parts.OutputClass;
import org.footwell.parts.ReturnPath;

/** How an amplifier is supplied: what it draws, and the cable that feeds it. */
public final class AmplifierSupply {

  private AmplifierSupply() {}

  /** How an amplifier turns supply into output; with it, its current and heat are reviewed. */
  public record Draw(
      @Schema(description = "How its output stages work") @NotNull OutputClass outputClass,
      @NotNull Double converterEfficiency,
      @Schema(description = "Current of each half without signal, A; needed for class AB")
          @DecimalMin("0.0001")
          @DecimalMax("20")
          Double quiescentCurrentA,
      @Schema(description = "Losses of one output; needed for class D") ClassD classD) {}

  /** The supply cable of an amplifier; with it and {@code draw}, cable and fuse are reviewed. */
  public record Feed(
      @Schema(description = "Voltage at the battery while the amplifier plays, V") @NotNull
          Double supplyV,
      @Schema(description = "Length from the battery, one way, m") @NotNull Double oneWayM,
      @Schema(description = "What brings the current back") @NotNull ReturnPath returnPath,
      @Schema(
              description =
                  "Resistance of the body between the two earth points, ohm, when the body"
                      + " returns; without it the drop counts the cable alone")
          Double bodyOhm,
      @Schema(description = "Drop permitted over the whole loop, V")
          @NotNull
          @DecimalMin("0")
          @DecimalMax("60")
          Double permittedDropV,
      @Schema(description = "What the conductors are made of") @NotNull ConductorMaterial material,
      @Schema(description = "Temperature the insulation bears for long, °C") @NotNull
          Double insulationTemperatureC,
      @Schema(description = "Whether any part of it lies in an engine space") @NotNull
          Boolean engineSpace,
      @Schema(description = "Cross-section to be checked, mm²; without it the smallest is found")
          @DecimalMin("1.3")
          @DecimalMax("240")
          Double areaMm2,
      @Schema(description = "Distance of the main fuse from the battery, m") Double fuseDistanceM,
      @Schema(
              description =
                  "Whether bass at full level is to last for seconds: the fuse is then rated for a"
                      + " full sine on all channels")
          Boolean sustainedBass,
      @Schema(description = "Sum of the fuses in or at the amplifier itself, A")
          @DecimalMin("0.5")
          @DecimalMax("1000")
          Double amplifierFuseA) {

    public Feed {
      sustainedBass = sustainedBass == null ? Boolean.FALSE : sustainedBass;
    }
  }
}
