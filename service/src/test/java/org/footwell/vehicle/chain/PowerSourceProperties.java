package org.footwell.vehicle.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** A battery and two amplifiers meet where a search that only tries voltages finds them. */
class PowerSourceProperties {

  private static final int STEPS = 4000;
  private static final double CLOSE = 1e-8;

  @Property(tries = 300)
  void constantPowersMeetAtTheHighestVoltageThereIs(
      @ForAll @DoubleRange(min = 0.0005, max = 0.1) @Scale(5) double sourceOhm,
      @ForAll @DoubleRange(min = 1, max = 3000) double wattsA,
      @ForAll @DoubleRange(min = 1, max = 3000) double wattsB,
      @ForAll @DoubleRange(min = 0.0005, max = 0.05) @Scale(5) double loopOhm) {
    meet(
        PowerSource.battery(12.4, sourceOhm, 4),
        new PowerSource.Load(wattsA, Double.NaN, loopOhm),
        new PowerSource.Load(wattsB, Double.NaN, loopOhm / 3));
  }

  @Property(tries = 300)
  void aResistanceBesideAConstantPowerMeetsToo(
      @ForAll @DoubleRange(min = 0.0005, max = 0.1) @Scale(5) double sourceOhm,
      @ForAll @DoubleRange(min = 1, max = 1000) double watts,
      @ForAll @DoubleRange(min = 1, max = 12000) double resistance,
      @ForAll @DoubleRange(min = 0.0005, max = 0.05) @Scale(5) double loopOhm) {
    meet(
        PowerSource.battery(12.4, sourceOhm, 4),
        new PowerSource.Load(watts, Double.NaN, loopOhm),
        new PowerSource.Load(resistance, 14.4, loopOhm / 3));
  }

  @Property(tries = 300)
  void resistancesAloneMeetWhereTheirDividerDoes(
      @ForAll @DoubleRange(min = 0.0005, max = 1) @Scale(5) double sourceOhm,
      @ForAll @DoubleRange(min = 1, max = 12000) double watts,
      @ForAll @DoubleRange(min = 0.0005, max = 0.05) @Scale(5) double loopOhm) {
    PowerSource source = PowerSource.battery(12.4, sourceOhm, 4);
    PowerSource.Meeting met =
        source.meet(new PowerSource.Load[] {new PowerSource.Load(watts, 14.4, loopOhm)});
    if (source.openV() > 0) {
      double load = loopOhm + 14.4 * 14.4 / watts;
      assertNotNull(met, "a resistance always finds a voltage");
      double expected = source.openV() * load / (load + sourceOhm);
      assertEquals(expected, met.batteryV(), CLOSE * expected);
    }
  }

  private static void meet(PowerSource source, PowerSource.Load... loads) {
    PowerSource.Meeting met = source.meet(loads);
    Double tried = highest(source, loads);
    if (tried == null) {
      assertNull(met);
      return;
    }
    assertNotNull(met, () -> "there is one at " + tried);
    assertEquals(tried, met.batteryV(), CLOSE * tried);
    for (int i = 0; i < loads.length; i++) {
      assertTrue(met.loadV().get(i) > 0);
    }
  }

  /** From the open voltage down, step by step, until the source gives what is drawn; then halving. */
  private static Double highest(PowerSource source, PowerSource.Load[] loads) {
    double above = source.openV();
    for (int i = 1; i <= STEPS; i++) {
      double below = source.openV() * (1 - (double) i / STEPS);
      double left = left(source, loads, below);
      if (Double.isNaN(left)) {
        return null;
      }
      if (left >= 0) {
        for (int turn = 0; turn < 60; turn++) {
          double middle = (above + below) / 2;
          if (left(source, loads, middle) >= 0) {
            below = middle;
          } else {
            above = middle;
          }
        }
        return above;
      }
      above = below;
    }
    return null;
  }

  /** What the source would give beyond what is drawn at a voltage, V. */
  private static double left(PowerSource source, PowerSource.Load[] loads, double voltage) {
    double drawn = 0;
    for (PowerSource.Load load : loads) {
      drawn += load.current(voltage);
    }
    return source.openV() - source.sourceOhm() * drawn - voltage;
  }
}
