package org.footwell.acoustic.enclosure.lowend;

import org.footwell.acoustic.enclosure.radiator.Survey;
import org.footwell.acoustic.enclosure.radiator.Survey.Quantity;
import org.footwell.acoustic.enclosure.radiator.Survey.Summit;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.parts.Filter;
import org.footwell.physics.FilterPrototype;

/** The high-pass with the lowest corner that holds a cone within xmax. */
final class SubsonicFilter {

  /**
   * Corner in Hz of a Butterworth high-pass that takes a displacement down to xmax at one frequency:
   * x²/(1 + (corner/f)^(2n)) = xmax² solved for the corner.
   */
  static final Formula.Of4 SUBSONIC_CORNER =
      Formula.of("subsonic_hz", "f·((x/xmax)² − 1)^(1/(2·n))", "Hz", FilterPrototype.BUTTERWORTH)
          .with("f", "x", "xmax", "n", SubsonicFilter::corner);

  private SubsonicFilter() {}

  /** The corner in Hz of a filter of an order that holds a displacement in mm, and where it is tight. */
  static Summit lowest(int order, Survey survey, Quantity displacement, double xmax) {
    return survey.highest((f, state) -> corner(f, displacement.of(f, state), xmax, order));
  }

  /** The filter of such a corner, by the displacement that it takes down to xmax. */
  static Filter of(int order, Summit lowest, double xmax, Arithmetic steps) {
    double x = Math.sqrt(1 + Math.pow(lowest.value() / lowest.frequencyHz(), 2 * order)) * xmax;
    double corner = steps.apply(SUBSONIC_CORNER, lowest.frequencyHz(), x, xmax, (double) order);
    return Filter.of(Filter.Kind.BUTTERWORTH, order, corner);
  }

  private static double corner(double f, double x, double xmax, double n) {
    double over = (x / xmax) * (x / xmax) - 1;
    return over <= 0 ? 0 : f * Math.pow(over, 1 / (2 * n));
  }
}
