package org.footwell.vehicle.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.footwell.physics.Phasor;
import org.footwell.vehicle.chain.ChainCircuits.Twice;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole channels and a sagging supply, as ngspice works them out now. */
@Tag("workbench")
class ChainCircuitIT {

  /** The same circuits, solved in other ways. */
  private static final double RATIO = 1e-8;

  /** Points of a sweep of three decades, seven each. */
  private static final int POINTS = 22;

  @TempDir Path work;

  @Test
  void aPassiveTwoWayWithItsDriversInBoxes() throws IOException, InterruptedException {
    agree(ChainCircuits.twoWay());
  }

  @Test
  void twoDriversOfTwoCoilsAcrossABridge() throws IOException, InterruptedException {
    agree(ChainCircuits.bridged());
  }

  @Test
  void oneOfTwoVoiceCoilsMovesTheWholeCone() throws IOException, InterruptedException {
    agree(ChainCircuits.oneCoilOfTwo());
  }

  private void agree(Twice twice) throws IOException, InterruptedException {
    List<String> quantities = new ArrayList<>(List.of("v(amp)", "i(vsense)", "v(net)"));
    for (String[] nodes : twice.coilNodes()) {
      quantities.add(
          nodes[1].equals("0") ? "v(" + nodes[0] + ")" : "v(" + nodes[0] + "," + nodes[1] + ")");
    }
    List<Simulator.Point> points = Simulator.sweep(twice.netlist(), quantities, work);
    assertEquals(POINTS, points.size());
    for (Simulator.Point point : points) {
      SolvedLoudspeaker solved = twice.circuit().loudspeaker().at(point.hz());
      Phasor ohm = twice.circuit().terminalOhm(solved.ohm());
      Phasor volts = twice.circuit().networkV(solved.ohm());
      List<Phasor> theirs = point.values();
      Phasor current = theirs.get(1);
      assertSame(theirs.get(0).over(current), ohm, point.hz());
      assertSame(theirs.get(2).over(current), solved.ohm(), point.hz());
      assertSame(theirs.get(0), volts.times(ohm.over(solved.ohm())), point.hz());
      assertSame(theirs.get(2), volts, point.hz());
      for (int i = 0; i < twice.coilNodes().size(); i++) {
        assertSame(theirs.get(3 + i), solved.volts()[i].times(volts), point.hz());
      }
    }
  }

  private static void assertSame(Phasor expected, Phasor actual, double hz) {
    assertEquals(
        0,
        actual.minus(expected).modulus() / expected.modulus(),
        RATIO,
        () -> expected + " is not " + actual + " at " + hz + " Hz");
  }

  @Test
  void twoAmplifiersOfConstantPowerOnABattery() throws IOException, InterruptedException {
    PowerSource battery = PowerSource.battery(12.4, 0.008, 4);
    agree(battery, new double[] {420, 900}, new double[] {Double.NaN, Double.NaN});
  }

  @Test
  void oneOfConstantPowerAndOneThatActsAsAResistance() throws IOException, InterruptedException {
    PowerSource battery = PowerSource.battery(12.4, 0.008, 4);
    agree(battery, new double[] {420, 900}, new double[] {Double.NaN, 14.4});
  }

  @Test
  void beyondWhatTheAlternatorGives() throws IOException, InterruptedException {
    PowerSource running = PowerSource.running(14.2, 110, 45, 12.4, 0.008);
    agree(running, new double[] {600, 700}, new double[] {Double.NaN, Double.NaN});
  }

  private void agree(PowerSource source, double[] watts, double[] atV)
      throws IOException, InterruptedException {
    double[] loops = {0.0153, 0.0246};
    PowerSource.Load[] loads = new PowerSource.Load[2];
    List<String> netlist =
        new ArrayList<>(
            List.of(
                "* a battery and two amplifiers",
                "vopen open 0 dc " + source.openV(),
                "rbattery open battery " + source.sourceOhm()));
    for (int i = 0; i < 2; i++) {
      loads[i] = new PowerSource.Load(watts[i], atV[i], loops[i]);
      netlist.add("vsense%d battery s%d 0".formatted(i, i));
      netlist.add("rloop%d s%d load%d %s".formatted(i, i, i, loops[i]));
      netlist.add(
          Double.isNaN(atV[i])
              ? "bload%d load%d 0 i=%s/v(load%d)".formatted(i, i, watts[i], i)
              : "rload%d load%d 0 %s".formatted(i, i, atV[i] * atV[i] / watts[i]));
    }
    netlist.add(".nodeset v(battery)=12 v(load0)=12 v(load1)=12 v(s0)=12 v(s1)=12");
    double[] theirs =
        Simulator.operatingPoint(
            netlist,
            List.of("v(battery)", "i(vsense0)", "i(vsense1)", "v(load0)", "v(load1)"),
            work);
    PowerSource.Meeting ours = source.meet(loads);
    assertEquals(theirs[0], ours.batteryV(), RATIO * theirs[0]);
    for (int i = 0; i < 2; i++) {
      assertEquals(theirs[1 + i], ours.currentA().get(i), RATIO * theirs[1 + i]);
      assertEquals(theirs[3 + i], ours.loadV().get(i), RATIO * theirs[3 + i]);
    }
  }
}
