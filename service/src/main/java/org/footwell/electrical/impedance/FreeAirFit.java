package org.footwell.electrical.impedance;

import static org.footwell.electrical.impedance.DriverFit.EXPONENT;
import static org.footwell.electrical.impedance.DriverFit.FS;
import static org.footwell.electrical.impedance.DriverFit.LE;
import static org.footwell.electrical.impedance.DriverFit.LE_AT_HZ;
import static org.footwell.electrical.impedance.DriverFit.QES;
import static org.footwell.electrical.impedance.DriverFit.QMS;
import static org.footwell.electrical.impedance.DriverFit.RE;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.footwell.calculation.Arithmetic;

/**
 * A driver's parameters from its table in free air.
 *
 * @param driver none if the search came to no end or the readings do not determine them
 * @param coilShows whether the table shows an inductance
 * @param exponentAssumed whether it does not show how the inductance grows, so that this was assumed
 */
record FreeAirFit(Optional<DriverFit> driver, boolean coilShows, boolean exponentAssumed) {

  /** A table shows the inductance when its end is this much above its valley. */
  private static final double COIL_SHOWS = 1.05;

  /** A table shows how the inductance grows when the exponent is known to this, either way. */
  private static final double EXPONENT_SHOWS = 0.2;

  private static final double IDEAL = 1;

  /** What most voice coils are near; common practice. */
  static final double USUAL_EXPONENT = 0.7;

  /** Where the searches for the exponent start. */
  private static final double[] EXPONENTS = {0.5, 0.7, 0.9};

  /**
   * Fits to a table.
   *
   * @param peak index of the resonance
   * @param re DC resistance in ohm, null where it is to be found
   * @param lossy whether the inductance has an exponent to be found
   */
  static FreeAirFit of(
      Readings readings, int peak, Double re, boolean lossy, Arithmetic arithmetic) {
    boolean coil = readings.lastModulus() / readings.lowestAbove(peak) > COIL_SHOWS;
    Search search = new Search(readings, peak, re, coil, arithmetic);
    return coil && lossy ? lossy(search) : new FreeAirFit(search.withExponent(IDEAL), coil, false);
  }

  private static FreeAirFit lossy(Search search) {
    Optional<DriverFit> fit = search.forExponent();
    if (fit.filter(FreeAirFit::showsExponent).isPresent()) {
      // No coil is better than an ideal one: where noise asks for more, it is that.
      boolean real = fit.get().value(EXPONENT) < IDEAL;
      return new FreeAirFit(real ? fit : search.withExponent(IDEAL), true, false);
    }
    return new FreeAirFit(search.withExponent(USUAL_EXPONENT), true, true);
  }

  private static boolean showsExponent(DriverFit fit) {
    return fit.confidence(EXPONENT) * fit.value(EXPONENT) < EXPONENT_SHOWS;
  }

  /** Fits to one table, with the exponent of the coil sought or fixed. */
  private record Search(
      Readings readings, int peak, Double re, boolean coil, Arithmetic arithmetic) {

    Optional<DriverFit> withExponent(double exponent) {
      return DriverFit.of(readings, start(exponent), free(false), arithmetic);
    }

    /** The best of several starts: one alone may end in a wrong valley. */
    Optional<DriverFit> forExponent() {
      return DoubleStream.of(EXPONENTS)
          .mapToObj(exponent -> DriverFit.of(readings, start(exponent), free(true), arithmetic))
          .flatMap(Optional::stream)
          .filter(fit -> fit.value(EXPONENT) > 0)
          .min(Comparator.comparingDouble(DriverFit::squares));
    }

    private int[] free(boolean exponent) {
      boolean[] sought = {re == null, coil, exponent, true, true, true};
      return IntStream.range(0, sought.length).filter(i -> sought[i]).toArray();
    }

    /** What the eye would read off the curve. */
    private double[] start(double exponent) {
      double[] start = new double[DriverFit.COUNT];
      start[RE] = re == null ? 0.97 * readings.lowest() : re;
      start[FS] = readings.frequencyHz(peak);
      // Halfway down, on logarithmic axes, to the higher of both sides: crossed twice for sure.
      double rise = readings.modulus(peak) / readings.higherSide(peak);
      double width = readings.width(peak, readings.modulus(peak) / Math.sqrt(rise));
      start[QMS] = start[FS] * Math.sqrt(rise) / width;
      start[QES] = start[QMS] / (Math.max(1.05, readings.modulus(peak) / start[RE]) - 1);
      start[EXPONENT] = exponent;
      if (coil) {
        double last = readings.lastModulus();
        double reactance =
            Math.sqrt(Math.max(last * last - start[RE] * start[RE], 0.01 * last * last));
        double at = reactance * Math.pow(LE_AT_HZ / readings.lastHz(), exponent);
        start[LE] = at / (2 * Math.PI * LE_AT_HZ);
      }
      return start;
    }
  }
}
