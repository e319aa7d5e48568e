package org.footwell.catalogue.row;

/** The check cannot be done or not be finished; the message says why, for the person who asked. */
public final class CannotRun extends Exception {

  private static final long serialVersionUID = 1L;

  public CannotRun(String message) {
    super(message);
  }
}
