package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.footwell.calculation.Rebase;
import org.footwell.calculation.Run;
import org.footwell.electrical.heat.AmplifierHeat;
import org.footwell.electrical.heat.AmplifierHeatRequest;
import org.footwell.electrical.heat.AmplifierHeatRequest.Topology;
import org.footwell.electrical.heat.AmplifierHeatRequestChannelStageBuilder;
import org.footwell.electrical.heat.AmplifierHeatResult;
import org.footwell.electrical.supply.CableFinding;
import org.footwell.electrical.supply.SupplyCable;
import org.footwell.electrical.supply.SupplyCableRequest;
import org.footwell.electrical.supply.SupplyCableRequestBuilder;
import org.footwell.electrical.supply.SupplyCableResult;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.CableBuilder;
import org.footwell.parts.Rails;
import org.footwell.vehicle.PlanReviewResult.AmplifierLine;

/** What each amplifier takes from the battery, its heat, and the cable and fuse that feed it. */
final class AmplifierReview {

  private static final AmplifierHeat AMPLIFIER_HEAT = new AmplifierHeat();
  private static final SupplyCable SUPPLY_CABLE = new SupplyCable();

  private final VehiclePlan plan;
  private final Resolved resolved;
  private final Run run;
  private final List<ChannelReview.Powered> powered;
  private final List<Double> lowestOhm;

  AmplifierReview(
      VehiclePlan plan,
      Resolved resolved,
      Run run,
      List<ChannelReview.Powered> powered,
      List<Double> lowestOhm) {
    this.plan = plan;
    this.resolved = resolved;
    this.run = run;
    this.powered = powered;
    this.lowestOhm = lowestOhm;
  }

  /** One line for every amplifier whose draw and feed are given and that drives a channel. */
  List<AmplifierLine> lines() {
    List<AmplifierLine> lines = new ArrayList<>();
    for (int i = 0; i < plan.amplifiers().size(); i++) {
      VehiclePlan.Amplifier amplifier = plan.amplifiers().get(i);
      if (amplifier.draw() != null && amplifier.feed() != null && !channelsOf(i).isEmpty()) {
        line(i).ifPresent(lines::add);
      }
    }
    return lines;
  }

  private List<Integer> channelsOf(int amplifier) {
    List<Integer> channels = new ArrayList<>();
    for (int c = 0; c < plan.channels().size(); c++) {
      if (resolved.amplifierOf(c) == amplifier) {
        channels.add(c);
      }
    }
    return channels;
  }

  private Optional<AmplifierLine> line(int index) {
    VehiclePlan.Amplifier amplifier = plan.amplifiers().get(index);
    return run.call(AMPLIFIER_HEAT, heat(index), heatPlaces(index))
        .map(AmplifierHeatResult::total)
        .map(total -> remarked(index, total))
        .flatMap(
            total ->
                run.call(
                        SUPPLY_CABLE,
                        cable(amplifier.feed(), total),
                        cablePlaces(index, amplifier.id()))
                    .map(cable -> line(amplifier, total, cable)));
  }

  private AmplifierHeatResult.Total remarked(int index, AmplifierHeatResult.Total total) {
    if (!plan.amplifiers().get(index).feed().sustainedBass()) {
      run.find(PlanFinding.SUPPLY_FOR_MUSIC)
          .at("/amplifiers/" + index + "/feed")
          .value(total.musicThird().batteryCurrentA())
          .limit(total.sine().batteryCurrentA());
    }
    return total;
  }

  private static AmplifierLine line(
      VehiclePlan.Amplifier amplifier, AmplifierHeatResult.Total total, SupplyCableResult cable) {
    Optional<SupplyCableResult.SizedCable> sized = Optional.ofNullable(cable.metric());
    return new AmplifierLine(
        amplifier.id(),
        total.musicThird().batteryCurrentA(),
        total.musicThird().heatW(),
        total.worstStageHeatW(),
        sized.map(SupplyCableResult.SizedCable::areaMm2).orElse(null),
        sized.map(SupplyCableResult.SizedCable::dropV).orElse(null),
        sized.map(SupplyCableResult.SizedCable::fuseA).orElse(null));
  }

