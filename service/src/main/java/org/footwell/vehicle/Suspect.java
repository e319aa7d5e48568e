package org.footwell.vehicle;

import java.util.List;
import org.footwell.calculation.text.Phrase;
import org.footwell.parts.plan.VehiclePlan;

/**
 * A plan with one thing wrong.
 *
 * @param channels indexes of those it is about
 * @param what the driver or voice coil it is about, or null
 * @param figure corner in Hz or gain in dB, or null
 */
record Suspect(
    LikelyCause cause, List<Integer> channels, String what, Double figure, VehiclePlan wrong) {

  boolean isGain() {
    return cause == LikelyCause.GAIN_OFF;
  }

  private List<String> ids() {
    return channels.stream().map(c -> wrong.channels().get(c).id()).toList();
  }

  CauseLine line(double before, double after) {
    return new CauseLine(
        cause, ids(), what, isGain() ? null : figure, isGain() ? figure : null, before, after);
  }

  /** As it is said. */
  Phrase phrase() {
    Phrase phrase = Phrase.of(cause).own("names", ids());
    if (what != null) {
      phrase.own("part", what);
    }
    return figure == null ? phrase : phrase.with("figure", figure);
  }
}
