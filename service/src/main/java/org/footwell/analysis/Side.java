package org.footwell.analysis;

/** Which side of a target is as good as the target itself. */
public enum Side {
  /** Whichever is nearer. */
  NEAREST,
  /** The output must not be below the target. */
  AT_LEAST,
  /** The output must not be above the target. */
  AT_MOST
}
