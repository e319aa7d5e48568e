package org.footwell.electrical.impedance;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;

/** The box behind a driver: closed, or vented when it has a tuning. */
public record ImpedanceBox(
    @Schema(description = "Net volume of the box, litre") @NotNull Double volumeL,
    @Schema(description = "Tuning of a vented box, Hz; without it the box is closed") Double fbHz,
    @Schema(
            description =
                "Q of the leakage losses of a vented box at its tuning; of no effect on a closed"
                    + " one")
        @DecimalMin("0.5")
        @DecimalMax("1000")
        Double ql) {

  public ImpedanceBox {
    ql = ql == null ? Double.valueOf(7) : ql;
  }
}
