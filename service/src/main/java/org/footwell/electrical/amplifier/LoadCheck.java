package org.footwell.electrical.amplifier;

import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;

/** Holds a load against the smallest one the maker of the amplifier allows. */
final class LoadCheck {

  /**
   * A real load below this part of a rated impedance is not that of a driver so rated: IEC 60268-5
   * allows 0.8 for the impedance, a meter reads a little less. Common practice, no source.
   */
  private static final double LEAST_OF_RATED = 0.7;

  private static final String AT = "/amplifier";

  private LoadCheck() {}

  /** Compares rated with rated: the driver's impedance where it is known, else the load given. */
  static void of(RailMatchRequest q, double peakCurrentA, Run run) {
    double load = q.loadOhm();
    boolean ratedKnown = q.driver() != null && load >= LEAST_OF_RATED * q.driver().ratedOhm();
    double rated = ratedKnown ? q.driver().ratedOhm() : load;
    String at = ratedKnown ? "/driver/rated_ohm" : "/load_ohm";
    SmallestLoad smallest = SmallestLoad.of(q.amplifier(), q.bridged(), AT, run);
    UnusualLoad unusual = new UnusualLoad(rated, q.bridged(), at);
    if (smallest == null) {
      unusual.withoutMinimum(AT, run);
      return;
    }
    if (smallest.isAbove(rated)) {
      run.find(AmplifierFinding.LOAD_BELOW_MINIMUM).at(at).value(rated).limit(smallest.ohm());
      return;
    }
    if (smallest.isAbove(load)) {
      run.find(AmplifierFinding.LOAD_DIPS_BELOW_MINIMUM)
          .at("/load_ohm")
          .value(load)
          .limit(smallest.ohm())
          .with("current", peakCurrentA);
    }
    unusual.allowed(Phrase.of(LoadWords.CURRENT_AT_PEAKS).with("current", peakCurrentA), run);
  }
}
