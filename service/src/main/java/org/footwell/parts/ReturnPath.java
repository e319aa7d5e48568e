package org.footwell.parts;

/** What brings the current back. */
public enum ReturnPath {
  /** A second cable of the same kind and length. */
  CABLE,
  /** The body of the vehicle. */
  BODY
}
