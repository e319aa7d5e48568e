package org.footwell.calculation;

import java.util.Optional;

/** A path that leads to no single value of a record. */
public final class UnknownPath extends Exception {

  private static final long serialVersionUID = 1L;

  private final String nearest;

  /**
   * A path without an end.
   *
   * @param nearest the one that is most like it and has one, dotted, or null
   */
  UnknownPath(String nearest) {
    super(null, null, false, false);
    this.nearest = nearest;
  }

  /** The path that is most like it and leads somewhere, dotted. */
  public Optional<String> nearest() {
    return Optional.ofNullable(nearest);
  }
}
