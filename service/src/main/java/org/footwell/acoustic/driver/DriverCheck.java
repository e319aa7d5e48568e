package org.footwell.acoustic.driver;

import java.util.List;
import java.util.stream.Stream;
import org.footwell.acoustic.driver.DriverCheckRequest.Reconcile;
import org.footwell.acoustic.driver.DriverCheckResult.Adjusted;
import org.footwell.acoustic.driver.DriverCheckResult.Completed;
import org.footwell.acoustic.driver.DriverCheckResult.Discrepancy;
import org.footwell.acoustic.driver.DriverCheckResult.DisplacementBasis;
import org.footwell.acoustic.driver.DriverCheckResult.Residual;
import org.footwell.acoustic.driver.sheet.Agreement;
import org.footwell.acoustic.driver.sheet.DriverLaws;
import org.footwell.acoustic.driver.sheet.Figure;
import org.footwell.acoustic.driver.sheet.Identity;
import org.footwell.acoustic.driver.sheet.Reconciliation;
import org.footwell.acoustic.driver.sheet.Sheet;
import org.footwell.acoustic.driver.sheet.Steps;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.parts.Driver;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.physics.Air;
import org.footwell.physics.ThieleSmall;

/** Whether the data sheet of a driver agrees with itself, and what follows from it. */
public final class DriverCheck
    implements Calculation<DriverCheckRequest, DriverCheckResult>, AskOfPlan<DriverCheckRequest> {

  private static final Card<DriverCheckRequest, DriverCheckResult> CARD =
      Card.of("driver-check", DriverCheckRequest.class, DriverCheckResult.class)
          .title("Check of a driver's data sheet")
          .purpose(
              "Does the data sheet of a driver agree with itself, which figure is the odd one out,"
                  + " and which figures follow from those given. Made to be run over a whole"
                  + " catalogue.")
          .example(
              """
              {"part_id": "demo woofer 25", "rated_ohm": 4, "re_ohm": 3.4, "fs_hz": 38,
               "qms": 7.09, "qes": 0.56, "qts": 0.47, "vas_l": 43.2, "sd_cm2": 330,
               "xmax_mm": 9, "bl_tm": 9.5, "mms_g": 62, "cms_mm_per_n": 0.28, "le_mh": 1.2,
               "sensitivity": {"level_db_spl": 91, "basis": "two_point_eight_three_volt"},
               "continuous_power_w": 250, "peak_power_w": 500, "nominal_mm": 250}
              """)
          .sources(
              ThieleSmall.SMALL_DRIVER,
              Reconciliation.LEAST_SQUARES,
              Air.ISO_9613_1,
              UsualRange.SOURCE)
          .limits(
              "The identities are those of small signals; figures measured at different levels or"
                  + " after a different break-in differ by more than rounding.",
              "The sensitivity that follows from the figures is that of a piston well below beaming;"
                  + " a stated one is an average over a band and may differ by a decibel or two.",
              "Where two figures are wrong they can hide each other.",
              "Usual ranges are those of drivers for vehicles, generous on purpose; compression"
                  + " drivers and horns lie outside.")
          .findings(DriverFinding.values())
          .build();

  @Override
  public Card<DriverCheckRequest, DriverCheckResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.PART, PlanPlace.FACTORY_PART);
  }

  @Override
  public DriverCheckRequest ask(PlanReader plan) {
    List<PlannedPart> parts =
        plan.about().kind() == PlanPlace.PART ? plan.plan().newParts() : plan.plan().factoryParts();
    PlannedPart part = parts.get(plan.about().index());
    String at = plan.about().pointer();
    plan.also(at + "/driver");
    plan.called("/part_id", at + "/id");
    Driver driver = part.driver();
    // The sheet states one sensitivity for all voice coils joined; impedances of one follow that.
    double joined = part.sensitivityLoadOhm() / driver.ratedOhm();
    return DriverCheckRequestBuilder.builder()
        .partId(part.id())
        .ratedOhm(part.sensitivityLoadOhm())
        .reOhm(driver.reOhm() == null ? null : (Double) (joined * driver.reOhm()))
        .fsHz(driver.fsHz())
        .qms(driver.qms())
        .qes(driver.qes())
        .qts(driver.qts())
        .vasL(driver.vasL())
        .sdCm2(driver.sdCm2())
        .xmaxMm(driver.xmaxMm())
        .leMh(
            driver.leMh() == null || driver.leMh() == 0 ? null : (Double) (joined * driver.leMh()))
        .sensitivity(driver.sensitivity())
        .continuousPowerW(driver.continuousPowerW())
        .peakPowerW(driver.peakPowerW())
        .massG(driver.massG())
        .price(driver.price())
        .build();
  }

  @Override
  public DriverCheckResult compute(DriverCheckRequest q, Run run) {
    Sheet sheet = sheet(q, run);
    Agreement agreement = Agreement.of(sheet, q.tolerance());
    boolean isWanted = q.reconcile() == Reconcile.ALWAYS || agreement.isAnyOff();
    Reconciliation reconciliation =
        isWanted ? Reconciliation.of(sheet, q.tolerance()) : Reconciliation.NONE;
    SheetRemarks remarks =
        new SheetRemarks(sheet, agreement, reconciliation, q.tolerance(), q.nominalMm(), run);
    remarks.remark();
    OtherRemarks others = new OtherRemarks(q, sheet, remarks.small(), run);
    others.ranges();
    List<Figure> unchecked = unchecked(agreement, run);

    Double area = area(q, sheet, run);
    Double diameter = area == null ? null : (Double) others.diameter(area);
    boolean displaces = area != null && q.xmaxMm() != null;
    boolean redundant = reconciliation.redundancy() > 0;
    boolean bandwidth = sheet.isKnown(Figure.FS_HZ) && sheet.isKnown(Figure.QES);
    return DriverCheckResultBuilder.builder()
        .part(q.partId())
        .completed(Completed.of(sheet, area))
        .paths(sheet.paths().stream().map(path -> path.text).toList())
        .referenceEfficiency(agreement.hasEfficiency() ? agreement.efficiency() : null)
        .referenceLevelDbSpl(agreement.hasEfficiency() ? agreement.referenceLevel() : null)
        .oneWattLevelDbSpl(agreement.hasLevels() ? agreement.oneWattLevel() : null)
        .twoPointEightThreeVoltLevelDbSpl(agreement.hasLevels() ? agreement.voltageLevel() : null)
        .effectiveDiameterMm(diameter)
        .displacementCm3(displaces ? run.apply(DriverLaws.DISPLACEMENT, area, q.xmaxMm()) : null)
        .displacementBasis(displaces ? basis(q) : null)
        .efficiencyBandwidthHz(
            bandwidth
                ? run.apply(
                    DriverLaws.EFFICIENCY_BANDWIDTH, sheet.of(Figure.FS_HZ), sheet.of(Figure.QES))
                : null)
        .reRatio(others.reRatio())
        .peakOverContinuousDb(others.peak())
        .airDensityKgPerM3(sheet.air.density())
        .speedOfSoundMPerS(sheet.air.speed())
        .discrepancy(Discrepancy.of(agreement))
        .unchecked(unchecked)
        .redundancyCount(isWanted ? reconciliation.redundancy() : null)
        .adjusted(redundant ? Adjusted.of(reconciliation) : null)
        .residual(redundant ? Residual.of(reconciliation) : null)
        .farthest(reconciliation.farthest())
        .farthestDeviations(redundant ? reconciliation.farthestDeviations() : null)
        .oddOneOut(remarks.odd() == null ? null : remarks.odd().figure())
        .oddOneOutImplied(
            remarks.odd() != null && remarks.odd().isImplied() ? remarks.odd().implied() : null)
        .suspects(remarks.suspects())
        .build();
  }

  private static Sheet sheet(DriverCheckRequest q, Run run) {
    double density = run.apply(Air.DENSITY, q.temperatureC());
    double speed = run.apply(Air.SPEED_OF_SOUND, q.temperatureC());
    Sheet sheet =
        new Sheet(
            new Sheet.AirState(density, speed),
            new Sheet.Drive(q.ratedOhm(), q.sensitivity() == null ? null : q.sensitivity().basis()),
            q.tolerance().printedRounding(),
            new Steps(run));
    sheet.give(Figure.SD_CM2, q.sdCm2());
    sheet.give(Figure.CMS_MM_PER_N, q.cmsMmPerN());
    sheet.give(Figure.MMS_G, q.mmsG());
    sheet.give(Figure.BL_TM, q.blTm());
    sheet.give(Figure.RE_OHM, q.reOhm());
    sheet.give(Figure.RMS_KG_PER_S, q.rmsKgPerS());
    sheet.give(Figure.FS_HZ, q.fsHz());
    sheet.give(Figure.VAS_L, q.vasL());
    sheet.give(Figure.QES, q.qes());
    sheet.give(Figure.QMS, q.qms());
    sheet.give(Figure.QTS, q.qts());
    sheet.give(Figure.SENSITIVITY, q.sensitivity() == null ? null : q.sensitivity().levelDbSpl());
    sheet.complete();
    return sheet;
  }

  /** Cone area: known, or a rough estimate that nothing else is derived from. */
  private static Double area(DriverCheckRequest q, Sheet sheet, Run run) {
    boolean isCone = q.nominalMm() != null && q.nominalMm() > UsualRange.SMALL_MM;
    if (sheet.isKnown(Figure.SD_CM2) || !isCone) {
      return sheet.orNull(Figure.SD_CM2);
    }
    double area = run.apply(DriverLaws.AREA_FROM_NOMINAL, q.nominalMm());
    run.find(DriverFinding.AREA_ESTIMATED).at("/nominal_mm").value(area);
    return area;
  }

  private static DisplacementBasis basis(DriverCheckRequest q) {
    return q.xmaxBasis() == null
        ? DisplacementBasis.NOT_STATED
        : switch (q.xmaxBasis()) {
          case GEOMETRIC -> DisplacementBasis.GEOMETRIC;
          case DISTORTION -> DisplacementBasis.DISTORTION;
        };
  }

  /** Figures that nothing could be held against; a note unless only the losses are missing. */
  private static List<Figure> unchecked(Agreement agreement, Run run) {
    List<Figure> figures =
        Stream.of(Identity.ALL)
            .filter(identity -> !agreement.isChecked(identity))
            .map(identity -> identity.figure)
            .toList();
    if (figures.stream().anyMatch(figure -> figure != Figure.QMS)) {
      run.find(DriverFinding.NOT_CHECKED)
          .at("")
          .fields("what", figures.stream().map(figure -> figure.field).toList());
    }
    return figures;
  }
}
