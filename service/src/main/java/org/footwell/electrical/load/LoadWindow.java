package org.footwell.electrical.load;

import static org.footwell.electrical.load.OptionsFault.WINDOW_EMPTY;

import org.footwell.calculation.Allowed;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Phrase;
import org.footwell.calculation.Run;
import org.footwell.electrical.amplifier.SmallestLoad;
import org.footwell.electrical.load.WiringOptionsRequest.Window;

/**
 * The loads that are accepted as connected, both ends included.
 *
 * @param largestOhm infinite when any load will do
 */
record LoadWindow(SmallestLoad smallest, double largestOhm) {

  /** What is lost in the last digits of a parallel connection puts no load out of the window. */
  private static final double ROUNDING = 1e-9;

  /** Refuses a window that is not known or empty; null then. */
  static LoadWindow of(WiringOptionsRequest q, Run run) {
    Window given = q.window();
    SmallestLoad smallest =
        SmallestLoad.of(given.minimumOhm(), q.bridged(), given.minimumBridgedOhm(), "/window", run);
    if (smallest == null) {
      run.refuse(CoreFault.REQUIRED).at("/window/minimum_ohm");
      return null;
    }
    if (given.maximumOhm() != null && given.maximumOhm() < smallest.ohm()) {
      run.refuse(WINDOW_EMPTY)
          .at("/window/maximum_ohm")
          .given(given.maximumOhm())
          .allowed(Allowed.atLeast(smallest.ohm(), "ohm"));
    }
    return new LoadWindow(
        smallest, given.maximumOhm() == null ? Double.POSITIVE_INFINITY : given.maximumOhm());
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
