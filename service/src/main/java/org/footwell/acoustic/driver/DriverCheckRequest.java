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
 * One record of a driver's data sheet, as far as it is known: flat, since a catalogue has one in each
 * row. Bounds are wide on purpose, unlike those of the driver that other requests share: a figure in
 * the wrong unit is a finding here, not a refusal.
 */
@Built
public record DriverCheckRequest(
    @Schema(description = "What the record is called; handed through") @Size(min = 1, max = 80)
        String partId,
    @NotNull @DecimalMin("0.5") @DecimalMax("600") Double ratedOhm,
    @DecimalMin("0.0001") @DecimalMax("100000") Double reOhm,
    @DecimalMin("0.001") @DecimalMax("100000") Double fsHz,
    @DecimalMin("0.0001") @DecimalMax("10000") Double qms,
    @DecimalMin("0.0001") @DecimalMax("10000") Double qes,
    @DecimalMin("0.0001") @DecimalMax("10000") Double qts,
    @DecimalMin("0.0000001") @DecimalMax("10000000") Double vasL,
    @DecimalMin("0.00001") @DecimalMax("10000000") Double sdCm2,
    @Schema(
            description =
                "Nominal size, mm (a 10 inch driver has 250); stands in roughly for the missing"
                    + " sd_cm2 of a cone")
        @DecimalMin("0.0001")
        @DecimalMax("10000")
        Double nominalMm,
    @DecimalMin("0.000001") @DecimalMax("10000") Double xmaxMm,
    @Schema(description = "What xmax_mm rests on, when the data sheet says it") XmaxBasis xmaxBasis,
    @DecimalMin("0.0001") @DecimalMax("100000") Double blTm,
    @DecimalMin("0.000001") @DecimalMax("10000000") Double mmsG,
    @DecimalMin("0.0000001") @DecimalMax("1000000") Double cmsMmPerN,
    @DecimalMin("0.0001") @DecimalMax("100000") Double rmsKgPerS,
    @Schema(description = "Inductance of the voice coil, mH")
        @DecimalMin("0.0000001")
        @DecimalMax("1000000")
        Double leMh,
    @Schema(description = "Stated sensitivity with its basis") Sensitivity sensitivity,
    @DecimalMin("0.001") @DecimalMax("100000") Double continuousPowerW,
    @DecimalMin("0.001") @DecimalMax("1000000") Double peakPowerW,
    @Schema(description = "Outside diameter of the frame, mm")
        @DecimalMin("0.0001")
        @DecimalMax("10000")
        Double outsideMm,
    @Schema(description = "Diameter of the cut-out, mm") @DecimalMin("0.0001") @DecimalMax("10000")
        Double cutoutMm,
    @Schema(description = "Mounting depth, mm") @DecimalMin("0.0001") @DecimalMax("10000")
        Double mountingDepthMm,
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
