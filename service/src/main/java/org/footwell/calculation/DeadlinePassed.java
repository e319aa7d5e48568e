package org.footwell.calculation;

/** The calculation took longer than the caller was promised to wait. */
public final class DeadlinePassed extends RuntimeException {

  private static final long serialVersionUID = 1L;

  public DeadlinePassed() {
    super("the calculation ran past its deadline", null, false, false);
  }
}
