package org.footwell.vehicle;

import java.util.List;
import java.util.stream.IntStream;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.chain.SoundField;
import org.footwell.vehicle.chain.VehicleModel;
import org.footwell.vehicle.reading.Modelled;

/** What packages are screened by, read from the model of a whole plan as its review has it. */
public final class ScreenedPlan {

  private ScreenedPlan() {}

  /** Of a channel: its level with nothing drawing, what it makes with its band at 0 dB, its reach. */
  public record Line(double level, double adding, double apart, double reach) {}

  /** Of every channel of a plan on a voltage that is held. */
  public static List<Line> of(VehiclePlan plan) {
    Modelled modelled = ModelledPlans.modelled(plan);
    VehicleModel model = modelled.model();
    return IntStream.range(0, plan.channels().size())
        .mapToObj(
            c -> {
              PlayedChannel channel = model.channels().get(c);
              double clip = channel.chain().output().clipV(plan.supply().batteryV());
              double base = model.baseDb(c);
              SoundField.Split split = model.field().split(plan.mainSeat(), c);
              double toZero = Math.pow(10, -base / 10);
              return new Line(
                  base + 20 * Math.log10(channel.gain(clip).volts()),
                  split.adding() * toZero,
                  split.apart() * toZero,
                  channel.chain().reachHz());
            })
        .toList();
  }
}
