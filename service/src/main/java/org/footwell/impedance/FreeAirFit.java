package org.footwell.impedance;

import static org.footwell.impedance.DriverFit.EXPONENT;
import static org.footwell.impedance.DriverFit.FS;
import static org.footwell.impedance.DriverFit.LE;
import static org.footwell.impedance.DriverFit.LE_AT_HZ;
import static org.footwell.impedance.DriverFit.QES;
import static org.footwell.impedance.DriverFit.QMS;
import static org.footwell.impedance.DriverFit.RE;
import static org.footwell.impedance.ImpedanceFault.FIT_FAILED;
import static org.footwell.impedance.ImpedanceFinding.COIL_EXPONENT_ASSUMED;
import static org.footwell.impedance.ImpedanceFinding.COIL_NOT_IN_TABLE;
import static org.footwell.impedance.ImpedanceFinding.SECOND_PEAK;

import java.util.Optional;
import java.util.stream.IntStream;
import org.footwell.calculation.Run;

/** Finds a driver's parameters from its table in free air. */
final class FreeAirFit {

  /** A table shows the inductance when its end is this much above its valley. */
  private static final double COIL_SHOWS = 1.05;

  /** From here on it shows how the inductance grows. */
  private static final double EXPONENT_SHOWS = 1.5;

  /** Where the search for the exponent starts. */
  private static final double USUAL_EXPONENT = 0.7;

  private FreeAirFit() {}

  static DriverFit of(ImpedanceFitRequest q, Run run) {
    Readings readings = new Readings(q.readings());
    int peak = readings.resonance("/readings", run);
    readings.secondPeak(peak).ifPresent(hz -> run.find(SECOND_PEAK).at("/readings").value(hz));
    double rise = readings.lastModulus() / readings.lowestAbove(peak);
    boolean coil = rise > COIL_SHOWS;
    boolean exponent = coil && q.lossyInductance() && rise > EXPONENT_SHOWS;
    if (!coil) {
      run.find(COIL_NOT_IN_TABLE).at("/readings").value(readings.lastHz());
    } else if (q.lossyInductance() && !exponent) {
      run.find(COIL_EXPONENT_ASSUMED).at("/readings").value(readings.lastHz());
    }
    double[] start = start(readings, peak, q.reOhm(), coil, exponent);
    Optional<DriverFit> fit =
        DriverFit.of(readings, start, free(q.reOhm() == null, coil, exponent), run);
    if (exponent && fit.filter(found -> found.value(EXPONENT) < 1).isEmpty()) {
      // No coil is better than an ideal one: noise asked for more.
      start[EXPONENT] = 1;
      fit = DriverFit.of(readings, start, free(q.reOhm() == null, coil, false), run);
    }
    return fit.orElseThrow(
        () -> {
          run.refuse(FIT_FAILED).at("/readings").given("the search came to no end");
          return run.refused();
        });
  }

  private static int[] free(boolean re, boolean coil, boolean exponent) {
    boolean[] sought = {re, coil, exponent, true, true, true};
    return IntStream.range(0, sought.length).filter(i -> sought[i]).toArray();
  }

  /** What the eye would read off the curve. */
  private static double[] start(
      Readings readings, int peak, Double given, boolean coil, boolean exponent) {
    double[] start = new double[DriverFit.COUNT];
    start[RE] = given == null ? 0.97 * readings.lowest() : given;
    start[FS] = readings.frequencyHz(peak);
    double height = Math.max(1.05, readings.modulus(peak) / start[RE]);
    double width = readings.width(peak, start[RE] * Math.sqrt(height));
    start[QMS] = start[FS] * Math.sqrt(height) / width;
    start[QES] = start[QMS] / (height - 1);
    start[EXPONENT] = exponent ? USUAL_EXPONENT : 1;
    if (coil) {
      double last = readings.lastModulus();
      double reactance = Math.sqrt(Math.max(last * last - start[RE] * start[RE], 0.01 * last));
      double at = reactance * Math.pow(LE_AT_HZ / readings.lastHz(), start[EXPONENT]);
      start[LE] = at / (2 * Math.PI * LE_AT_HZ);
    }
    return start;
  }
}
