package org.footwell.acoustic.seats;

import java.util.ArrayList;
import java.util.List;
import org.footwell.parts.Box;
import org.footwell.parts.Driver;
import org.footwell.parts.plan.ChannelSettings;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlanReader;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.ThieleSmall;

/**
 * Every driver of a plan as a source, with the clean power it gets, and with the trims, delays and
 * polarities that were set; without settings none.
 */
final class LevelsOfPlan {

  private final PlanReader plan;
  private final VehiclePlan vehicle;

  LevelsOfPlan(PlanReader plan) {
    this.plan = plan;
    this.vehicle = plan.plan();
  }

  SeatLevelsRequest request() {
    List<SoundSource> sources = new ArrayList<>();
    for (int d = 0; d < vehicle.drivers().size(); d++) {
      if (plan.index().channelOf(d) >= 0) {
        sources.add(source(d, "/sources/" + sources.size()));
      }
    }
    int main = vehicle.mainSeat();
    plan.called("/sources", "/drivers");
    plan.called("/reference_seat", "/seats/" + main + "/name");
    return SeatLevelsRequestBuilder.builder()
        .sources(sources)
        .seats(vehicle.seats())
        .cabin(vehicle.vehicle().cabin())
        .temperatureC(plan.temperatureC())
        .referenceSeat(vehicle.seats().get(main).name())
        .crestFactorDb(plan.crestFactorDb("/crest_factor_db"))
        .build();
  }

  private SoundSource source(int driver, String at) {
    int index = plan.index().channelOf(driver);
    PlannedChannel channel = vehicle.channels().get(index);
    ChannelSettings set = plan.index().settingsOf(index);
    Integer polarity = set == null ? null : set.polarity();
    return plan.made(
        SoundSourceBuilder.builder()
            .name(vehicle.drivers().get(driver).id())
            .driver(plan.joined(driver))
            .powerW(plan.cleanPowerW(driver, at + "/power_w"))
            .rollOff(rollOff(driver))
            .highPass(plan.highPass(driver))
            .lowPass(plan.lowPass(driver))
            .delayMs(set == null ? null : set.delayMs())
            .trimDb(set == null ? null : set.trimDb())
            .polarity(channel.polarity() * (polarity == null ? 1 : polarity))
            .position(vehicle.drivers().get(driver).position())
            .build(),
        PlanIndex.driverAt(driver),
        PlanReader.channelAt(index));
  }

  /** Of a driver in free air or a closed box; a vented one falls otherwise, and is taken as flat. */
  private SoundSource.RollOff rollOff(int driver) {
    Driver data = plan.driver(driver);
    Box box = plan.box(driver);
    Double q = totalQ(data);
    if (data.fsHz() == null || q == null || (box != null && box.fbHz() != null)) {
      return null;
    }
    String at = plan.index().partAt(driver) + "/driver";
    double alpha =
        box == null || data.vasL() == null
            ? 0
            : ThieleSmall.COMPLIANCE_RATIO.at(data.vasL(), box.volumeL() * box.fill());
    return plan.made(
        new SoundSource.RollOff(
            ThieleSmall.IN_CLOSED_BOX.at(data.fsHz(), alpha),
            ThieleSmall.IN_CLOSED_BOX.at(q, alpha)),
        at);
  }

  private static Double totalQ(Driver data) {
    return data.qts() == null && data.qms() != null && data.qes() != null
        ? (Double) ThieleSmall.TOTAL_Q.at(data.qms(), data.qes())
        : data.qts();
  }
}
