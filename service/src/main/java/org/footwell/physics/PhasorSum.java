package org.footwell.physics;

/** Adds complex numbers one by one, without a number for each sum on the way. */
public final class PhasorSum {

  private double re;
  private double im;

  /** Adds one. */
  public void add(Phasor one) {
    re += one.re();
    im += one.im();
  }

  /** The sum so far; 0 at first. */
  public Phasor value() {
    return new Phasor(re, im);
  }
}
