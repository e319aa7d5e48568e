package org.footwell.physics;

/** Frequencies compared by their ratio. */
public final class Octaves {

  private Octaves() {}

  /** How far it is up from one frequency to another, octaves; negative where it is down. */
  public static double between(double from, double to) {
    return Math.log(to / from) / Math.log(2);
  }
}
