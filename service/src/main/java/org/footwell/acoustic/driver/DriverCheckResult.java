package org.footwell.acoustic.driver;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.acoustic.driver.sheet.Agreement;
import org.footwell.acoustic.driver.sheet.Figure;
import org.footwell.acoustic.driver.sheet.Identity;
import org.footwell.acoustic.driver.sheet.Reconciliation;
import org.footwell.acoustic.driver.sheet.Sheet;
import org.footwell.calculation.Built;

/** A driver's record, completed and checked. What does not follow from the figures is absent. */
@Built
public record DriverCheckResult(
    @Schema(description = "The part_id of the request") String part,
    @Schema(description = "The figures, given or filled in") Completed completed,
    @Schema(description = "How each filled-in figure was found, such as: qes from qts qms")
        List<String> paths,
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
    @Schema(description = "What the displacement rests on") DisplacementBasis displacementBasis,
    @Schema(description = "fs over qes (efficiency bandwidth product, a rule of the trade), Hz")
        Double efficiencyBandwidthHz,
    @Schema(description = "re over rated impedance, as a ratio") Double reRatio,
    @Schema(description = "Peak above continuous power, dB") Double peakOverContinuousDb,
    @Schema(description = "Density of air reckoned with, kg/m³") double airDensityKgPerM3,
    @Schema(description = "Speed of sound reckoned with, m/s") double speedOfSoundMPerS,
    @Schema(description = "How far given figures lie from what others give")
        Discrepancy discrepancy,
    @Schema(description = "Figures that could not be held against others") List<Figure> unchecked,
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
        List<Figure> farthest,
    @Schema(description = "How many standard deviations that is") Double farthestDeviations,
    @Schema(
            description =
                "The single figure without which the rest agrees, when one stands out; qes where"
                    + " qes and qts are wrong together or qes and qms are exchanged; absent when"
                    + " nothing disagrees")
        Figure oddOneOut,
    @Schema(description = "What the rest gives for it, in its unit") Double oddOneOutImplied,
    @Schema(
            description =
                "Every single figure without which the rest agrees, the likeliest unnamed")
        List<Figure> suspects) {

  /** What the largest linear displacement rests on. */
  public enum DisplacementBasis {
    /** The heights of coil and gap. */
    GEOMETRIC,
    /** A limit of distortion. */
    DISTORTION,
    /** The data sheet does not say it. */
    NOT_STATED
  }

  /** Thiele/Small figures. */
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
          .reOhm(sheet.orNull(Figure.RE_OHM))
          .fsHz(sheet.orNull(Figure.FS_HZ))
          .qms(sheet.orNull(Figure.QMS))
          .qes(sheet.orNull(Figure.QES))
          .qts(sheet.orNull(Figure.QTS))
          .vasL(sheet.orNull(Figure.VAS_L))
          .sdCm2(area)
          .blTm(sheet.orNull(Figure.BL_TM))
          .mmsG(sheet.orNull(Figure.MMS_G))
          .cmsMmPerN(sheet.orNull(Figure.CMS_MM_PER_N))
          .rmsKgPerS(sheet.orNull(Figure.RMS_KG_PER_S))
          .build();
    }
  }

  /** Given above expected. Absent where it could not be checked. */
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
          .reOhm(by.adjustedOrNull(Figure.RE_OHM))
          .fsHz(by.adjustedOrNull(Figure.FS_HZ))
          .qms(by.adjustedOrNull(Figure.QMS))
          .qes(by.adjustedOrNull(Figure.QES))
          .qts(by.adjustedOrNull(Figure.QTS))
          .vasL(by.adjustedOrNull(Figure.VAS_L))
          .sdCm2(by.adjustedOrNull(Figure.SD_CM2))
          .blTm(by.adjustedOrNull(Figure.BL_TM))
          .mmsG(by.adjustedOrNull(Figure.MMS_G))
          .cmsMmPerN(by.adjustedOrNull(Figure.CMS_MM_PER_N))
          .rmsKgPerS(by.adjustedOrNull(Figure.RMS_KG_PER_S))
          .sensitivityDbSpl(by.adjustedOrNull(Figure.SENSITIVITY))
          .build();
    }
  }

  /** Given above adjusted. */
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
          .rePercent(by.residualOrNull(Figure.RE_OHM))
          .fsPercent(by.residualOrNull(Figure.FS_HZ))
          .qmsPercent(by.residualOrNull(Figure.QMS))
          .qesPercent(by.residualOrNull(Figure.QES))
          .qtsPercent(by.residualOrNull(Figure.QTS))
          .vasPercent(by.residualOrNull(Figure.VAS_L))
          .sdPercent(by.residualOrNull(Figure.SD_CM2))
          .blPercent(by.residualOrNull(Figure.BL_TM))
          .mmsPercent(by.residualOrNull(Figure.MMS_G))
          .cmsPercent(by.residualOrNull(Figure.CMS_MM_PER_N))
          .rmsPercent(by.residualOrNull(Figure.RMS_KG_PER_S))
          .sensitivityDb(by.residualOrNull(Figure.SENSITIVITY))
          .build();
    }
  }
}
