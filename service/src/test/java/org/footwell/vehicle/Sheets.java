package org.footwell.vehicle;

import java.nio.charset.StandardCharsets;
import org.footwell.calculation.Answer;
import org.footwell.calculation.Shown;
import org.footwell.calculation.text.Reader;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.sheets.PlanSheets;

/** The sheets of a reviewed plan. */
public final class Sheets {

  private Sheets() {}

  public static byte[] bytes(String format, VehiclePlan plan, Answer<PlanReviewResult> answer) {
    return PlanSheets.VIEWS.stream()
        .filter(view -> view.format().equals(format))
        .findFirst()
        .orElseThrow()
        .draw()
        .apply(new Shown<>(plan, answer, Reader.ANYONE));
  }

  public static String text(String format, VehiclePlan plan, Answer<PlanReviewResult> answer) {
    return new String(bytes(format, plan, answer), StandardCharsets.UTF_8);
  }
}
