package org.footwell.parts;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.footwell.calculation.rule.Ascending;

/** One amplifier channel by what its output stage has to work with. */
@Ascending({"drop_v", "rail_v"})
public record Rails(
    @Schema(
            description =
                "Rail voltage, V: to ground per half for split rails; for a single-supply bridge"
                    + " the supply of the bridge itself")
        @NotNull
        @DecimalMin("1")
        @DecimalMax("400")
        Double railV,
    @Schema(description = "Supply voltage of the vehicle at which rail_v is stated, V") @NotNull
        Double supplyV,
    @Schema(description = "How the output stage is built") Kind kind,
    @NotNull Double dropV,
    @Schema(description = "Peak current the output stage lets through, A; absent: no limit")
        @DecimalMin("0.1")
        @DecimalMax("1000")
        Double currentLimitA,
    @Schema(
            description =
                "Droop of supply and output stage per ampere of output current, ohm, per channel"
                    + " with all channels driven; not the output impedance of a damping factor")
        @DecimalMin("0")
        @DecimalMax("20")
        Double sagOhm) {

  public Rails {
    kind = kind == null ? Kind.SPLIT_RAILS : kind;
    sagOhm = sagOhm == null ? Double.valueOf(0) : sagOhm;
  }

  /** How an output stage stands between its rails. */
  public enum Kind {
    /** A positive and a negative rail; the load hangs between output and ground. */
    SPLIT_RAILS,
    /** One supply; the load hangs between two halves, neither end on ground. */
    SINGLE_SUPPLY_BRIDGE
  }
}
