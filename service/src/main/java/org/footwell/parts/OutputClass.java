package org.footwell.parts;

/** How an output stage works. */
public enum OutputClass {
  /** One half carries the current at a time, none without signal. */
  CLASS_B,
  /** As class B, with a quiescent current through both halves. */
  CLASS_AB,
  /** Switching, with a filter behind. */
  CLASS_D
}
