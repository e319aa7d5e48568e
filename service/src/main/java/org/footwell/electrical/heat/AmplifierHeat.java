package org.footwell.electrical.heat;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.electrical.heat.AmplifierHeatRequest.ChannelStage;
import org.footwell.electrical.heat.AmplifierHeatResult.ChannelHeat;
import org.footwell.electrical.heat.AmplifierHeatResult.Draw;
import org.footwell.electrical.heat.Duty.StageDraw;
import org.footwell.electrical.heat.Supply.Drawn;
import org.footwell.parts.Safety;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.physics.ConstantPower;
import org.footwell.physics.Decibels;

/** What an amplifier takes from the battery and turns into heat, for sines, noise and music. */
public final class AmplifierHeat
    implements Calculation<AmplifierHeatRequest, AmplifierHeatResult>,
        AskOfPlan<AmplifierHeatRequest> {

  private static final Source PROGRAMME =
      Source.of(
          "One eighth of full power: US 16 CFR 432.3(c), and with noise IEC 60065 (the latter from"
              + " memory); one third was the rule's older figure (Federal Register, 1998 and 1999)"
              + " and is kept as music driven hard: common practice, no source");

  private static final Card<AmplifierHeatRequest, AmplifierHeatResult> CARD =
      Card.of("amplifier-heat", AmplifierHeatRequest.class, AmplifierHeatResult.class)
          .title("Supply current and heat of an amplifier")
          .purpose(
              "What does the amplifier take from the battery and what turns into heat, per channel"
                  + " and in total: without signal, with a sine, with noise of a given crest factor"
                  + " and with music at one eighth and one third of full power.")
          .example(
              """
              {"supply_v": 13.8, "amplifier": {"converter_efficiency": 0.85},
               "channels": [
                 {"name": "doors", "channel_count": 4, "output_class": "class_ab",
                  "rail_v": 32, "drop_v": 3, "load_ohm": 3.2, "phase_deg": 40,
                  "quiescent_current_a": 0.05},
                 {"name": "subwoofer", "output_class": "class_d",
                  "rail_v": 60, "drop_v": 3, "load_ohm": 4,
                  "class_d": {"idle_loss_w": 8, "full_power_efficiency": 0.88}}]}
              """)
          .sources(
              LossyStage.CLASS_B,
              MeanCurrent.HALF_NORMAL,
              LossyStage.TRANSLINEAR,
              LossyStage.TWO_PART_LOSS,
              ConstantPower.KIRCHHOFF,
              ConstantPower.MATCHED_LOAD,
              PROGRAMME,
              DEFINITION,
              Source.COMMON_PRACTICE)
          .limits(
              "Music is taken as Gaussian noise of the same power; recordings differ, and music that"
                  + " clips is somewhat flatter than that.",
              "Rails are constant while the signal plays and belong to one class: stages that switch"
                  + " between rails take less.",
              "Classes B and AB take only what their output stages take: drivers, protection, fans"
                  + " and the converter without load come on top.",
              "The converter has one efficiency at all loads; at small ones it is worse.",
              "The phase angle is that of one frequency: take the worst of the load, for wide-band"
                  + " signals a typical one.")
          .findings(HeatFinding.values())
          .refusals(HeatFault.values())
          .cautions(Safety.HEAT, Safety.FIRE, Safety.BATTERY)
          .build();

  @Override
  public Card<AmplifierHeatRequest, AmplifierHeatResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.AMPLIFIER);
  }

  @Override
  public AmplifierHeatRequest ask(PlanReader plan) {
    return new HeatOfPlan(plan).request();
  }

  @Override
  public AmplifierHeatResult compute(AmplifierHeatRequest q, Run run) {
    List<LossyStage> stages =
        q.channels().stream().map(channel -> StageReader.read(channel, run)).toList();
    Supply supply =
        new Supply(
            q.supplyV(),
            q.supplyCableOhm(),
            q.amplifier().converterEfficiency(),
            q.amplifier().supplyRegulated());
    Map<Duty, List<StageDraw>> draws = new EnumMap<>(Duty.class);
    Map<Duty, Drawn> drawn = new EnumMap<>(Duty.class);
    for (Duty duty : Duty.values()) {
      run.checkDeadline();
      draws.put(duty, draws(duty, q, stages, run));
      double rail = HeatTotals.sum(q, draws.get(duty), StageDraw::railW);
      drawn.put(duty, supply.draw(rail, duty, run));
    }
    run.requireNoFaults();

    List<ChannelHeat> channels = new ArrayList<>();
    for (int i = 0; i < stages.size(); i++) {
      channels.add(channel(q.channels().get(i), stages.get(i), i, draws, drawn, run));
    }
    HeatRules.judge(q, stages, channels, drawn.get(Duty.SINE), run);
    return new AmplifierHeatResult(HeatTotals.of(q, supply, channels, draws, drawn), channels);
  }

  private static List<StageDraw> draws(
      Duty duty, AmplifierHeatRequest q, List<LossyStage> stages, Run run) {
    double crest = Decibels.toAmplitude(q.noiseCrestFactorDb());
    double level = duty.rmsOverFullSwing(q.sineSwingRatio(), crest);
    List<StageDraw> draws = new ArrayList<>();
    for (LossyStage stage : stages) {
      draws.add(duty.draw(stage, level * stage.fullSwingV(), run));
    }
    return draws;
  }

  private static ChannelHeat channel(
      ChannelStage channel,
      LossyStage stage,
      int index,
      Map<Duty, List<StageDraw>> draws,
      Map<Duty, Drawn> drawn,
      Run run) {
    double worst = worstSwing(stage, run);
    Map<Duty, Draw> by = new EnumMap<>(Duty.class);
    draws.forEach((duty, all) -> by.put(duty, draw(all.get(index), drawn.get(duty))));
    return AmplifierHeatResultChannelHeatBuilder.builder()
        .name(channel.name())
        .channelCount(channel.channelCount())
        .fullSwingV(stage.fullSwingV())
        .fullPowerW(stage.fullSwingV() * stage.peakOutputA() / 2 * stage.powerFactor())
        .worstSwingRatio(worst)
        .worstHeatW(worstHeat(stage, worst, run))
        .peakOutputCurrentA(stage.peakOutputA())
        .peakRailCurrentA(stage.peakRailA())
        .peakRailPowerW(stage.peakRailPowerW())
        .idle(by.get(Duty.IDLE))
        .sine(by.get(Duty.SINE))
        .noise(by.get(Duty.NOISE))
        .musicEighth(by.get(Duty.MUSIC_EIGHTH))
        .musicThird(by.get(Duty.MUSIC_THIRD))
        .build();
  }

  /** Closed forms are worth a line in the workings. */
  private static double worstSwing(LossyStage stage, Run run) {
    return stage.closedForm()
        ? run.apply(LossyStage.WORST_SWING, stage.fullSwingV() / stage.railV(), stage.powerFactor())
        : stage.worstSwingRatio();
  }

  private static double worstHeat(LossyStage stage, double worst, Run run) {
    return stage.closedForm()
        ? run.apply(
            LossyStage.CLASS_B_HEAT, stage.railV(), stage.loadOhm(), worst, stage.powerFactor())
        : stage.heatWithSine(worst * stage.railV());
  }

  /** A channel's share of the battery current is its share of the rails' power. */
  private static Draw draw(StageDraw stage, Drawn all) {
    double share = all.railW() == 0 ? 0 : stage.railW() / all.railW();
    return new Draw(
        stage.outputW(), stage.railW(), stage.railA(), share * all.currentA(), stage.heatW());
  }
}
