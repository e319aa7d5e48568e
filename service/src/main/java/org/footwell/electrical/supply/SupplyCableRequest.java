package org.footwell.electrical.supply;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Words;

/** A supply cable to be sized or checked. One of currentA, constantPower and branches loads it. */
@Built
public record SupplyCableRequest(
    @Schema(
            description =
                "Voltage at the start of the cable, at the battery, while the load draws its"
                    + " current, V")
        @NotNull
        Double supplyV,
    @Schema(
            description =
                "Current that flows for minutes, A: drop, cable and fuse are for this. Exactly one"
                    + " of current_a, constant_power and branches")
        @DecimalMin("0.1")
        @DecimalMax("2000")
        Double currentA,
    @Schema(
            description =
                "Instead of a current: a load that draws the same power whatever its voltage, as"
                    + " amplifiers with a regulated supply do")
        ConstantPower constantPower,
    @Schema(
            description =
                "Length of the cable one way, m; the loop is twice that unless the body returns")
        @NotNull
        Double oneWayM,
    @Schema(description = "What brings the current back to the battery") @NotNull
        ReturnPath returnPath,
    Double bodyOhm,
    @Schema(
            description =
                "Resistance of all joints, fuses and holders of the main cable's loop together, ohm")
        @DecimalMin("0")
        @DecimalMax("1")
        Double contactsOhm,
    @Schema(
            description =
                "Drop permitted over the main cable's whole loop, V, above 0 and below the supply")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("60")
        Double permittedDropV,
    @Schema(description = "What the conductors are made of, branches included") @NotNull
        Material material,
    @Schema(
            description =
                "Conductivity relative to annealed copper. When not given 1 for copper and 0.629"
                    + " for copper-clad aluminium: a tenth of copper by volume, the lowest that"
                    + " ASTM B566 allows")
        @DecimalMin("0.3")
        @DecimalMax("1")
        Double conductivity,
    @Schema(description = "Temperature of the conductor, °C, for its resistance")
        @DecimalMin("-40")
        @DecimalMax("150")
        Double conductorTemperatureC,
    @NotNull Double insulationTemperatureC,
    @Schema(
            description =
                "Whether any part of the main cable lies in an engine space, where it is 50 °C"
                    + " around it instead of 30 °C")
        @NotNull
        Boolean engineSpace,
    @Schema(
            description =
                "Cross-section of a main cable to be checked, mm². Without it the smallest standard"
                    + " size is looked for. A gauge is given by its area: No. 4 is 21.15 mm²")
        @DecimalMin("1.3")
        @DecimalMax("240")
        Double areaMm2,
    Double fuseDistanceM,
    @Schema(
            description =
                "Largest distance allowed between a source and the fuse behind it, m (the default"
                    + " is about the 18 inches of US NEC 552.10(E)(4) for park trailers; the maker's or"
                    + " a local rule may ask for less)")
        @DecimalMin("0.02")
        @DecimalMax("2")
        Double fuseDistanceLimitM,
    @Schema(description = "Share of its rating a fuse is loaded with for long (common practice)")
        @DecimalMin("0.3")
        @DecimalMax("1")
        Double fuseLoading,
    @Schema(
            description =
                "What a fuse carries where it sits, relative to what it carries at 23 °C, from its"
                    + " maker's curve; below 1 in a hot place")
        @DecimalMin("0.3")
        @DecimalMax("1")
        Double fuseHeatFactor,
    @Schema(
            description =
                "What is known of the amplifier at its end, for its fuse; with branches, of that of"
                    + " each branch")
        FedAmplifier amplifier,
    @Schema(
            description =
                "Cables after a distribution block at the end of the main cable, each with a fuse"
                    + " of its own; their currents together load the main cable")
        @Size(min = 1, max = 16)
        List<@NotNull Branch> branches) {

  public SupplyCableRequest {
    contactsOhm = contactsOhm == null ? Double.valueOf(0) : contactsOhm;
    if (conductivity == null && material != null) {
      conductivity = material == Material.COPPER ? Double.valueOf(1) : Double.valueOf(0.629);
    }
    conductorTemperatureC =
        conductorTemperatureC == null ? Double.valueOf(50) : conductorTemperatureC;
    fuseDistanceLimitM = fuseDistanceLimitM == null ? Double.valueOf(0.45) : fuseDistanceLimitM;
    fuseLoading = fuseLoading == null ? Double.valueOf(0.8) : fuseLoading;
    fuseHeatFactor = fuseHeatFactor == null ? Double.valueOf(1) : fuseHeatFactor;
  }

  /** What brings the current back. */
  public enum ReturnPath {
    /** A second cable of the same kind and length. */
    CABLE,
    /** The body of the vehicle. */
    BODY
  }

  /** What a conductor is made of. */
  public enum Material implements Words {
    /** Plain copper. */
    COPPER,
    /** Aluminium strands with a skin of copper. */
    COPPER_CLAD_ALUMINIUM
  }

  /** A load of constant power. */
  public record ConstantPower(
      @Schema(description = "Average power the amplifier puts out, W")
          @NotNull
          @DecimalMin("0.1")
          @DecimalMax("50000")
          Double outputW,
      @Schema(description = "Output over input power at that output; 1 if output_w is the input")
          @NotNull
          @DecimalMin("0.05")
          @DecimalMax("1")
          Double efficiency) {}

  /** An amplifier as the fuse of its cable meets it. */
  public record FedAmplifier(
      @Schema(
              description =
                  "Current with a full sine on all channels at once, A; needed where bass is"
                      + " sustained")
          @DecimalMin("0.1")
          @DecimalMax("5000")
          Double fullSineA,
      @Schema(
              description =
                  "Whether such bass is to last for seconds, as in test tones and bass-heavy music"
                      + " played to the limit: the fuse is then rated for it")
          Boolean sustainedBass,
      @Schema(description = "Sum of the fuses in or at the amplifier itself, A") Double fuseA) {

    public FedAmplifier {
      sustainedBass = sustainedBass == null ? Boolean.FALSE : sustainedBass;
    }
  }

  /** A cable after the distribution. Exactly one of currentA and constantPower. */
  @Built
  public record Branch(
      @Schema(description = "What it feeds") @NotNull @Size(min = 1, max = 40) String name,
      @Schema(
              description =
                  "Current that flows for minutes, A. Exactly one of current_a and constant_power")
          @DecimalMin("0.1")
          @DecimalMax("2000")
          Double currentA,
      @Schema(description = "Instead of a current: a load of constant power")
          ConstantPower constantPower,
      @Schema(description = "Length from the distribution to the load one way, m") @NotNull
          Double oneWayM,
      @Schema(description = "Drop permitted over this branch alone, V")
          @NotNull
          @DecimalMin("0")
          @DecimalMax("60")
          Double permittedDropV,
      @Schema(
              description =
                  "Temperature the insulation bears for long, °C; when not given that of the main"
                      + " cable")
          Double insulationTemperatureC,
      @Schema(description = "Whether any part of the branch lies in an engine space")
          Boolean engineSpace,
      @Schema(description = "What is known of the amplifier at its end, for its fuse")
          FedAmplifier amplifier) {

    public Branch {
      engineSpace = engineSpace == null ? Boolean.FALSE : engineSpace;
    }
  }
}
