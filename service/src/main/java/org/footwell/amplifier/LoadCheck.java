package org.footwell.amplifier;

import org.footwell.calculation.Run;

/** Holds a load against the smallest one the maker of the amplifier allows. */
final class LoadCheck {

  /**
   * A real load below this part of a rated impedance is not that of a driver so rated: IEC 60268-5
   * allows 0.8 for the impedance, a meter reads a little less. Common practice, no source.
   */
  private static final double LEAST_OF_RATED = 0.7;

  private LoadCheck() {}

  /** Compares rated with rated: the driver's impedance where it is known, else the load given. */
  static void of(RailMatchRequest q, double peakCurrentA, Run run) {
    Double minimum = minimum(q);
    if (minimum == null) {
      return;
    }
    double load = q.loadOhm();
    boolean ratedKnown = q.driver() != null && load >= LEAST_OF_RATED * q.driver().ratedOhm();
    double rated = ratedKnown ? q.driver().ratedOhm() : load;
    if (rated < minimum) {
      run.find(AmplifierFinding.LOAD_BELOW_MINIMUM)
          .at(ratedKnown ? "/driver/rated_ohm" : "/load_ohm")
          .value(rated)
          .limit(minimum);
    } else if (load < minimum) {
      run.find(AmplifierFinding.LOAD_DIPS_BELOW_MINIMUM)
          .at("/load_ohm")
          .value(load)
          .limit(minimum)
          .with("current", peakCurrentA);
    }
  }

  private static Double minimum(RailMatchRequest q) {
    if (!q.bridged()) {
      return q.minimumOhm();
    }
    if (q.minimumBridgedOhm() != null) {
      return q.minimumBridgedOhm();
    }
    return q.minimumOhm() == null ? null : (Double) (2 * q.minimumOhm());
  }
}
