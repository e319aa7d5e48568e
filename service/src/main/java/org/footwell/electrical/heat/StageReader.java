package org.footwell.electrical.heat;

import org.footwell.calculation.Run;
import org.footwell.electrical.heat.AmplifierHeatRequest.ChannelStage;
import org.footwell.electrical.heat.AmplifierHeatRequest.Topology;
import org.footwell.parts.ClassD;
import org.footwell.parts.OutputClass;

/** Reads the output stage of a channel, and refuses losses that cannot be those of one. */
final class StageReader {

  private StageReader() {}

  /** The stage of a channel, or a fault in the run. */
  static LossyStage read(ChannelStage channel, String at, Run run) {
    double halves = channel.topology() == Topology.BRIDGED_SPLIT_RAILS ? 2 : 1;
    double rail = halves * channel.railV();
    double across =
        channel.topology() == Topology.SINGLE_SUPPLY_BRIDGE ? channel.railV() : 2 * channel.railV();
    double swing = run.apply(LossyStage.FULL_SWING, rail, halves * channel.dropV());
    double factor = run.apply(LossyStage.POWER_FACTOR, channel.phaseDeg());
    Double quiescent = channel.quiescentCurrentA();
    ClassD losses = channel.classD();
    return LossyStageBuilder.builder()
        .railV(rail)
        .acrossRailsV(across)
        .fullSwingV(swing)
        .loadOhm(channel.loadOhm())
        .powerFactor(factor)
        .quiescentA(quiescent == null ? 0 : quiescent)
        .switching(channel.outputClass() == OutputClass.CLASS_D)
        .idleLossW(losses == null ? 0 : losses.idleLossW())
        .onOhm(losses == null ? 0 : onOhm(losses, swing, channel.loadOhm(), at, run))
        .build();
  }

  private static double onOhm(ClassD losses, double swing, double load, String at, Run run) {
    if (losses.onOhm() != null) {
      return losses.onOhm();
    }
    double full = swing * swing / (2 * load);
    double resistance =
        run.apply(LossyStage.ON_OHM, full, losses.fullPowerEfficiency(), losses.idleLossW(), load);
    if (resistance < 0) {
      run.refuse(HeatFault.EFFICIENCY_BELOW_IDLE_LOSS)
          .at(at + "/class_d/full_power_efficiency")
          .given(losses.fullPowerEfficiency())
          .allowed(RoundedDown.atMost(full / (full + losses.idleLossW()), ""))
          .with("power", full)
          .with("idle", losses.idleLossW());
    }
    return resistance;
  }
}
