package org.footwell.electrical.impedance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.footwell.parts.CurveFrequencies;

/** A driver, what it is mounted in, and the frequencies of interest. */
public record ImpedanceCurveRequest(
    @Schema(description = "The driver") @NotNull ImpedanceDriver driver,
    @Schema(description = "The box it is in; without it the driver is in free air")
        ImpedanceBox box,
    @Schema(description = "Rated impedance to judge, ohm") Double ratedOhm,
    @Schema(description = "Range and points; without it twelfth octaves from 20 Hz to 20 kHz")
        CurveFrequencies frequencies) {

  public ImpedanceCurveRequest {
    frequencies = frequencies == null ? CurveFrequencies.standard() : frequencies;
  }
}
