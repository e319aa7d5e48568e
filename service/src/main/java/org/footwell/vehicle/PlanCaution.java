package org.footwell.vehicle;

import java.util.function.Predicate;
import org.footwell.calculation.Caution;
import org.footwell.calculation.Run;
import org.footwell.parts.ReturnPath;
import org.footwell.parts.plan.PlacedDriver.MountedIn;
import org.footwell.parts.plan.VehiclePlan;

/** Cautions of the trade that hold for some vehicles only, each with the plans it is said of. */
@SuppressWarnings("ImmutableEnumChecker") // predicates that hold nothing
enum PlanCaution implements Caution {
  IN_DOORS(mounted(MountedIn.DOOR)),
  IN_PILLARS(mounted(MountedIn.PILLAR).or(mounted(MountedIn.ROOF))),
  UNDER_SEATS(mounted(MountedIn.SEAT)),
  BEHIND_PANELS(
      mounted(MountedIn.SIDE_PANEL).or(mounted(MountedIn.REAR_SHELF)).or(mounted(MountedIn.BOOT))),
  WAIT_AFTER_DISCONNECTING(IN_DOORS.of.or(IN_PILLARS.of).or(UNDER_SEATS.of)),
  HIGH_VOLTAGE(plan -> Boolean.TRUE.equals(plan.vehicle().highVoltage())),
  FORTY_EIGHT_VOLT(plan -> plan.vehicle().nominalV() > 30),
  START_STOP(plan -> Boolean.TRUE.equals(plan.vehicle().startStop())),
  LITHIUM_STARTER(plan -> Boolean.TRUE.equals(plan.vehicle().lithiumStarter())),
  BATTERY_SENSOR(plan -> Boolean.TRUE.equals(plan.vehicle().batterySensor())),
  SECOND_BATTERY(plan -> plan.supply() != null && plan.supply().splitCharge()),
  EARTH_THROUGH_BODY(
      plan ->
          plan.amplifiers().stream()
              .anyMatch(one -> one.feed() != null && one.feed().returnPath() == ReturnPath.BODY)),
  CHIMES(
      plan ->
          plan.factorySignal() != null
              || plan.drivers().stream().anyMatch(driver -> driver.replaces() != null));

  private final Predicate<VehiclePlan> of;

  PlanCaution(Predicate<VehiclePlan> of) {
    this.of = of;
  }

  private static Predicate<VehiclePlan> mounted(MountedIn in) {
    return plan -> plan.drivers().stream().anyMatch(driver -> driver.mountedIn() == in);
  }

  /** Says those that a plan makes relevant. */
  static void say(VehiclePlan plan, Run run) {
    for (PlanCaution one : values()) {
      if (one.of.test(plan)) {
        run.caution(one);
      }
    }
  }
}