  private AmplifierHeatRequest heat(int index) {
    VehiclePlan.Amplifier amplifier = plan.amplifiers().get(index);
    List<AmplifierHeatRequest.ChannelStage> channels = new ArrayList<>();
    for (int c : channelsOf(index)) {
      channels.add(channel(amplifier.draw(), c));
    }
    return new AmplifierHeatRequest(
        amplifier.feed().supplyV(),
        AmplifierBuilder.builder()
            .converterEfficiency(amplifier.draw().converterEfficiency())
            .supplyRegulated(amplifier.supplyRegulated())
            .build(),
        null,
        null,
        null,
        channels);
  }

  /**
   * A channel as amplifier-heat sees it. Of an output known by its ratings only the largest swing is
   * known; it is taken for the rail, which tells a little less heat than there is.
   */
  private AmplifierHeatRequest.ChannelStage channel(AmplifierSupply.Draw draw, int index) {
    boolean bridged = plan.channels().get(index).bridged();
    Rails rails = resolved.output(index).rails();
    boolean singleSupply = rails != null && rails.kind() == Rails.Kind.SINGLE_SUPPLY_BRIDGE;
    double drop = rails == null ? 0 : rails.dropV();
    double halves = bridged && !singleSupply ? 2 : 1;
    double rail = powered.get(index).power().peakVoltageV() / halves + drop;
    return AmplifierHeatRequestChannelStageBuilder.builder()
        .name(plan.channels().get(index).id())
        .outputClass(draw.outputClass())
        .topology(
            singleSupply
                ? Topology.SINGLE_SUPPLY_BRIDGE
                : bridged ? Topology.BRIDGED_SPLIT_RAILS : Topology.SPLIT_RAILS)
        .railV(rail)
        .dropV(drop)
        .loadOhm(lowest(index))
        .quiescentCurrentA(draw.quiescentCurrentA())
        .classD(draw.classD())
        .build();
  }

  private double lowest(int index) {
    Double lowest = lowestOhm.get(index);
    return lowest == null ? powered.get(index).load().loadOhm() : lowest;
  }

  private Rebase heatPlaces(int index) {
    String at = "/amplifiers/" + index;
    Rebase places =
        Rebase.to(at, plan.amplifiers().get(index).id())
            .from("", at, at + "/draw")
            .from("/amplifier", at, at + "/draw")
            .with("/supply_v", at + "/feed/supply_v");
    List<Integer> channels = channelsOf(index);
    for (int c = 0; c < channels.size(); c++) {
      places
          .with("/channels/" + c, "/channels/" + channels.get(c))
          .from("/channels/" + c, at + "/draw");
    }
    return places;
  }

  private static SupplyCableRequest cable(
      AmplifierSupply.Feed feed, AmplifierHeatResult.Total total) {
    return SupplyCableRequestBuilder.builder()
        .supplyV(feed.supplyV())
        .currentA(total.musicThird().batteryCurrentA())
        .cable(
            CableBuilder.builder()
                .oneWayM(feed.oneWayM())
                .areaMm2(feed.areaMm2())
                .material(feed.material())
                .insulationTemperatureC(feed.insulationTemperatureC())
                .engineSpace(feed.engineSpace())
                .build())
        .returnPath(feed.returnPath())
        .bodyOhm(feed.bodyOhm())
        .permittedDropV(feed.permittedDropV())
        .fuseDistanceM(feed.fuseDistanceM())
        .fullSineA(total.sine().batteryCurrentA())
        .sustainedBass(feed.sustainedBass())
        .amplifierFuseA(feed.amplifierFuseA())
        .build();
  }

  /** The usual cautions of the plan say what comes first. */
  private static Rebase cablePlaces(int index, String id) {
    String at = "/amplifiers/" + index;
    return Rebase.to(at + "/feed", id)
        .with("/current_a", at + "/draw")
        .with("/full_sine_a", at + "/draw")
        .with("/amplifier_fuse_a", at + "/feed/amplifier_fuse_a")
        .from("", at + "/feed")
        .from("/cable", at + "/feed")
        .without(CableFinding.RULES_FIRST);
  }
}
