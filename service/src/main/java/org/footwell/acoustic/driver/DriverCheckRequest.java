package org.footwell.acoustic.driver;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import org.footwell.acoustic.driver.sheet.DriverTolerance;
import org.footwell.calculation.Built;
import org.footwell.parts.Sensitivity;

/**
 * One record of a driver's data sheet, as far as it is known. Bounds are wide on purpose: a figure
 * in the wrong unit is a finding, not a refusal.
 */
@Built
public record DriverCheckRequest(
    @Schema(description = "What the record is called; handed through") @Size(min = 1, max = 80)
        String partId,
    @Schema(description = "Rated impedance, ohm") @NotNull @DecimalMin("0.5") @DecimalMax("600")
        Double ratedOhm,
    @Schema(description = "DC resistance of the voice coil, ohm")
        @DecimalMin("0.0001")
        @DecimalMax("100000")
        Double reOhm,
    @Schema(description = "Resonance in free air, Hz") @DecimalMin("0.001") @DecimalMax("100000")
        Double fsHz,
    @Schema(description = "Mechanical Q at resonance") @DecimalMin("0.0001") @DecimalMax("10000")
        Double qms,
    @Schema(description = "Electrical Q at resonance") @DecimalMin("0.0001") @DecimalMax("10000")
        Double qes,
    @Schema(description = "Total Q at resonance") @DecimalMin("0.0001") @DecimalMax("10000")
        Double qts,
    @Schema(description = "Volume of air as compliant as the suspension, litre")
        @DecimalMin("0.0000001")
        @DecimalMax("10000000")
        Double vasL,
    @Schema(description = "Effective cone area, cm²") @DecimalMin("0.00001") @DecimalMax("10000000")
        Double sdCm2,
    @Schema(
            description =
                "Nominal size, mm (a 10 inch driver has 250); stands in roughly for the missing"
                    + " sd_cm2 of a cone")
        @DecimalMin("0.0001")
        @DecimalMax("10000")
        Double nominalMm,
    @Schema(description = "Largest linear displacement, one way, peak, mm")
        @DecimalMin("0.000001")
        @DecimalMax("10000")
        Double xmaxMm,
    @Schema(description = "What xmax_mm rests on, when the data sheet says it") XmaxBasis xmaxBasis,
    @Schema(description = "Force factor, T·m") @DecimalMin("0.0001") @DecimalMax("100000")
        Double blTm,
    @Schema(description = "Moving mass with its air load, g")
        @DecimalMin("0.000001")
        @DecimalMax("10000000")
        Double mmsG,
    @Schema(description = "Compliance of the suspension, mm/N")
        @DecimalMin("0.0000001")
        @DecimalMax("1000000")
        Double cmsMmPerN,
    @Schema(description = "Mechanical resistance of the suspension, kg/s")
        @DecimalMin("0.0001")
        @DecimalMax("100000")
        Double rmsKgPerS,
    @Schema(description = "Inductance of the voice coil, mH")
        @DecimalMin("0.0000001")
        @DecimalMax("1000000")
        Double leMh,
    @Schema(description = "Stated sensitivity with its basis") Sensitivity sensitivity,
    @Schema(description = "Continuous power, W") @DecimalMin("0.001") @DecimalMax("100000")
        Double continuousW,
    @Schema(description = "Peak power, W") @DecimalMin("0.001") @DecimalMax("1000000") Double peakW,
    @Schema(description = "Outside diameter of the frame, mm")
        @DecimalMin("0.0001")
        @DecimalMax("10000")
        Double outsideMm,
    @Schema(description = "Diameter of the cut-out, mm") @DecimalMin("0.0001") @DecimalMax("10000")
        Double cutoutMm,
    @Schema(description = "Mounting depth, mm") @DecimalMin("0.0001") @DecimalMax("10000")
        Double depthMm,
    @Schema(description = "Mass of the whole driver, g")
        @DecimalMin("0.001")
        @DecimalMax("10000000")
        Double massG,
    @Schema(description = "Price in the caller's currency; handed through unused")
        @DecimalMin("0")
        @DecimalMax("10000000")
        BigDecimal price,
    @Schema(description = "Temperature of the air that vas and sensitivity refer to, °C")
        @DecimalMin("-50")
        @DecimalMax("100")
        Double temperatureC,
    @Schema(description = "How far figures may disagree") DriverTolerance tolerance,
    @Schema(
            description =
                "When adjusted figures and residuals are wanted; when_off saves time over a long"
                    + " catalogue")
        Reconcile reconcile) {

  public DriverCheckRequest {
    temperatureC = temperatureC == null ? Double.valueOf(20) : temperatureC;
    tolerance = tolerance == null ? DriverTolerance.STANDARD : tolerance;
    reconcile = reconcile == null ? Reconcile.ALWAYS : reconcile;
  }

  /** When an over-determined record is reconciled. */
  public enum Reconcile {
    /** Every record with more figures than it needs. */
    ALWAYS,
    /** Only a record in which something disagrees. */
    WHEN_OFF
  }

  /** What the largest linear displacement rests on. */
  public enum XmaxBasis {
    /** From the heights of coil and gap. */
    GEOMETRIC,
    /** From a limit of distortion. */
    DISTORTION
  }
}
