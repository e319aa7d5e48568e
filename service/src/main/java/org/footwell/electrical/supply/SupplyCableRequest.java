package org.footwell.electrical.supply;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.AtMostOne;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needed;
import org.footwell.calculation.rule.Unique;
import org.footwell.parts.Cable;
import org.footwell.parts.PossibleCable;
import org.footwell.parts.ReturnPath;

/** A supply cable to be sized or checked, and what loads it. */
@Built
@ExactlyOne({"current_a", "constant_power", "branches"})
@AtMostOne({"branches", "amplifier_fuse_a"})
@AtMostOne({"branches", "full_sine_a"})
@Needed({
  "cable.one_way_m",
  "cable.material",
  "cable.insulation_temperature_c",
  "cable.engine_space"
})
@Unique("branches.*.name")
@Keeps(BodyInLoop.class)
@Keeps(
    value = PossibleCable.class,
    of = {"cable", "branches.*.cable"})
@Keeps(
    value = InstalledSize.class,
    of = {"cable", "branches.*.cable"})
@Keeps(SineOfBass.class)
@Keeps(DropWithinSupply.class)
@Keeps(PowerPasses.class)
public record SupplyCableRequest(
    @Schema(
            description =
                "Voltage at the start of the cable, at the battery, while the load draws its"
                    + " current, V")
        @NotNull
        Double supplyV,
    @Schema(description = "Current that flows for minutes, A: drop, cable and fuse are for this")
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
                "The main cable: the one to be checked with area_mm2, else the smallest standard"
                    + " size is looked for. A gauge is given by its area: No. 4 is 21.15 mm². Its"
                    + " conductor is taken at 50 °C unless it says otherwise")
        @NotNull
        Cable cable,
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
    Double amplifierFuseA,
    Double fullSineA,
    Boolean sustainedBass,
    @Schema(
            description =
                "Cables after a distribution block at the end of the main cable, each with a fuse"
                    + " of its own; their currents together load the main cable")
        @Size(min = 1, max = 16)
        List<@NotNull Branch> branches) {

  public SupplyCableRequest {
    contactsOhm = contactsOhm == null ? Double.valueOf(0) : contactsOhm;
    sustainedBass = sustainedBass == null ? Boolean.FALSE : sustainedBass;
    fuseDistanceLimitM = fuseDistanceLimitM == null ? Double.valueOf(0.45) : fuseDistanceLimitM;
    fuseLoading = fuseLoading == null ? Double.valueOf(0.8) : fuseLoading;
    fuseHeatFactor = fuseHeatFactor == null ? Double.valueOf(1) : fuseHeatFactor;
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

  /** A cable after the distribution. */
  @Built
  @ExactlyOne({"current_a", "constant_power"})
  @Needed("cable.one_way_m")
  public record Branch(
      @Schema(description = "What it feeds") @NotNull @Size(min = 1, max = 40) String name,
      @Schema(description = "Current that flows for minutes, A")
          @DecimalMin("0.1")
          @DecimalMax("2000")
          Double currentA,
      @Schema(description = "Instead of a current: a load of constant power")
          ConstantPower constantPower,
      @Schema(
              description =
                  "The cable from the distribution to the load; what it does not say of its"
                      + " conductor and insulation is as in the main cable, and it lies in no engine"
                      + " space unless it says so")
          @NotNull
          Cable cable,
      @Schema(description = "Drop permitted over this branch alone, V")
          @NotNull
          @DecimalMin("0")
          @DecimalMax("60")
          Double permittedDropV,
      Double amplifierFuseA,
      Double fullSineA,
      Boolean sustainedBass) {

    public Branch {
      sustainedBass = sustainedBass == null ? Boolean.FALSE : sustainedBass;
    }
  }
}
