package org.footwell.electrical.heat;

import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.electrical.heat.AmplifierHeatRequest.ChannelStage;
import org.footwell.parts.ClassD;
import org.footwell.parts.OutputClass;

/** What a stage loses at full power is not less than without signal. */
@Check.Of(
    value = {"output_class", "topology", "rail_v", "drop_v", "load_ohm", "class_d"},
    says =
        "class_d.full_power_efficiency is at most P/(P + class_d.idle_loss_w), where P is the power"
            + " at full swing into load_ohm as a resistance.")
final class EfficiencyOfLosses implements Check<ChannelStage> {

  @Override
  public void check(ChannelStage channel, Refusing to) {
    ClassD losses = channel.classD();
    boolean asked =
        channel.outputClass() == OutputClass.CLASS_D
            && losses != null
            && losses.onOhm() == null
            && losses.fullPowerEfficiency() != null;
    if (!asked || channel.dropV() >= channel.railV()) {
      return; // the latter is told by the rule
    }
    double swing = StageReader.swingV(channel, Arithmetic.SILENT);
    if (StageReader.onOhm(channel, swing, Arithmetic.SILENT) < 0) {
      double full = StageReader.fullPowerW(channel, swing);
      to.refuse(HeatFault.EFFICIENCY_BELOW_IDLE_LOSS)
          .at("/class_d/full_power_efficiency")
          .given(losses.fullPowerEfficiency())
          .allowed(RoundedDown.atMost(full / (full + losses.idleLossW()), ""))
          .with("power", full)
          .with("idle", losses.idleLossW());
    }
  }
}
