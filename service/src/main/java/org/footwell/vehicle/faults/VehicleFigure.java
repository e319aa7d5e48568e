package org.footwell.vehicle.faults;

import org.footwell.parts.plan.MeasuringErrors;
import org.footwell.physics.Decibels;

/**
 * One figure that is measured, or could be. Predicted and measured ones are held against each other on
 * a scale on which the error of each is 1.
 *
 * @param place index of its channel; of the amplifier for a drop
 * @param at frequency in Hz; for a drop the voltage at the battery
 */
record VehicleFigure(FigureKind kind, int place, double at) {

  /** Less than this is a short for a meter and its leads, ohm; common practice, no source. */
  private static final double SHORT_OHM = 0.2;

  /** More than this is open. */
  private static final double OPEN_OHM = 1000;

  boolean ofChannel() {
    return kind != FigureKind.SUPPLY_DROP;
  }

  /** Whether only the differences within its group count: those of {@link #group} alike. */
  boolean relative() {
    return kind == FigureKind.RESPONSE || kind == FigureKind.ARRIVAL;
  }

  /** Figures of one group have their mean taken off: the points of a response, all arrivals. */
  int group() {
    return kind == FigureKind.ARRIVAL ? -1 : place;
  }

  /**
   * A value in units of its error: ratios by their logarithm, and polarities so far apart that the odds
   * between right and wrong are those of reading one rightly.
   */
  double scaled(double value, MeasuringErrors errors) {
    return switch (kind) {
      case LEVEL -> value / errors.levelErrorDb();
      case RESPONSE -> value / errors.responseErrorDb();
      case METER -> Math.log(told(value)) / errors.meterError();
      case IMPEDANCE -> Math.log(told(value)) / errors.impedanceError();
      case ARRIVAL -> value / errors.arrivalErrorMs();
      case POLARITY -> value / 2 * apart(errors.polarityWrong());
      case SUPPLY_DROP -> value / errors.dropErrorV();
    };
  }

  /** How many standard deviations apart the two polarities are: odds are e^(d²/2). */
  private static double apart(double wrong) {
    return Math.sqrt(2 * Math.log((1 - wrong) / wrong));
  }

  private static double told(double ohm) {
    return Math.min(OPEN_OHM, Math.max(SHORT_OHM, ohm));
  }

  /** A mean square pressure as a level in dB that is a number even where nothing is heard. */
  static double db(double square) {
    return Decibels.ofPower(Math.max(1e-30, square));
  }
}
