package org.footwell.electrical.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.footwell.electrical.supply.SupplyCableResult.SizedCable;
import org.footwell.parts.ReturnPath;

class SupplyCableProperties {

  private static CableDraft draft(double current, double length) {
    return Cables.standard().currentA(current).oneWayM(length).permittedDropV(0.8);
  }

  @Property
  void whateverIsFoundKeepsEveryLimit(
      @ForAll @DoubleRange(min = 1, max = 200) double current,
      @ForAll @DoubleRange(min = 0.1, max = 8) double length) {
    SizedCable cable = Cables.result(draft(current, length)).metric();
    assertNotNull(cable);
    assertTrue(cable.dropV() <= 0.8 * (1 + 1e-9));
    assertTrue(cable.currentA() <= 0.8 * cable.fuseA() * (1 + 1e-9));
    assertTrue(cable.fuseA() <= cable.ampacityA());
  }

  @Property
  void moreCurrentOrLengthNeverTakesAThinnerCable(
      @ForAll @DoubleRange(min = 1, max = 150) double current,
      @ForAll @DoubleRange(min = 0.1, max = 7) double length) {
    double area = Cables.result(draft(current, length)).metric().areaMm2();
    assertTrue(Cables.result(draft(current * 1.1, length)).metric().areaMm2() >= area);
    assertTrue(Cables.result(draft(current, length * 1.1)).metric().areaMm2() >= area);
  }

  @Property
  void thePowerThatArrivesIsThePowerAsked(
      @ForAll @DoubleRange(min = 10, max = 1500) double watts,
      @ForAll @DoubleRange(min = 0.5, max = 6) double length) {
    SizedCable cable =
        Cables.result(Cables.power(watts, 1).oneWayM(length).permittedDropV(0.8)).metric();
    assertEquals(watts, cable.currentA() * cable.endV(), watts * 1e-9);
    assertEquals(
        13.8 * cable.currentA(), watts + cable.lossW(), watts * 1e-9, "what leaves the battery");
    assertTrue(cable.endV() > 13.8 / 2, "the stable of both solutions");
  }

  @Property
  void aReturnCableIsTwiceTheLengthWithTheBody(
      @ForAll @DoubleRange(min = 1, max = 100) double current,
      @ForAll @DoubleRange(min = 0.1, max = 4) double length) {
    SizedCable there = Cables.result(draft(current, length).returnPath(ReturnPath.CABLE)).metric();
    SizedCable body = Cables.result(draft(current, 2 * length)).metric();
    assertEquals(body, there);
  }

  @Property
  void threeGaugesAreHalfTheAreaNearly(@ForAll @IntRange(min = -3, max = 37) int gauge) {
    // 92^(6/39) = 2.005
    assertEquals(Math.pow(92, 6 / 39.0), Gauge.areaMm2(gauge) / Gauge.areaMm2(gauge + 3), 1e-9);
  }

  @Property(tries = 1)
  void engineSpaceFactorsFollowTheLawOfHeat() {
    for (double t : new double[] {60, 75, 80, 90, 105, 125, 200}) {
      assertEquals(
          Math.sqrt((t - 50) / (t - 30)), Ampacity.ENGINE_SPACE_FACTOR.at(t), 0.007, "at " + t);
    }
  }

  @Property
  void betterInsulationNeverCarriesLess(
      @ForAll @DoubleRange(min = 1.3, max = 240) double area,
      @ForAll @DoubleRange(min = 60, max = 190) double rating) {
    assertTrue(Ampacity.TABLE.at(area, rating + 10) >= Ampacity.TABLE.at(area, rating));
    assertTrue(
        Ampacity.ENGINE_SPACE_FACTOR.at(rating + 10) >= Ampacity.ENGINE_SPACE_FACTOR.at(rating));
    assertTrue(Ampacity.TABLE.at(area * 1.2, rating) >= Ampacity.TABLE.at(area, rating));
  }
}
