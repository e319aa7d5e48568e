package org.footwell.electrical.heat;

import org.footwell.calculation.Arithmetic;
import org.footwell.electrical.heat.AmplifierHeatRequest.ChannelStage;
import org.footwell.electrical.heat.AmplifierHeatRequest.Topology;
import org.footwell.parts.ClassD;
import org.footwell.parts.OutputClass;

/** Reads the output stage of a channel. */
final class StageReader {

  private StageReader() {}

  static LossyStage read(ChannelStage channel, Arithmetic arithmetic) {
    double across =
        channel.topology() == Topology.SINGLE_SUPPLY_BRIDGE ? channel.railV() : 2 * channel.railV();
    double swing = swingV(channel, arithmetic);
    double factor = arithmetic.apply(LossyStage.POWER_FACTOR, channel.phaseDeg());
    Double quiescent = channel.quiescentCurrentA();
    ClassD losses = channel.classD();
    return LossyStageBuilder.builder()
        .railV(halves(channel) * channel.railV())
        .acrossRailsV(across)
        .fullSwingV(swing)
        .loadOhm(channel.loadOhm())
        .powerFactor(factor)
        .quiescentA(quiescent == null ? 0 : quiescent)
        .switching(channel.outputClass() == OutputClass.CLASS_D)
        .idleLossW(losses == null ? 0 : losses.idleLossW())
        .onOhm(losses == null ? 0 : onOhm(channel, swing, arithmetic))
        .build();
  }

  private static double halves(ChannelStage channel) {
    return channel.topology() == Topology.BRIDGED_SPLIT_RAILS ? 2 : 1;
  }

  /** The largest clean swing, V peak. */
  static double swingV(ChannelStage channel, Arithmetic arithmetic) {
    double halves = halves(channel);
    return arithmetic.apply(
        LossyStage.FULL_SWING, halves * channel.railV(), halves * channel.dropV());
  }

  /** Power of a sine of a swing into a resistance, W. */
  static double fullPowerW(ChannelStage channel, double swing) {
    return swing * swing / (2 * channel.loadOhm());
  }

  /** What is in the way of the current of a class D stage, ohm, as given or by its efficiency. */
  static double onOhm(ChannelStage channel, double swing, Arithmetic arithmetic) {
    ClassD losses = channel.classD();
    return losses.onOhm() != null
        ? losses.onOhm()
        : arithmetic.apply(
            LossyStage.ON_OHM,
            fullPowerW(channel, swing),
            losses.fullPowerEfficiency(),
            losses.idleLossW(),
            channel.loadOhm());
  }
}
