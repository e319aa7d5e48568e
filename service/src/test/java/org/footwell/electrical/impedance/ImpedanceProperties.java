package org.footwell.electrical.impedance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.Answers;
import org.footwell.electrical.impedance.ImpedanceFitRequest.Reading;
import org.footwell.loudspeaker.CoilImpedance;
import org.footwell.loudspeaker.DriverCircuit;
import org.footwell.parts.Box;
import org.footwell.parts.BoxBuilder;
import org.footwell.parts.Driver;
import org.footwell.physics.Phasor;

class ImpedanceProperties {

  private static Driver driver(double re, double le, double n, double fs, double qms, double qes) {
    return Drivers.of(re, le, n, fs, qms, qes);
  }

  @Property
  void aDriverIsPassiveAndNeverBelowItsResistance(
      @ForAll @DoubleRange(min = 0.5, max = 16) double re,
      @ForAll @DoubleRange(min = 0.4, max = 1) double exponent,
      @ForAll @DoubleRange(min = 0.3, max = 20) double qms,
      @ForAll @DoubleRange(min = 2, max = 500) double volume,
      @ForAll @DoubleRange(min = 5, max = 200) double fb,
      @ForAll @DoubleRange(min = 1, max = 20000) double f) {
    DriverCircuit vented =
        MountedDriver.circuit(driver(re, 1, exponent, 40, qms, 0.5), Box.vented(volume, fb));
    assertTrue(vented.at(f).re() >= re);
    assertTrue(Math.abs(vented.at(f).phaseDeg()) < 90);
  }

  @Property
  void everythingGrowsWithReAndLeAlike(
      @ForAll @DoubleRange(min = 0.1, max = 10) double factor,
      @ForAll @DoubleRange(min = 5, max = 20000) double f) {
    Phasor one = MountedDriver.circuit(driver(4, 1, 0.7, 40, 5, 0.5), null).at(f);
    Phasor more = MountedDriver.circuit(driver(4 * factor, factor, 0.7, 40, 5, 0.5), null).at(f);
    assertEquals(factor * one.re(), more.re(), 1e-9 * more.modulus());
    assertEquals(factor * one.im(), more.im(), 1e-9 * more.modulus());
  }

  @Property
  void aBoxTunedVeryLowIsAClosedOneAndAHugeOneIsNone(
      @ForAll @DoubleRange(min = 40, max = 2000) double f) {
    Driver woofer = driver(4, 1, 0.7, 60, 5, 0.5);
    Phasor closed = MountedDriver.circuit(woofer, Box.closed(20.0)).at(f);
    Phasor low =
        MountedDriver.circuit(
                woofer, BoxBuilder.builder().volumeL(20.0).fbHz(2.0).ql(1000.0).build())
            .at(f);
    assertEquals(closed.modulus(), low.modulus(), 0.02 * closed.modulus());
    Phasor free = MountedDriver.circuit(woofer, null).at(f);
    Phasor huge = MountedDriver.circuit(woofer, Box.closed(10000.0)).at(f);
    assertEquals(free.modulus(), huge.modulus(), 0.03 * free.modulus());
  }

  @Property(tries = 100)
  void theFitUndoesTheCurve(
      @ForAll @DoubleRange(min = 1, max = 16) double re,
      @ForAll @DoubleRange(min = 0.3, max = 3) double le,
      @ForAll @DoubleRange(min = 0.5, max = 0.95) double exponent,
      @ForAll @DoubleRange(min = 25, max = 120) double fs,
      @ForAll @DoubleRange(min = 1.5, max = 12) double qms,
      @ForAll @DoubleRange(min = 0.25, max = 1.2) double qes) {
    Driver driver = driver(re, le, exponent, fs, qms, qes);
    // A coil this large at the resonance would hide its peak.
    Assume.that(CoilImpedance.of(driver).at(fs).modulus() < 0.4 * re);
    List<Reading> readings = ImpedanceFitTest.table(driver, null, 5, 20000, true);
    ImpedanceFitResult fit =
        Answers.of(
                new ImpedanceFit(), new ImpedanceFitRequest(readings, null, null, null, null, null))
            .result();
    assertEquals(re, fit.reOhm(), 1e-4 * re);
    assertEquals(fs, fit.fsHz(), 1e-4 * fs);
    assertEquals(qms, fit.qms(), 1e-4 * qms);
    assertEquals(qes, fit.qes(), 1e-4 * qes);
  }
}
