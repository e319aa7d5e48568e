package org.footwell.acoustic.driver;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.media.Schema;
import org.footwell.acoustic.driver.sheet.Agreement;
import org.footwell.acoustic.driver.sheet.Figure;
import org.footwell.acoustic.driver.sheet.Identity;
import org.footwell.acoustic.driver.sheet.Reconciliation;
import org.footwell.acoustic.driver.sheet.Sheet;
import org.footwell.calculation.Built;

/** A driver's record, completed and checked. What does not follow from the figures is absent. */
@JsonInclude(JsonInclude.Include.NON_NULL)
@Built
public record DriverCheckResult(
    @Schema(description = "The part_id of the request") String part,
    @Schema(description = "The figures, given or filled in") Completed completed,
    @Schema(
            description =
                "How each filled-in figure was found, such as: qes from qts qms; absent when none"
                    + " was")
        String paths,
    @Schema(description = "Reference efficiency in half space for 1 W into re, as a ratio")
        Double referenceEfficiency,
    @Schema(description = "Level at 1 m that the figures give for 1 W into re, dB SPL")
        Double referenceLevelDbSpl,
    @Schema(
            description =
                "Level at 1 m that the figures give for 1 W into the rated impedance, dB SPL")
        Double oneWattLevelDbSpl,
    @Schema(description = "Level at 1 m that the figures give for 2.83 V, dB SPL")
        Double twoPointEightThreeVoltLevelDbSpl,
    @Schema(description = "Diameter of a circle of the cone area, mm") Double effectiveDiameterMm,
    @Schema(description = "Cone area times largest linear displacement, one way, cm³")
        Double displacementCm3,
    @Schema(description = "What the displacement rests on: geometric, distortion or not_stated")
        String displacementBasis,
    @Schema(description = "fs over qes (efficiency bandwidth product, a rule of the trade), Hz")
        Double efficiencyBandwidthHz,
    @Schema(description = "re over rated impedance, as a ratio") Double reRatio,
    @Schema(description = "Peak above continuous power, dB") Double peakOverContinuousDb,
    @Schema(description = "Density of air reckoned with, kg/m³") double airDensityKgPerM3,
    @Schema(description = "Speed of sound reckoned with, m/s") double speedOfSoundMPerS,
    @Schema(description = "How far given figures lie from what others give")
        Discrepancy discrepancy,
    @Schema(description = "Figures that could not be held against others") String unchecked,
    @Schema(
            description =
                "How many more figures are given than the record needs; absent where it was not"
                    + " reconciled")
        Integer redundancyCount,
    @Schema(description = "The nearest figures that agree, for those that others confirm")
        Adjusted adjusted,
    @Schema(description = "What was given above the adjusted figures") Residual residual,
    @Schema(
            description =
                "The figure farthest from its adjusted value, counted in its own standard"
                    + " deviations; several where they cannot be told apart")
        String farthest,
    @Schema(description = "How many standard deviations that is") Double farthestDeviations,
    @Schema(
            description =
                "The single figure without which the rest agrees, when one stands out; qes where"
                    + " qes and qts are wrong together or qes and qms are exchanged; absent when"
                    + " nothing disagrees")
        String oddOneOut,
    @Schema(description = "What the rest gives for it, in its unit") Double oddOneOutImplied,
    @Schema(
            description =
                "Every single figure without which the rest agrees, the likeliest unnamed")
        String suspects) {

  /** Thiele/Small figures. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  @Built
  public record Completed(
      Double reOhm,
      Double fsHz,
      Double qms,
      Double qes,
      Double qts,
      Double vasL,
      Double sdCm2,
      Double blTm,
      Double mmsG,
      Double cmsMmPerN,
      Double rmsKgPerS) {

    static Completed of(Sheet sheet, Double area) {
      return DriverCheckResultCompletedBuilder.builder()
          .reOhm(sheet.orNull(Figure.RE))
          .fsHz(sheet.orNull(Figure.FS))
          .qms(sheet.orNull(Figure.QMS))
          .qes(sheet.orNull(Figure.QES))
          .qts(sheet.orNull(Figure.QTS))
          .vasL(sheet.orNull(Figure.VAS))
          .sdCm2(area)
          .blTm(sheet.orNull(Figure.BL))
          .mmsG(sheet.orNull(Figure.MMS))
          .cmsMmPerN(sheet.orNull(Figure.CMS))
          .rmsKgPerS(sheet.orNull(Figure.RMS))
          .build();
    }
  }

  /** Given above expected. Absent where it could not be checked. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Discrepancy(
      @Schema(description = "qts against qms and qes, percent") Double qtsPercent,
      @Schema(description = "fs against mms and cms, percent") Double fsPercent,
      @Schema(description = "vas against cms and sd, percent") Double vasPercent,
      @Schema(description = "qes against fs, mms, re and bl, percent") Double qesPercent,
      @Schema(description = "qms against fs, mms and rms, percent") Double qmsPercent,
      @Schema(description = "Sensitivity against the level that the figures give, dB")
          Double sensitivityDb) {

    static Discrepancy of(Agreement agreement) {
      return new Discrepancy(
          agreement.excessOrNull(Identity.QTS),
          agreement.excessOrNull(Identity.FS),
          agreement.excessOrNull(Identity.VAS),
          agreement.excessOrNull(Identity.QES),
          agreement.excessOrNull(Identity.QMS),
          agreement.excessOrNull(Identity.SENSITIVITY));
    }
  }

  /** Figures after reconciliation. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  @Built
  public record Adjusted(
      Double reOhm,
      Double fsHz,
      Double qms,
      Double qes,
      Double qts,
      Double vasL,
      Double sdCm2,
      Double blTm,
      Double mmsG,
      Double cmsMmPerN,
      Double rmsKgPerS,
      @Schema(description = "Sensitivity on the basis given, dB SPL") Double sensitivityDbSpl) {

    static Adjusted of(Reconciliation by) {
      return DriverCheckResultAdjustedBuilder.builder()
          .reOhm(by.adjustedOrNull(Figure.RE))
          .fsHz(by.adjustedOrNull(Figure.FS))
          .qms(by.adjustedOrNull(Figure.QMS))
          .qes(by.adjustedOrNull(Figure.QES))
          .qts(by.adjustedOrNull(Figure.QTS))
          .vasL(by.adjustedOrNull(Figure.VAS))
          .sdCm2(by.adjustedOrNull(Figure.SD))
          .blTm(by.adjustedOrNull(Figure.BL))
          .mmsG(by.adjustedOrNull(Figure.MMS))
          .cmsMmPerN(by.adjustedOrNull(Figure.CMS))
          .rmsKgPerS(by.adjustedOrNull(Figure.RMS))
          .sensitivityDbSpl(by.adjustedOrNull(Figure.LEVEL))
          .build();
    }
  }

  /** Given above adjusted. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  @Built
  public record Residual(
      @Schema(description = "Of re, percent") Double rePercent,
      @Schema(description = "Of fs, percent") Double fsPercent,
      @Schema(description = "Of qms, percent") Double qmsPercent,
      @Schema(description = "Of qes, percent") Double qesPercent,
      @Schema(description = "Of qts, percent") Double qtsPercent,
      @Schema(description = "Of vas, percent") Double vasPercent,
      @Schema(description = "Of sd, percent") Double sdPercent,
      @Schema(description = "Of bl, percent") Double blPercent,
      @Schema(description = "Of mms, percent") Double mmsPercent,
      @Schema(description = "Of cms, percent") Double cmsPercent,
      @Schema(description = "Of rms, percent") Double rmsPercent,
      @Schema(description = "Of the sensitivity, dB") Double sensitivityDb) {

    static Residual of(Reconciliation by) {
      return DriverCheckResultResidualBuilder.builder()
          .rePercent(by.residualOrNull(Figure.RE))
          .fsPercent(by.residualOrNull(Figure.FS))
          .qmsPercent(by.residualOrNull(Figure.QMS))
          .qesPercent(by.residualOrNull(Figure.QES))
          .qtsPercent(by.residualOrNull(Figure.QTS))
          .vasPercent(by.residualOrNull(Figure.VAS))
          .sdPercent(by.residualOrNull(Figure.SD))
          .blPercent(by.residualOrNull(Figure.BL))
          .mmsPercent(by.residualOrNull(Figure.MMS))
          .cmsPercent(by.residualOrNull(Figure.CMS))
          .rmsPercent(by.residualOrNull(Figure.RMS))
          .sensitivityDb(by.residualOrNull(Figure.LEVEL))
          .build();
    }
  }
}
