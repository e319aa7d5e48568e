package org.footwell.vehicle;

import org.footwell.acoustic.driver.DriverCheck;
import org.footwell.acoustic.driver.DriverCheckRequest;
import org.footwell.acoustic.driver.DriverCheckRequestBuilder;
import org.footwell.acoustic.driver.DriverFinding;
import org.footwell.calculation.Rebase;
import org.footwell.calculation.Run;
import org.footwell.parts.Driver;

/** Whether the figures of each new part agree with each other. */
final class PartReview {

  private static final DriverCheck DRIVER_CHECK = new DriverCheck();

  /** Two statements of one resistance may differ by rounding; common practice, no source. */
  private static final double SAME_RESISTANCE = 0.05;

  private final VehiclePlan plan;
  private final Run run;

  PartReview(VehiclePlan plan, Run run) {
    this.plan = plan;
    this.run = run;
  }

  void remark() {
    for (int p = 0; p < plan.newParts().size(); p++) {
      VehiclePlan.Part part = plan.newParts().get(p);
      String at = "/new_parts/" + p;
      Driver coil = part.impedance();
      if (coil != null
          && part.reOhm() != null
          && Math.abs(part.reOhm() / coil.reOhm() - 1) > SAME_RESISTANCE) {
        run.find(PlanFinding.COIL_RESISTANCE_TWICE)
            .at(at + "/re_ohm")
            .value(part.reOhm())
            .limit(coil.reOhm())
            .own("name", part.id());
      }
      run.call(DRIVER_CHECK, sheet(part), places(at, part));
    }
  }

  /**
   * The part as a data sheet. A sensitivity is stated for all voice coils joined in some way, so
   * impedances are scaled to that.
   */
  private static DriverCheckRequest sheet(VehiclePlan.Part part) {
    Driver coil = part.impedance();
    double joined = part.sensitivityLoad() / part.ratedOhm();
    Double re = coil == null ? part.reOhm() : coil.reOhm();
    return DriverCheckRequestBuilder.builder()
        .partId(part.id())
        .ratedOhm(part.sensitivityLoad())
        .reOhm(re == null ? null : (Double) (re * joined))
        .fsHz(coil == null ? null : coil.fsHz())
        .qms(coil == null ? null : coil.qms())
        .qes(coil == null ? null : coil.qes())
        .vasL(coil == null ? null : coil.vasL())
        .sdCm2(part.sdCm2())
        .xmaxMm(part.xmaxMm())
        .leMh(coil == null || coil.leMh() == 0 ? null : (Double) (coil.leMh() * joined))
        .sensitivity(part.sensitivity())
        .continuousPowerW(part.continuousPowerW())
        .massG(part.massG())
        .reconcile(DriverCheckRequest.Reconcile.WHEN_OFF)
        .build();
  }

  private static Rebase places(String at, VehiclePlan.Part part) {
    return (part.impedance() == null
            ? Rebase.to(at, part.id()).from("", at)
            : Rebase.to(at, part.id())
                .from("", at, at + "/impedance")
                .with("/re_ohm", at + "/impedance/re_ohm"))
        .with("/continuous_power_w", at + "/continuous_power_w")
        // A plan needs no complete data sheet.
        .without(DriverFinding.NOT_CHECKED, DriverFinding.POORLY_DETERMINED);
  }
}
