package org.footwell.acoustic.driver.sheet;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import org.footwell.calculation.Built;

/** How far figures may disagree. What printing rounds away is allowed on top. */
@Built
public record DriverTolerance(
    @Schema(description = "qts against qms and qes, percent") @DecimalMin("0.1") @DecimalMax("50")
        Double qtsPercent,
    @Schema(description = "fs against mms and cms, percent") @DecimalMin("0.1") @DecimalMax("50")
        Double fsPercent,
    @Schema(
            description =
                "vas against cms and sd, percent; 1 percent of it is the air that data sheets reckon"
                    + " with")
        @DecimalMin("0.1")
        @DecimalMax("50")
        Double vasPercent,
    @Schema(description = "qes against re, bl, mms and fs, percent")
        @DecimalMin("0.1")
        @DecimalMax("50")
        Double qesPercent,
    @Schema(description = "qms against rms, mms and fs, percent")
        @DecimalMin("0.1")
        @DecimalMax("50")
        Double qmsPercent,
    @Schema(description = "Sensitivity against reference efficiency, dB")
        @DecimalMin("0.1")
        @DecimalMax("20")
        Double sensitivityDb,
    @Schema(description = "More than this many times a tolerance is gross")
        @DecimalMin("1")
        @DecimalMax("100")
        Double grossFactor,
    @Schema(
            description =
                "Uncertainty of a single figure besides its rounding, percent: the weight it has"
                    + " when an over-determined record is reconciled")
        @DecimalMin("0.01")
        @DecimalMax("50")
        Double figurePercent,
    @Schema(
            description =
                "Whether figures are rounded as data sheets print them: fs to 1 Hz, Q, cms and rms"
                    + " to 0.01, re and bl to 0.1, the others to 3 digits; a figure with more"
                    + " decimals is taken as printed")
        Boolean printedRounding,
    @Schema(description = "Lowest usual re over rated impedance, as a ratio")
        @DecimalMin("0.1")
        @DecimalMax("1")
        Double reRatioLow,
    @Schema(description = "Highest usual re over rated impedance, as a ratio")
        @DecimalMin("0.5")
        @DecimalMax("2")
        Double reRatioHigh,
    @Schema(
            description =
                "Peak above continuous power that passes without a note, dB; 0.05 dB are added, so"
                    + " that four times the power still counts as 6 dB")
        @DecimalMin("0")
        @DecimalMax("20")
        Double peakDb) {

  public static final DriverTolerance STANDARD = DriverToleranceBuilder.builder().build();

  public DriverTolerance {
    qtsPercent = qtsPercent == null ? Double.valueOf(3) : qtsPercent;
    fsPercent = fsPercent == null ? Double.valueOf(5) : fsPercent;
    vasPercent = vasPercent == null ? Double.valueOf(6) : vasPercent;
    qesPercent = qesPercent == null ? Double.valueOf(6) : qesPercent;
    qmsPercent = qmsPercent == null ? Double.valueOf(8) : qmsPercent;
    sensitivityDb = sensitivityDb == null ? Double.valueOf(2) : sensitivityDb;
    grossFactor = grossFactor == null ? Double.valueOf(3) : grossFactor;
    figurePercent = figurePercent == null ? Double.valueOf(2) : figurePercent;
    printedRounding = printedRounding == null ? Boolean.TRUE : printedRounding;
    reRatioLow = reRatioLow == null ? Double.valueOf(0.7) : reRatioLow;
    reRatioHigh = reRatioHigh == null ? Double.valueOf(1) : reRatioHigh;
    peakDb = peakDb == null ? Double.valueOf(6) : peakDb;
  }
}
