package org.footwell.vehicle.packages;

import org.footwell.calculation.text.Words;

/** What a package is judged by. */
public enum Aim implements Words {
  /** What everything new costs. */
  PRICE,
  /** How loud the vehicle plays. */
  LEVEL,
  /** How low it plays. */
  REACH,
  /** How much heavier it becomes. */
  MASS
}
