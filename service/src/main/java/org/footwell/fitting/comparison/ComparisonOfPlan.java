package org.footwell.fitting.comparison;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.footwell.fitting.comparison.DriverComparisonRequest.AddedItem;
import org.footwell.fitting.comparison.sides.ComparedAmplifierBuilder;
import org.footwell.fitting.comparison.sides.ComparedPosition;
import org.footwell.fitting.comparison.sides.ComparedPosition.Band;
import org.footwell.fitting.comparison.sides.ComparedPosition.MountedAt;
import org.footwell.fitting.comparison.sides.ComparedPosition.Zone;
import org.footwell.fitting.comparison.sides.ComparedPositionBuilder;
import org.footwell.parts.Filter;
import org.footwell.parts.WayRole;
import org.footwell.parts.plan.ChannelRole;
import org.footwell.parts.plan.Extra;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.PlacedDriver.MountedIn;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlanReader;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.VehiclePlan;

/** Factory parts of a plan against those that replace them, and what comes in besides. */
final class ComparisonOfPlan {

  private final PlanReader plan;
  private final VehiclePlan vehicle;

  ComparisonOfPlan(PlanReader plan) {
    this.plan = plan;
    this.vehicle = plan.plan();
  }

  DriverComparisonRequest request() {
    List<ComparedPosition> positions = new ArrayList<>();
    for (int d = 0; d < vehicle.drivers().size(); d++) {
      positions.add(position(d));
    }
    plan.called("/positions", "/drivers");
    return DriverComparisonRequestBuilder.builder()
        .positions(positions)
        .additions(additions())
        .temperatureC(plan.temperatureC())
        .build();
  }

  private ComparedPosition position(int driver) {
    PlacedDriver placed = vehicle.drivers().get(driver);
    String at = PlanIndex.driverAt(driver);
    int replaced = plan.index().replacedBy(driver);
    WayRole role = plan.needs(plan.index().roleOf(driver), at + "/role");
    plan.called("/positions/" + driver + "/band", at + "/role");
    Double power = plan.cleanPowerW(driver, "/positions/" + driver + "/amplifier_after");
    Filter highPass = plan.highPass(driver);
    plan.called("/positions/" + driver + "/name", at + "/id");
    return plan.made(
        ComparedPositionBuilder.builder()
            .name(placed.id())
            .zone(zone(driver))
            .band(role == null ? null : Band.valueOf(role.name()))
            .at(mountedAt(placed.mountedIn()))
            .factory(
                replaced < 0
                    ? null
                    : plan.joined(
                        vehicle.factoryParts().get(replaced), "/factory_parts/" + replaced))
            .replacement(plan.joined(driver))
            .amplifierAfter(
                power == null ? null : ComparedAmplifierBuilder.builder().powerW(power).build())
            .displacementHz(highPass == null ? null : highPass.frequencyHz())
            .build(),
        at);
  }

  /** Subwoofers are part of the front or of the rear by where they stand. */
  private Zone zone(int driver) {
    int channel = plan.index().channelOf(driver);
    ChannelRole role = channel < 0 ? ChannelRole.FRONT : vehicle.channels().get(channel).role();
    return switch (role) {
      case FRONT -> Zone.FRONT;
      case CENTRE -> Zone.CENTRE;
      case REAR -> Zone.REAR;
      case SUBWOOFER ->
          vehicle.drivers().get(driver).position().xM()
                  < vehicle.seats().get(vehicle.mainSeat()).head().xM()
              ? Zone.REAR
              : Zone.FRONT;
    };
  }

  private static MountedAt mountedAt(MountedIn in) {
    return in == MountedIn.DOOR
        ? MountedAt.DOOR
        : in == MountedIn.BOOT ? MountedAt.BOOT : MountedAt.CABIN;
  }

  private List<AddedItem> additions() {
    List<AddedItem> items = new ArrayList<>();
    for (int a = 0; a < vehicle.amplifiers().size(); a++) {
      PlannedAmplifier amplifier = vehicle.amplifiers().get(a);
      String name = amplifier.calledName();
      items.add(
          plan.made(
              new AddedItem(name, null, amplifier.massG(), amplifier.price()),
              PlanReader.amplifierAt(a)));
    }
    for (int e = 0; e < vehicle.extras().size(); e++) {
      Extra extra = vehicle.extras().get(e);
      BigDecimal price =
          extra.price() == null
              ? null
              : extra.price().multiply(BigDecimal.valueOf(extra.extraCount()));
      items.add(
          plan.made(
              new AddedItem(extra.name(), null, extra.massG() * extra.extraCount(), price),
              "/extras/" + e));
    }
    return items;
  }
}
