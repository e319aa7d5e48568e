package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import org.footwell.calculation.Built;

/** One voice coil of a driver, or several alike. */
@Built
public record VoiceCoil(
    @Schema(
            description =
                "Name in a network: a letter, then letters, digits and _ - . without spaces;"
                    + " several alike get _1, _2 ... behind it")
        @Size(min = 1, max = 40)
        @Pattern(regexp = NAME)
        String name,
    @Schema(description = "Rated impedance of this coil alone, ohm") Double ratedOhm,
    @Schema(description = "DC resistance of this coil alone, ohm") Double reOhm,
    @Schema(description = "How many coils these are; a driver with two voice coils is two")
        Integer coilCount,
    @Schema(
            description =
                "Name of the driver the coil belongs to; the coils of one driver share it. A coil"
                    + " without is a driver of its own")
        @Size(min = 1, max = 40)
        @Pattern(regexp = NAME)
        String driver,
    @Schema(
            description =
                "Band in which a passive crossover drives the coil, such as low or high: coils of"
                    + " different bands do not load each other. Either every coil of the network"
                    + " has a band or none")
        @Size(min = 1, max = 40)
        @Pattern(regexp = BAND)
        String band) {

  /** How a coil or a driver is named: as a network can write it. */
  public static final String NAME = "[A-Za-z][A-Za-z0-9_.-]*";

  /** A band is in lower case only, so that no two names of one band differ by a capital. */
  private static final String BAND = "[a-z][a-z0-9_.-]*";

  public VoiceCoil {
    coilCount = coilCount == null ? Integer.valueOf(1) : coilCount;
  }
}
