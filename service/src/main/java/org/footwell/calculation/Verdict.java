package org.footwell.calculation;

import org.footwell.calculation.text.Words;

/** The worst thing that was found, from harmless to forbidding. */
public enum Verdict implements Words {
  /** Nothing to remark. */
  OK,
  /** Worth knowing; nothing to change. */
  NOTE,
  /** Works, but not as a careful fitter would leave it. */
  WARNING,
  /** Do not build it like this. */
  STOP;

  public Verdict orWorse(Verdict other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
