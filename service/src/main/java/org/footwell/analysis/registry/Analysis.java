package org.footwell.analysis.registry;

import org.footwell.analysis.Solve;
import org.footwell.analysis.tolerance.Tolerance;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.text.Names;

/**
 * Something that can be asked about any calculation as a whole, by a request that holds one of that
 * calculation. It is a calculation itself: checks, wording, formats and contract follow as for any.
 */
public enum Analysis {
  SOLVE {
    @Override
    public Calculation<?, ?> of(Calculation<?, ?> subject) {
      return new Solve<>(subject);
    }
  },
  TOLERANCE {
    @Override
    public Calculation<?, ?> of(Calculation<?, ?> subject) {
      return new Tolerance<>(subject);
    }
  };

  /** The last part of its address. */
  public String id() {
    return Names.of(this);
  }

  /** What it is of a calculation; its card is called after both. */
  public abstract Calculation<?, ?> of(Calculation<?, ?> subject);
}
