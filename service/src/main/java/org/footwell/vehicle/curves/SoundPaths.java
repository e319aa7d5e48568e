package org.footwell.vehicle.curves;

import java.util.ArrayList;
import java.util.List;
import org.footwell.parts.Position;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Air;
import org.footwell.vehicle.curves.PlanCurvesResult.Path;
import org.footwell.vehicle.reading.Modelled;

/** The way of each driver to the main seat, and when its sound arrives there. */
final class SoundPaths {

  private SoundPaths() {}

  static List<Path> of(Modelled modelled) {
    VehiclePlan plan = modelled.index().plan();
    Position head = plan.seats().get(plan.mainSeat()).head();
    double speed = Air.SPEED_OF_SOUND.at(plan.vehicle().temperatureC());
    List<Path> paths = new ArrayList<>();
    for (int c = 0; c < plan.channels().size(); c++) {
      PlannedChannel channel = plan.channels().get(c);
      double late = modelled.states().get(c).delayMs();
      for (int d : modelled.index().driversOf(c)) {
        PlacedDriver driver = plan.drivers().get(d);
        double distance = driver.position().distanceTo(head);
        double flight = 1000 * distance / speed;
        paths.add(
            new Path(
                driver.id(),
                channel.id(),
                distance,
                flight,
                late - channel.chainDelayMs(),
                flight + late));
      }
    }
    return paths;
  }
}
