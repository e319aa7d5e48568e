package org.footwell.fitting.ring;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.Built;
import org.footwell.calculation.Keeps;

/**
 * An opening, a driver for it and the ring between them. All are seen from the front, centred on
 * each other: x to the right, y up, angles from x counter-clockwise.
 */
@Keeps(value = MaterialKnown.class, of = "ring")
@Keeps(value = OpeningWithinLimit.class, of = "opening")
@Keeps(FactoryHolesInPanel.class)
@Keeps(value = DriverWithinCutOut.class, of = "driver")
@Keeps(DriverHolesOnFrame.class)
@Keeps(value = OvalUpright.class, of = "driver")
@Keeps(value = PilotBelowScrew.class, of = "ring")
@Keeps(OuterAroundInner.class)
public record AdapterRingRequest(
    @Schema(description = "The opening in the vehicle, as its maker left it") @NotNull
        Opening opening,
    @Schema(description = "The driver that shall go in") @NotNull FittedDriver driver,
    @Schema(description = "The ring between them") @NotNull RingMaking ring) {

  /** Where the ring is screwed on. */
  @Built
  public record Opening(
      @Schema(description = "Cut-out of the panel") @NotNull Outline cutOut,
      @Schema(description = "Factory holes, which hold the ring; nothing is drilled in the vehicle")
          @NotNull
          MountingHoles holes,
      @Schema(
              description =
                  "Free depth behind the face the ring sits on, mm: to the window wound down, its"
                      + " guide or whatever comes first")
          @NotNull
          @DecimalMin("5")
          @DecimalMax("600")
          Double depthMm,
      @Schema(description = "Air that must stay behind the magnet, mm")
          @DecimalMin("0")
          @DecimalMax("50")
          Double depthClearanceMm,
      @Schema(
              description =
                  "Distance from the face the ring sits on to the inside of grille or trim in"
                      + " front, mm")
          @DecimalMin("1")
          @DecimalMax("300")
          Double grilleMm,
      @Schema(description = "Air that must stay before the driver, mm")
          @DecimalMin("0")
          @DecimalMax("50")
          Double grilleClearanceMm,
      @Schema(description = "Largest outline there is room for on the panel") Outline limit) {

    public Opening {
      depthClearanceMm = depthClearanceMm == null ? Double.valueOf(5) : depthClearanceMm;
      grilleClearanceMm = grilleClearanceMm == null ? Double.valueOf(3) : grilleClearanceMm;
    }
  }

  /** What of a driver decides whether it fits. */
  @Built
  public record FittedDriver(
      @Schema(description = "Outer edge of the frame") @NotNull Outline frame,
      @Schema(description = "Cut-out the driver's maker asks for") @NotNull Outline cutOut,
      @Schema(description = "Screw holes of the frame") @NotNull MountingHoles holes,
      @Schema(
              description =
                  "How far the driver is turned counter-clockwise, degrees. When not given: 0 if"
                      + " its screws then stay clear of the factory holes, otherwise, for a round"
                      + " driver, where they are farthest apart. An oval driver stands as it is given or"
                      + " on its head")
          @DecimalMin("-360")
          @DecimalMax("360")
          Double turnedDeg,
      @Schema(description = "From the mounting face to the rearmost point, mm")
          @NotNull
          @DecimalMin("5")
          @DecimalMax("600")
          Double mountingDepthMm,
      @Schema(description = "Diameter of the magnet or its cover, mm")
          @NotNull
          @DecimalMin("5")
          @DecimalMax("500")
          Double magnetDiameterMm,
      @Schema(
              description =
                  "Diameter of the basket where it passes the panel, that is one ring thickness"
                      + " behind the mounting face, mm")
          @DecimalMin("5")
          @DecimalMax("600")
          Double basketDiameterMm,
      @Schema(
              description =
                  "What stands out farthest before the mounting face at rest, mm: frame, surround"
                      + " or tweeter")
          @NotNull
          @DecimalMin("0")
          @DecimalMax("200")
          Double frontHeightMm,
      @Schema(description = "One-way peak excursion that adds to the height in front, mm")
          @DecimalMin("0")
          @DecimalMax("100")
          Double excursionMm) {}

  /** How the ring is made. */
  @Built
  public record RingMaking(
      @Schema(description = "What it is made of") @NotNull RingMaterial material,
      @Schema(
              description =
                  "Thickness, mm. When not given: what depth and screws ask for, as far as the"
                      + " grille allows")
          @DecimalMin("1")
          @DecimalMax("200")
          Double thicknessMm,
      @Schema(
              description =
                  "Outer edge. When not given: the smallest that carries the frame, covers the"
                      + " opening and leaves every hole its wall")
          Outline outer,
      @Schema(description = "Air around the driver's cut-out, mm on each side")
          @DecimalMin("0")
          @DecimalMax("20")
          Double basketClearanceMm,
      @Schema(description = "Holes for the factory screws, mm; 5.5 passes an M5 screw")
          @DecimalMin("1")
          @DecimalMax("20")
          Double factoryHoleMm,
      @Schema(description = "Diameter of the driver's screws, mm")
          @DecimalMin("2")
          @DecimalMax("10")
          Double screwMm,
      @Schema(
              description =
                  "Pilot holes for them, mm. When not given: 0.8 of the screw, in boards 0.7")
          @DecimalMin("0.5")
          @DecimalMax("10")
          Double pilotMm,
      @Schema(description = "Least wall anywhere, mm") @DecimalMin("0.4") @DecimalMax("30")
          Double wallMinimumMm,
      @Schema(description = "Density, kg/m³. When not given: that of the material")
          @DecimalMin("50")
          @DecimalMax("20000")
          Double densityKgPerM3,
      @Schema(
              description =
                  "Temperature at which it softens, degrees Celsius. When not given: that of the"
                      + " material; boards and metal do not")
          @DecimalMin("30")
          @DecimalMax("2000")
          Double softeningC,
      @Schema(description = "Share of the volume that is material; below 1 for a sparse print")
          @DecimalMin("0.05")
          @DecimalMax("1")
          Double fill,
      @Schema(description = "Hottest the place gets, degrees Celsius: a door in the sun in summer")
          @DecimalMin("20")
          @DecimalMax("150")
          Double placeTemperatureC,
      @Schema(description = "How far straight edges may leave a curve in solid and drawing, mm")
          @DecimalMin("0.01")
          @DecimalMax("1")
          Double arcToleranceMm) {

    public RingMaking {
      basketClearanceMm = basketClearanceMm == null ? Double.valueOf(0.5) : basketClearanceMm;
      factoryHoleMm = factoryHoleMm == null ? Double.valueOf(5.5) : factoryHoleMm;
      screwMm = screwMm == null ? Double.valueOf(4) : screwMm;
      wallMinimumMm = wallMinimumMm == null ? Double.valueOf(3) : wallMinimumMm;
      fill = fill == null ? Double.valueOf(1) : fill;
      placeTemperatureC = placeTemperatureC == null ? Double.valueOf(85) : placeTemperatureC;
      arcToleranceMm = arcToleranceMm == null ? Double.valueOf(0.02) : arcToleranceMm;
      if (material != null) {
        pilotMm = pilotMm == null ? Double.valueOf(material.kind.pilotShare * screwMm) : pilotMm;
        densityKgPerM3 = densityKgPerM3 == null ? material.densityKgPerM3 : densityKgPerM3;
        softeningC = softeningC == null ? material.softeningC : softeningC;
      }
    }
  }
}
