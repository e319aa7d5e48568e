package org.footwell.electrical.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.footwell.electrical.heat.AmplifierHeatRequest.ChannelStage;
import org.footwell.electrical.heat.AmplifierHeatRequest.Topology;
import org.footwell.electrical.heat.AmplifierHeatResult.ChannelHeat;
import org.footwell.electrical.heat.AmplifierHeatResult.Draw;
import org.footwell.electrical.heat.AmplifierHeatResult.TotalDraw;
import org.footwell.parts.ClassD;

class AmplifierHeatProperties {

  private static ChannelHeat channel(double sineSwing, ChannelStage channel) {
    return Requests.result(Requests.swing(sineSwing, channel)).channels().get(0);
  }

  private static void assertClose(double expected, double actual) {
    assertEquals(expected, actual, 1e-9 * Math.abs(expected) + 1e-12);
  }

  @Property
  void noSineIsHotterThanTheWorst(
      @ForAll @DoubleRange(min = 5, max = 150) double rail,
      @ForAll @DoubleRange(min = 0, max = 4.9) double drop,
      @ForAll @DoubleRange(min = 0.5, max = 16) double load,
      @ForAll @DoubleRange(min = -90, max = 90) double phase,
      @ForAll @Scale(4) @DoubleRange(min = 0.0001, max = 5) double quiescent,
      @ForAll @Scale(3) @DoubleRange(min = 0.001, max = 1) double swing) {
    ChannelHeat b = channel(swing, Requests.classB(rail, drop, load, phase));
    assertTrue(b.sine().heatW() <= b.worstHeatW() * (1 + 1e-12), b::toString);
    ChannelHeat ab = channel(swing, Requests.classAb(rail, drop, load, phase, quiescent));
    assertTrue(ab.sine().heatW() <= ab.worstHeatW() * (1 + 1e-9), ab::toString);
    assertTrue(ab.idle().heatW() <= ab.worstHeatW() * (1 + 1e-9), ab::toString);
  }

  @Property
  void hardlyAnyQuiescentCurrentIsClassB(
      @ForAll @DoubleRange(min = 5, max = 150) double rail,
      @ForAll @DoubleRange(min = 0.5, max = 16) double load,
      @ForAll @DoubleRange(min = -90, max = 90) double phase) {
    ChannelHeat b = channel(1, Requests.classB(rail, 1, load, phase));
    ChannelHeat ab = channel(1, Requests.classAb(rail, 1, load, phase, 0.0001));
    assertEquals(b.sine().railPowerW(), ab.sine().railPowerW(), 1e-3 * b.sine().railPowerW());
    assertEquals(b.noise().railPowerW(), ab.noise().railPowerW(), 2e-2 * b.noise().railPowerW());
    assertTrue(ab.sine().railPowerW() >= b.sine().railPowerW());
    assertTrue(ab.musicEighth().railPowerW() >= b.musicEighth().railPowerW());
  }

  @Property
  void theBridgeIsTwoChannelsOnHalfTheLoad(
      @ForAll @DoubleRange(min = 5, max = 150) double rail,
      @ForAll @DoubleRange(min = 0, max = 4.9) double drop,
      @ForAll @DoubleRange(min = 1, max = 16) double load) {
    ChannelHeat bridge =
        channel(1, Requests.classB(Topology.BRIDGED_SPLIT_RAILS, rail, drop, load));
    ChannelHeat half = channel(1, Requests.classB(Topology.SPLIT_RAILS, rail, drop, load / 2));
    assertClose(2 * half.fullPowerW(), bridge.fullPowerW());
    assertClose(2 * half.worstHeatW(), bridge.worstHeatW());
    assertClose(2 * half.musicEighth().railPowerW(), bridge.musicEighth().railPowerW());
    assertClose(2 * half.sine().railCurrentA(), bridge.sine().railCurrentA());
    assertClose(half.peakOutputCurrentA(), bridge.peakOutputCurrentA());
  }

  @Property
  void theSignOfThePhaseDoesNotMatterAndReactanceOnlyHeats(
      @ForAll @DoubleRange(min = 5, max = 150) double rail,
      @ForAll @DoubleRange(min = 0.5, max = 16) double load,
      @ForAll @DoubleRange(min = 0, max = 90) double phase) {
    ChannelHeat lagging = channel(1, Requests.classB(rail, 1, load, phase));
    assertEquals(lagging, channel(1, Requests.classB(rail, 1, load, -phase)));
    ChannelHeat resistive = channel(1, Requests.classB(rail, 1, load, 0));
    assertClose(resistive.sine().railPowerW(), lagging.sine().railPowerW());
    assertTrue(lagging.worstHeatW() >= resistive.worstHeatW() * (1 - 1e-12));
    assertTrue(lagging.worstSwingRatio() >= resistive.worstSwingRatio());
  }

  @Property
  void nothingIsLostBetweenBatteryLoadAndHeat(
      @ForAll @DoubleRange(min = 5, max = 60) double rail,
      @ForAll @DoubleRange(min = 2, max = 16) double load,
      @ForAll @DoubleRange(min = -90, max = 90) double phase,
      @ForAll @Scale(4) @DoubleRange(min = 0.0001, max = 1) double quiescent,
      @ForAll @DoubleRange(min = 0, max = 5) double idleLoss,
      @ForAll @DoubleRange(min = 0, max = 0.3) double onOhm) {
    AmplifierHeatResult result =
        Requests.result(
            Requests.of(
                Requests.times(3, Requests.classAb(rail, 1, load, phase, quiescent)),
                Requests.classD(rail, load, phase, new ClassD(idleLoss, onOhm, null))));
    List<TotalDraw> totals =
        List.of(
            result.total().idle(),
            result.total().sine(),
            result.total().noise(),
            result.total().musicEighth(),
            result.total().musicThird());
    for (TotalDraw total : totals) {
      assertClose(total.outputPowerW() + total.heatW(), 13.8 * total.batteryCurrentA());
      assertTrue(total.stageHeatW() >= 0);
    }
    Draw ab = result.channels().get(0).musicThird();
    Draw d = result.channels().get(1).musicThird();
    assertClose(
        3 * ab.batteryCurrentA() + d.batteryCurrentA(),
        result.total().musicThird().batteryCurrentA());
  }

  @Property
  void constantPowerStaysConstantBehindAnyCable(
      @ForAll @DoubleRange(min = 0, max = 0.05) double cable,
      @ForAll @DoubleRange(min = 10, max = 40) double rail) {
    ChannelStage channel = Requests.classB(rail, 1, 4, 0);
    TotalDraw sine = Requests.result(Requests.behind(cable, true, channel)).total().sine();
    assertClose(sine.batteryPowerW(), sine.batteryCurrentA() * sine.terminalV());
    assertClose(13.8, sine.terminalV() + cable * sine.batteryCurrentA());
  }
}
