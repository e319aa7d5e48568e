package org.footwell.vehicle.curves;

import java.util.List;
import org.footwell.calculation.Shown;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.plot.Drawing;
import org.footwell.sheet.SpokenPage;
import org.footwell.sheet.TemplatePage;

/** All plots of a plan as a page, each with the table of its figures. */
public final class CurvesPage extends SpokenPage {

  private final Shown<VehiclePlan, PlanCurvesResult> shown;

  private CurvesPage(Shown<VehiclePlan, PlanCurvesResult> shown) {
    super(shown.reader());
    this.shown = shown;
  }

  static TemplatePage sheet(Shown<VehiclePlan, PlanCurvesResult> shown) {
    return new TemplatePage("vehicle/curves.jte", new CurvesPage(shown));
  }

  public String vehicle() {
    return shown.request().vehicle().name();
  }

  public List<Drawing> drawings() {
    return CurvePlots.of(shown.request(), shown.answer().result(), shown.reader());
  }
}
