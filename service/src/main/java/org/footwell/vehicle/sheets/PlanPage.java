package org.footwell.vehicle.sheets;

import java.time.Duration;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Engine;
import org.footwell.calculation.Shown;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.sheet.SpokenPage;
import org.footwell.vehicle.PlanReviewResult;
import org.footwell.vehicle.curves.PlanCurves;
import org.footwell.vehicle.curves.PlanCurvesResult;

/** A page about a plan and its review. */
abstract class PlanPage extends SpokenPage {

  private static final Duration LONG = Duration.ofSeconds(10);

  private final VehiclePlan plan;
  private final Answer<PlanReviewResult> answer;

  PlanPage(Shown<VehiclePlan, PlanReviewResult> shown) {
    super(shown.reader().calling(shown.request()::called));
    plan = shown.request();
    answer = shown.answer();
  }

  public final VehiclePlan plan() {
    return plan;
  }

  public final PlanReviewResult result() {
    return answer.result();
  }

  final Answer<PlanReviewResult> answer() {
    return answer;
  }

  /** The curves behind the review. */
  final PlanCurvesResult curves() {
    return new Engine().answer(new PlanCurves(), plan, false, LONG).result();
  }
}
