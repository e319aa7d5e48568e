package org.footwell.electrical.supply;

import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Formula;
import org.footwell.physics.Decibels;

/**
 * What a sound system puts out and draws with a programme on it.
 *
 * @param averageOutputW average power into the loudspeakers
 * @param peakOutputW power of a sine whose peaks are those of the programme
 * @param averageInputW drawn on average
 * @param peakInputW drawn while such a sine lasts: for a drum beat, not for one half-wave, which
 *     the amplifier's own capacitors carry
 */
record Programme(
    double averageOutputW, double peakOutputW, double averageInputW, double peakInputW) {

  static final Formula.Of2 PEAK =
      Formula.of("peak_output_w", "P·10^(L/10)", "W", DEFINITION)
          .with("P", "L", (p, level) -> p * Decibels.toPower(level));

  /** Average of a programme whose peaks reach those of a sine of P watts, with crest factor C dB. */
  static final Formula.Of2 AVERAGE =
      Formula.of("average_output_w", "P·10^((3.01 − C)/10), at most P", "W", DEFINITION)
          .with(
              "P",
              "C",
              (p, crest) -> p * Math.min(1, Decibels.toPower(Decibels.SINE_CREST - crest)));

  static final Formula.Of4 INPUT =
      Formula.of("input_w", "P/η + Ii·Us", "W", DEFINITION)
          .with("P", "η", "Ii", "Us", (p, eta, idle, at) -> p / eta + idle * at);
}
