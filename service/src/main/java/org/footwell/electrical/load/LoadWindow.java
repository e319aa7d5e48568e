package org.footwell.electrical.load;

import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.electrical.amplifier.SmallestLoad;

/**
 * The loads that are accepted as connected, both ends included.
 *
 * @param largestOhm infinite when any load will do
 */
record LoadWindow(SmallestLoad smallest, double largestOhm) {

  /** What is lost in the last digits of a parallel connection puts no load out of the window. */
  private static final double ROUNDING = 1e-9;

  /** The window of a request, which is not empty. */
  static LoadWindow of(WiringOptionsRequest q, Run run) {
    return new LoadWindow(
        SmallestLoad.of(q.amplifier(), q.bridged(), "/amplifier", run),
        q.maximumOhm() == null ? Double.POSITIVE_INFINITY : q.maximumOhm());
  }

  /** Whether the whole window lies above a load: the amplifier does not bear it. */
  boolean isAbove(double loadOhm) {
    return smallest.isAbove(loadOhm);
  }

  /** Whether the whole window lies below a load: it is higher than wanted. */
  boolean isBelow(double loadOhm) {
    return loadOhm > largestOhm * (1 + ROUNDING);
  }

  /** As a person would say it. */
  Phrase inWords() {
    return largestOhm == Double.POSITIVE_INFINITY
        ? Phrase.of(NetworkWords.OHM_OR_MORE).with("from", smallest.ohm())
        : Phrase.of(NetworkWords.OHM_FROM_TO).with("from", smallest.ohm()).with("to", largestOhm);
  }
}
