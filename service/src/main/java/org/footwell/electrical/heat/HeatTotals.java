package org.footwell.electrical.heat;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.footwell.electrical.heat.AmplifierHeatResult.ChannelHeat;
import org.footwell.electrical.heat.AmplifierHeatResult.Total;
import org.footwell.electrical.heat.AmplifierHeatResult.TotalDraw;
import org.footwell.electrical.heat.Duty.StageDraw;
import org.footwell.electrical.heat.Supply.Drawn;

/** All channels together. */
final class HeatTotals {

  private HeatTotals() {}

  static Total of(
      AmplifierHeatRequest q,
      Supply supply,
      List<ChannelHeat> channels,
      Map<Duty, List<StageDraw>> draws,
      Map<Duty, Drawn> drawn) {
    double peak = sum(q, channels, ChannelHeat::peakRailPowerW);
    return new Total(
        draw(Duty.IDLE, q, draws, drawn),
        draw(Duty.SINE, q, draws, drawn),
        draw(Duty.NOISE, q, draws, drawn),
        draw(Duty.MUSIC_EIGHTH, q, draws, drawn),
        draw(Duty.MUSIC_THIRD, q, draws, drawn),
        sum(q, channels, ChannelHeat::worstHeatW),
        peak,
        peak / supply.efficiency() / supply.voltageOfPower(drawn.get(Duty.SINE)));
  }

  private static TotalDraw draw(
      Duty duty, AmplifierHeatRequest q, Map<Duty, List<StageDraw>> draws, Map<Duty, Drawn> drawn) {
    Drawn all = drawn.get(duty);
    double output = sum(q, draws.get(duty), StageDraw::outputW);
    double stages = sum(q, draws.get(duty), StageDraw::heatW);
    double converter = all.powerW() - all.railW();
    return new TotalDraw(
        output,
        all.railW(),
        all.powerW(),
        all.currentA(),
        all.terminalV(),
        stages,
        converter,
        stages + converter);
  }

  /** The sum over all channels, entries counted as often as they stand for channels. */
  static <T> double sum(AmplifierHeatRequest q, List<T> perEntry, ToDoubleFunction<T> of) {
    double sum = 0;
    for (int i = 0; i < perEntry.size(); i++) {
      sum += q.channels().get(i).channelCount() * of.applyAsDouble(perEntry.get(i));
    }
    return sum;
  }
}
