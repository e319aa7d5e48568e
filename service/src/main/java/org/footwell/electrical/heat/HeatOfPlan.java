package org.footwell.electrical.heat;

import java.util.List;
import org.footwell.electrical.heat.AmplifierHeatRequest.ChannelStage;
import org.footwell.electrical.heat.AmplifierHeatRequest.Topology;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.Rails;
import org.footwell.parts.plan.PlanReader;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.physics.Electricity;

/** The heat of an amplifier of a plan, with what hangs on its outputs at rated impedance. */
final class HeatOfPlan {

  private final PlanReader plan;
  private final PlannedAmplifier amplifier;
  private final PlannedAmplifier.Draw draw;
  private final String at;

  HeatOfPlan(PlanReader plan) {
    this.plan = plan;
    this.at = plan.about().pointer();
    this.amplifier = plan.plan().amplifiers().get(plan.about().index());
    this.draw = plan.poses(amplifier.draw(), at + "/draw");
  }

  AmplifierHeatRequest request() {
    List<ChannelStage> channels =
        plan.index().channelsOf(plan.about().index()).stream().map(this::channel).toList();
    plan.called("/channels", "/channels");
    return AmplifierHeatRequestBuilder.builder()
        .supplyV(plan.needs(plan.operatingV(plan.about().index(), "/supply_v"), "/supply"))
        .amplifier(
            plan.made(
                AmplifierBuilder.builder()
                    .converterEfficiency(draw == null ? null : draw.converterEfficiency())
                    .supplyRegulated(amplifier.supplyRegulated())
                    .build(),
                at + "/draw",
                at))
        .noiseCrestFactorDb(plan.crestFactorDb("/noise_crest_factor_db"))
        .channels(channels.isEmpty() ? null : channels)
        .build();
  }

  /**
   * A channel. The rail under load is what the clean sine needs of it; of an output known by its ratings
   * only that is known, and it is taken for the rail, which tells a little less heat than there is.
   */
  private ChannelStage channel(int channel) {
    boolean bridged = plan.plan().channels().get(channel).bridged();
    Rails rails = plan.index().outputs(channel).rails();
    boolean single = rails != null && rails.kind() == Rails.Kind.SINGLE_SUPPLY_BRIDGE;
    double drop = rails == null ? 0 : rails.dropV();
    double halves = bridged && !single ? 2 : 1;
    double clean = plan.figures().outputV(channel);
    return plan.made(
        AmplifierHeatRequestChannelStageBuilder.builder()
            .name(plan.plan().channels().get(channel).id())
            .outputClass(draw == null ? null : draw.outputClass())
            .topology(
                single
                    ? Topology.SINGLE_SUPPLY_BRIDGE
                    : bridged ? Topology.BRIDGED_SPLIT_RAILS : Topology.SPLIT_RAILS)
            .railV(Electricity.PEAK_VOLTAGE.at(clean) / halves + drop)
            .dropV(drop)
            .loadOhm(plan.figures().loadOhm(channel))
            .quiescentCurrentA(draw == null ? null : draw.quiescentCurrentA())
            .classD(draw == null ? null : draw.classD())
            .build(),
        at + "/draw",
        plan.outputsAt(channel) + "/rails",
        PlanReader.channelAt(channel));
  }
}
