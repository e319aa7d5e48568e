package org.footwell.electrical.impedance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.Ascending;

/** Measured impedance of a driver, in free air and perhaps changed in a known way. */
@Ascending("readings.*.frequency_hz")
@Ascending("added_mass.readings.*.frequency_hz")
@Ascending("known_box.readings.*.frequency_hz")
@Keeps(
    value = PeakInTable.class,
    of = {"readings", "added_mass.readings", "known_box.readings"})
public record ImpedanceFitRequest(
    @Schema(
            description =
                "Readings in free air, from below the resonance to well above"
                    + " it; as far as 10 kHz or more for the inductance")
        @NotNull
        @Size(min = 8, max = 2000)
        List<@NotNull Reading> readings,
    @Schema(
            description =
                "DC resistance as a meter shows it, ohm; without it, it is found from the readings")
        Double reOhm,
    @Schema(
            description =
                "Whether the inductance is lossy, with an exponent to be found; otherwise ideal")
        Boolean lossyInductance,
    @Schema(
            description =
                "Effective area of the cone, cm², to tell vas from the moving mass and the other"
                    + " way round")
        Double sdCm2,
    @Schema(description = "A second table, with a mass fixed to the cone") AddedMass addedMass,
    @Schema(description = "A second table, with the driver in a closed box") KnownBox knownBox) {

  public ImpedanceFitRequest {
    lossyInductance = lossyInductance == null ? Boolean.TRUE : lossyInductance;
  }

  /** One measured frequency. */
  public record Reading(
      @NotNull @DecimalMin("1") @DecimalMax("100000") Double frequencyHz,
      @Schema(description = "Modulus of the impedance, ohm")
          @NotNull
          @DecimalMin("0.01")
          @DecimalMax("10000")
          Double modulusOhm,
      @Schema(description = "Phase of the impedance, degrees, where it was measured")
          @DecimalMin("-95")
          @DecimalMax("95")
          Double phaseDeg) {}

  /** The driver in free air with a mass on its cone. */
  public record AddedMass(
      @Schema(description = "The mass, g") @NotNull @DecimalMin("0.001") @DecimalMax("2000")
          Double massG,
      @Schema(description = "Readings with the mass, around the resonance")
          @NotNull
          @Size(min = 6, max = 2000)
          List<@NotNull Reading> readings) {}

  /** The driver in a closed box of known volume. */
  public record KnownBox(
      @Schema(
              description =
                  "Volume of air behind the driver, litre: net, the driver's own volume taken off")
          @NotNull
          Double volumeL,
      @Schema(description = "Readings in the box, around the resonance")
          @NotNull
          @Size(min = 6, max = 2000)
          List<@NotNull Reading> readings) {}
}
