package org.footwell.signal;

import java.util.List;
import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;

/**
 * What a digital filter does at one frequency.
 *
 * @param gain the complex ratio of output to input
 * @param delaySamples group delay −dφ/dω in samples
 * @param slope derivative of ln|gain| with respect to ω: what a sum of responses needs to have its
 *     group delay exactly, without differences of phases
 */
public record Response(Phasor gain, double delaySamples, double slope) {

  /** Lets everything through. */
  public static final Response WIRE = new Response(Phasor.ONE, 0, 0);

  /** Lower levels are given as this: there is nothing left to hear, and a zero has no logarithm. */
  public static final double LOWEST_DB = -300;

  /** Level in dB, {@value #LOWEST_DB} or more. */
  public double levelDb() {
    return levelDb(gain.re() * gain.re() + gain.im() * gain.im());
  }

  /** Level in dB of a squared magnitude, {@value #LOWEST_DB} or more. */
  public static double levelDb(double power) {
    return Math.max(LOWEST_DB, Decibels.ofPower(power));
  }

  /** Phase in degrees, above −180 to 180. */
  public double phaseDeg() {
    return gain.phaseDeg();
  }

  /** Both in a row. */
  public Response times(Response other) {
    return new Response(
        gain.times(other.gain), delaySamples + other.delaySamples, slope + other.slope);
  }

  /** All side by side, added. Where they cancel to nothing, delay and slope are not numbers. */
  public static Response sum(List<Response> all) {
    Phasor gain = new Phasor(0, 0);
    Phasor derivative = new Phasor(0, 0);
    for (Response one : all) {
      gain = gain.plus(one.gain);
      derivative = derivative.plus(one.derivative());
    }
    Phasor logarithmic = derivative.over(gain);
    return new Response(gain, -logarithmic.im(), logarithmic.re());
  }

  /** Derivative of the gain with respect to ω: gain·(slope − j·delay). */
  private Phasor derivative() {
    return gain.times(new Phasor(slope, -delaySamples));
  }

  /**
   * The same louder or softer and later.
   *
   * @param factor amplitude, negative when inverted
   * @param samples delay in samples, whole or not
   */
  public Response scaled(double factor, double samples, CirclePoint p) {
    double turn = -samples * p.radians();
    Phasor how = new Phasor(factor * Math.cos(turn), factor * Math.sin(turn));
    return new Response(gain.times(how), delaySamples + samples, slope);
  }
}
