package org.footwell.signal;

import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Allowed;

/**
 * What a sample rate leaves room for.
 *
 * @param to takes what has none
 */
public record SampleRate(double hz, Refusing to) {

  /**
   * Refuses a frequency that is not below half the rate; there may be none at all.
   *
   * @return whether it was refused
   */
  public boolean refuses(String at, Double frequencyHz) {
    boolean above = frequencyHz != null && frequencyHz >= hz / 2;
    if (above) {
      to.refuse(SectionFault.ABOVE_HALF_RATE)
          .at(at)
          .given(frequencyHz)
          .allowed(Allowed.below(hz / 2, "Hz"));
    }
    return above;
  }
}
