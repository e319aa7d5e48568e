package org.footwell.vehicle;

import java.util.EnumSet;
import java.util.Set;
import org.footwell.calculation.Caution;
import org.footwell.calculation.Run;
import org.footwell.parts.ReturnPath;
import org.footwell.parts.plan.PlacedDriver.MountedIn;
import org.footwell.parts.plan.VehiclePlan;

/** Cautions of the trade that hold for some vehicles only; common practice, no source. */
enum PlanCaution implements Caution {
  IN_DOORS,
  IN_PILLARS,
  UNDER_SEATS,
  BEHIND_PANELS,
  WAIT_AFTER_DISCONNECTING,
  HIGH_VOLTAGE,
  FORTY_EIGHT_VOLT,
  START_STOP,
  LITHIUM_STARTER,
  BATTERY_SENSOR,
  SECOND_BATTERY,
  EARTH_THROUGH_BODY,
  CHIMES;

  /** Nets named after more than this can keep an arc burning, V. */
  private static final double ARC_V = 30;

  private static final Set<MountedIn> NEAR_AIRBAGS =
      EnumSet.of(MountedIn.DOOR, MountedIn.PILLAR, MountedIn.ROOF, MountedIn.SEAT);

  /** Says those that a plan makes relevant. */
  static void say(VehiclePlan plan, Run run) {
    for (PlanCaution one : values()) {
      if (one.concerns(plan)) {
        run.caution(one);
      }
    }
  }

  private boolean concerns(VehiclePlan plan) {
    return switch (this) {
      case IN_DOORS -> mounted(plan, EnumSet.of(MountedIn.DOOR));
      case IN_PILLARS -> mounted(plan, EnumSet.of(MountedIn.PILLAR, MountedIn.ROOF));
      case UNDER_SEATS -> mounted(plan, EnumSet.of(MountedIn.SEAT));
      case BEHIND_PANELS ->
          mounted(plan, EnumSet.of(MountedIn.SIDE_PANEL, MountedIn.REAR_SHELF, MountedIn.BOOT));
      case WAIT_AFTER_DISCONNECTING -> mounted(plan, NEAR_AIRBAGS);
      case HIGH_VOLTAGE -> Boolean.TRUE.equals(plan.vehicle().highVoltage());
      case FORTY_EIGHT_VOLT -> plan.vehicle().nominalV() > ARC_V;
      case START_STOP -> Boolean.TRUE.equals(plan.vehicle().startStop());
      case LITHIUM_STARTER -> Boolean.TRUE.equals(plan.vehicle().lithiumStarter());
      case BATTERY_SENSOR -> Boolean.TRUE.equals(plan.vehicle().batterySensor());
      case SECOND_BATTERY -> plan.supply() != null && plan.supply().splitCharge();
      case EARTH_THROUGH_BODY ->
          plan.amplifiers().stream()
              .anyMatch(one -> one.feed() != null && one.feed().returnPath() == ReturnPath.BODY);
      case CHIMES ->
          plan.factorySignal() != null
              || plan.drivers().stream().anyMatch(driver -> driver.replaces() != null);
    };
  }

  private static boolean mounted(VehiclePlan plan, Set<MountedIn> places) {
    return plan.drivers().stream()
        .anyMatch(driver -> driver.mountedIn() != null && places.contains(driver.mountedIn()));
  }
}
