package org.footwell.analysis.registry;

import java.util.function.Function;
import org.footwell.analysis.Solve;
import org.footwell.analysis.tolerance.Tolerance;
import org.footwell.calculation.Calculation;

/**
 * Something that can be asked about any calculation as a whole, by a request that holds one of that
 * calculation. It is a calculation itself: checks, wording, formats and contract follow as for any.
 */
public enum Analysis {
  SOLVE("solve", Solve::new),
  TOLERANCE("tolerance", Tolerance::new);

  private final String id;
  private final Function<Calculation<?, ?>, Calculation<?, ?>> made;

  Analysis(String id, Function<Calculation<?, ?>, Calculation<?, ?>> made) {
    this.id = id;
    this.made = made;
  }

  /** The last part of its address. */
  public String id() {
    return id;
  }

  /** What it is of a calculation; its card is called after both. */
  public Calculation<?, ?> of(Calculation<?, ?> subject) {
    return made.apply(subject);
  }
}
