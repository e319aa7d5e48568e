package org.footwell.electrical.heat;

import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.electrical.heat.AmplifierHeatResult.ChannelHeat;
import org.footwell.electrical.heat.Supply.Drawn;

/** What is said about the outcome. */
final class HeatRules {

  /** Below this crest factor Gaussian noise is visibly cut off at its peaks. */
  private static final double GAUSSIAN_CREST_DB = 9;

  /** Step-up converters of the trade reach 0.75 to 0.92: common practice. */
  private static final double OPTIMISTIC_EFFICIENCY = 0.95;

  /** Part of the battery voltage that may get lost on the way: common practice. */
  private static final double USUAL_LOSS = 0.05;

  /** More heat than into a resistance that is worth a word. */
  private static final double WORTH_A_WORD = 1.05;

  /** Class D stages of the trade reach 0.85 to 0.95 at full swing: common practice. */
  private static final double OPTIMISTIC_CLASS_D = 0.97;

  /** Largest fuse-link for road vehicles, A: bolt-down strips of ISO 8820-5. */
  private static final double LARGEST_FUSE_A = 500;

  private HeatRules() {}

  static void judge(
      AmplifierHeatRequest q,
      List<LossyStage> stages,
      List<ChannelHeat> channels,
      Drawn sine,
      Run run) {
    for (int i = 0; i < stages.size(); i++) {
      judge(stages.get(i), channels.get(i), "/channels/" + i, run);
    }
    if (q.noiseCrestFactorDb() < GAUSSIAN_CREST_DB) {
      run.find(HeatFinding.NOISE_CLIPPED)
          .at("/noise_crest_factor_db")
          .value(q.noiseCrestFactorDb())
          .limit(GAUSSIAN_CREST_DB);
    }
    boolean stepsUp = stages.stream().anyMatch(stage -> stage.acrossRailsV() > q.supplyV());
    if (stepsUp && q.amplifier().converterEfficiency() > OPTIMISTIC_EFFICIENCY) {
      run.find(HeatFinding.CONVERTER_OPTIMISTIC)
          .at("/amplifier/converter_efficiency")
          .value(q.amplifier().converterEfficiency())
          .limit(OPTIMISTIC_EFFICIENCY);
    }
    if (sine.currentA() > LARGEST_FUSE_A) {
      run.find(HeatFinding.CURRENT_BEYOND_FUSES)
          .at("/channels")
          .value(sine.currentA())
          .limit(LARGEST_FUSE_A);
    }
    double least = (1 - USUAL_LOSS) * q.supplyV();
    if (sine.terminalV() < least) {
      run.find(q.amplifier().supplyRegulated() ? HeatFinding.SUPPLY_SINKS : HeatFinding.RAILS_SINK)
          .at("/supply_cable_ohm")
          .value(sine.terminalV())
          .limit(least)
          .with("current", sine.currentA())
          .with("percent", 100 * (1 - sine.terminalV() / q.supplyV()));
    }
  }

  private static void judge(LossyStage stage, ChannelHeat channel, String at, Run run) {
    if (2 * stage.quiescentA() > stage.peakOutputA()) {
      run.find(HeatFinding.QUIESCENT_HIGH)
          .at(at + "/quiescent_current_a")
          .value(stage.quiescentA())
          .limit(stage.peakOutputA() / 2);
    }
    if (stage.switching() && stage.fullSwingEfficiency() > OPTIMISTIC_CLASS_D) {
      run.find(HeatFinding.CLASS_D_OPTIMISTIC)
          .at(at + "/class_d")
          .value(stage.fullSwingEfficiency())
          .limit(OPTIMISTIC_CLASS_D);
    }
    LossyStage resistive = stage.intoResistance();
    double worst = resistive.worstSwingRatio();
    double heat = resistive.heatWithSine(worst * resistive.railV());
    if (channel.worstHeatW() > WORTH_A_WORD * heat) {
      run.find(HeatFinding.REACTIVE_WORST_CASE)
          .at(at + "/phase_deg")
          .value(channel.worstHeatW())
          .limit(heat)
          .with("swing", channel.worstSwingRatio())
          .with("resistive", worst);
    }
  }
}
