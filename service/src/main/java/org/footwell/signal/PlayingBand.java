package org.footwell.signal;

import org.footwell.physics.Decibels;

/**
 * Where on a row of frequencies a channel plays.
 *
 * @param first index of the lowest frequency
 * @param last index of the highest
 */
public record PlayingBand(int first, int last) {

  /** The band ends where an octave is this much weaker than the strongest, dB; common practice. */
  public static final double DROP_DB = 12;

  /** What is left of it where no value at its ends is beyond a limit; null if nothing is. */
  public PlayingBand within(double[] values, double most) {
    int from = first;
    int to = last;
    while (from <= to && Math.abs(values[from]) > most) {
      from++;
    }
    while (to >= from && Math.abs(values[to]) > most) {
      to--;
    }
    return from > to ? null : new PlayingBand(from, to);
  }

  /**
   * Looks for the range around the strongest octave.
   *
   * @param powers at frequencies in equal steps of an octave, noise taken away
   * @param perOctave steps to the octave
   * @return null if there is nothing at all
   */
  public static PlayingBand of(double[] powers, int perOctave) {
    double[] octaves = new double[powers.length];
    int strongest = 0;
    for (int i = 0; i < powers.length; i++) {
      int from = Math.max(0, i - perOctave / 2);
      int to = Math.min(powers.length, i + perOctave / 2 + 1);
      for (int k = from; k < to; k++) {
        octaves[i] += powers[k] / (to - from);
      }
      strongest = octaves[i] > octaves[strongest] ? i : strongest;
    }
    if (octaves[strongest] <= 0) {
      return null;
    }
    double least = octaves[strongest] * Decibels.toPower(-DROP_DB);
    int first = strongest;
    while (first > 0 && octaves[first - 1] >= least) {
      first--;
    }
    int last = strongest;
    while (last < octaves.length - 1 && octaves[last + 1] >= least) {
      last++;
    }
    // An octave around the edge reaches beyond it: come back to where the frequency itself counts.
    while (first < strongest && powers[first] < least) {
      first++;
    }
    while (last > strongest && powers[last] < least) {
      last--;
    }
    return new PlayingBand(first, last);
  }
}
