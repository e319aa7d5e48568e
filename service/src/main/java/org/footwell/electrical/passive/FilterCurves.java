package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.PassiveFilterResult.Purpose.HIGH_PASS;
import static org.footwell.electrical.passive.PassiveFilterResult.Purpose.LOW_PASS;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Arithmetic;
import org.footwell.electrical.impedance.Extremes;
import org.footwell.electrical.impedance.Extremes.Place;
import org.footwell.electrical.passive.PassiveFilterResult.Corner;
import org.footwell.electrical.passive.PassiveFilterResult.Point;
import org.footwell.electrical.passive.PassiveFilterResult.Purpose;
import org.footwell.loudspeaker.Ladder;
import org.footwell.loudspeaker.Ladder.Response;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Filter;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Impedance;
import org.footwell.physics.Phasor;

/** What a filter is meant to do and does: ideal, into the resistor, rounded, with the driver. */
final class FilterCurves {

  /** Deviations count where the ideal filter is not further below its pass band, dB. */
  private static final double COUNTS_ABOVE_DB = -20;

  private final Filter highPass;
  private final Filter lowPass;
  private final AnalogFilter idealHigh;
  private final AnalogFilter idealLow;
  private final double padDb;
  private final Ladder exact;
  private final Ladder rounded;
  private final Ladder real;

  /**
   * Of the parts that make a high-pass, a low-pass or both; what is null there is not.
   *
   * @param driver what the filter is for, in its box
   */
  FilterCurves(
      Filter highPass,
      Filter lowPass,
      double padDb,
      double loadOhm,
      FilterParts parts,
      Impedance driver) {
    this.highPass = highPass;
    this.lowPass = lowPass;
    this.padDb = padDb;
    idealHigh = highPass == null ? null : highPass.highPass();
    idealLow = lowPass == null ? null : lowPass.lowPass();
    Phasor ohm = new Phasor(loadOhm, 0);
    exact = new Ladder(parts.calculatedForResistor(), f -> ohm);
    rounded = new Ladder(parts.preferredForResistor(), f -> ohm);
    real = driver == null ? null : new Ladder(parts.preferred(), driver);
  }

  /** What the amplifier sees in the end. */
  Impedance input() {
    return (real == null ? rounded : real).input();
  }

  double targetDb(double f) {
    return idealDb(f) - padDb;
  }

  private double idealDb(double f) {
    return (idealHigh == null ? 0 : idealHigh.magnitudeDb(f))
        + (idealLow == null ? 0 : idealLow.magnitudeDb(f));
  }

  /**
   * Where levels are farthest from what they should be, signed, dB.
   *
   * @param exact of the calculated values into the resistor, from the target
   * @param rounding of the preferred values into the resistor, from the calculated ones
   * @param driver of the preferred values with the real driver, from the target; null without one
   */
  record Deviations(Place exact, Place rounding, Place driver) {}

  /** The largest deviations where the ideal filter is not far below its pass band. */
  Deviations deviations(CurveFrequencies range, Arithmetic arithmetic) {
    arithmetic.checkDeadline();
    Place none = new Place(range.fromHz(), 0);
    Deviations found = new Deviations(none, none, real == null ? null : none);
    for (double f : Extremes.grid(range.fromHz(), range.toHz())) {
      double ideal = idealDb(f);
      if (ideal >= COUNTS_ABOVE_DB) {
        double target = ideal - padDb;
        double exactDb = exact.levelDb(f);
        found =
            new Deviations(
                farther(found.exact(), f, exactDb - target),
                farther(found.rounding(), f, rounded.levelDb(f) - exactDb),
                real == null ? null : farther(found.driver(), f, real.levelDb(f) - target));
      }
    }
    return found;
  }

  private static Place farther(Place known, double f, double difference) {
    return Math.abs(difference) > Math.abs(known.value()) ? new Place(f, difference) : known;
  }

  List<Corner> corners() {
    List<Corner> corners = new ArrayList<>();
    if (highPass != null) {
      corners.add(corner(HIGH_PASS, highPass.frequencyHz()));
    }
    if (lowPass != null) {
      corners.add(corner(LOW_PASS, lowPass.frequencyHz()));
    }
    return corners;
  }

  private Corner corner(Purpose side, double f) {
    return new Corner(side, f, targetDb(f), exact.levelDb(f), rounded.levelDb(f), driverDb(f));
  }

  private Double driverDb(double f) {
    return real == null ? null : (Double) real.levelDb(f);
  }

  List<Point> points(double[] frequencies) {
    List<Point> points = new ArrayList<>(frequencies.length);
    for (double f : frequencies) {
      Response bought = rounded.at(f);
      Response inUse = real == null ? bought : real.at(f);
      points.add(
          new Point(
              f,
              targetDb(f),
              exact.levelDb(f),
              bought.levelDb(),
              real == null ? null : (Double) inUse.levelDb(),
              inUse.input().modulus(),
              inUse.input().phaseDeg()));
    }
    return points;
  }
}
