package org.footwell.factory.rolloff;

import java.util.List;

/**
 * The bands that the bass is held against: all below are bass.
 *
 * @param first place of the first of them
 * @param last place of the last of them, before the first where there is none
 */
record ReferenceRange(int first, int last) {

  /** Of bands in Hz, rising, nominal ones meant by the range. */
  static ReferenceRange of(List<Double> bandsHz, double fromHz, double toHz) {
    double low = 0.99 * fromHz;
    double high = 1.01 * toHz;
    return new ReferenceRange(
        (int) bandsHz.stream().filter(f -> f < low).count(),
        (int) bandsHz.stream().filter(f -> f <= high).count() - 1);
  }

  int bassBands() {
    return first;
  }
}
