package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.parts.plan.DriverOpening;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedPart;

/** Whether drivers go into the openings they are planned for. */
final class FitReview {

  private final PlanIndex index;
  private final Run run;

  FitReview(PlanIndex index, Run run) {
    this.index = index;
    this.run = run;
  }

  /** One line per driver whose opening is given, in their order. */
  List<FitLine> lines() {
    List<FitLine> lines = new ArrayList<>();
    List<String> unknown = new ArrayList<>();
    List<String> unknownAt = new ArrayList<>();
    List<PlacedDriver> drivers = index.plan().drivers();
    for (int d = 0; d < drivers.size(); d++) {
      if (drivers.get(d).opening() != null) {
        FitLine line = line(d, drivers.get(d), drivers.get(d).opening());
        lines.add(line);
        if (line.widthLeftMm() == null || line.depthLeftMm() == null) {
          unknown.add(drivers.get(d).id());
          unknownAt.add("/drivers/" + d + "/opening");
        }
      }
    }
    if (!unknown.isEmpty()) {
      run.find(PlanFinding.FIT_NOT_KNOWN).at(unknownAt).own("names", unknown);
    }
    return lines;
  }

  private FitLine line(int d, PlacedDriver driver, DriverOpening opening) {
    PlannedPart part = index.part(d);
    String at = "/drivers/" + d + "/opening/";
    return new FitLine(
        driver.id(),
        opening.cutOutMm(),
        left(
            PlanFinding.OPENING_TOO_NARROW,
            at + "cut_out_mm",
            driver,
            opening.cutOutMm(),
            part.cutOutMm()),
        opening.depthMm(),
        left(
            PlanFinding.OPENING_TOO_SHALLOW,
            at + "depth_mm",
            driver,
            opening.depthMm(),
            part.mountingDepthMm()));
  }

  private Double left(
      PlanFinding finding, String at, PlacedDriver driver, double thereMm, Double neededMm) {
    if (neededMm == null) {
      return null;
    }
    if (neededMm > thereMm) {
      run.find(finding).at(at).value(neededMm).limit(thereMm).own("name", driver.id());
    }
    return thereMm - neededMm;
  }
}
