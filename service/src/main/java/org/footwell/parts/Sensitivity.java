package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.physics.SensitivityBases;

/** Sensitivity of a driver at 1 m in half space, with the drive it was measured at. */
public record Sensitivity(
    @Schema(description = "Level at 1 m in half space, dB SPL")
        @NotNull
        @DecimalMin("40")
        @DecimalMax("130")
        Double levelDbSpl,
    @Schema(description = "What drove it: 1 W into the rated impedance, or 2.83 V") @NotNull
        Basis basis) {

  /**
   * Level for one watt, dB SPL.
   *
   * @param differenceDb between the two bases, of {@link SensitivityBases#BASIS_DIFFERENCE}
   */
  public double oneWattDbSpl(double differenceDb) {
    return basis == Basis.ONE_WATT ? levelDbSpl : levelDbSpl - differenceDb;
  }

  /** Level at 2.83 V, dB SPL, from the same difference. */
  public double voltageDbSpl(double differenceDb) {
    return basis == Basis.ONE_WATT ? levelDbSpl + differenceDb : levelDbSpl;
  }

  /** The drive a sensitivity is stated for. */
  public enum Basis {
    /** One watt into the rated impedance. */
    ONE_WATT,
    /** 2.83 V RMS, whatever the impedance. */
    TWO_POINT_EIGHT_THREE_VOLT
  }
}
