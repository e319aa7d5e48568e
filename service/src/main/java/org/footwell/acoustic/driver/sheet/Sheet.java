package org.footwell.acoustic.driver.sheet;

import static org.footwell.acoustic.driver.sheet.Figure.QES;
import static org.footwell.acoustic.driver.sheet.Figure.QMS;
import static org.footwell.acoustic.driver.sheet.Figure.QTS;

import java.util.List;
import java.util.stream.Stream;
import org.footwell.parts.Sensitivity.Basis;

/** The figures of one record: given, and filled in from the others. */
public final class Sheet {

  /** Density in kg/m³ and speed of sound in m/s. */
  public record AirState(double density, double speed) {}

  /**
   * What a stated sensitivity refers to: 1 W into the rated impedance or 2.83 V.
   *
   * @param ratedOhm rated impedance
   * @param basis basis of a stated sensitivity, or null
   */
  public record Drive(double ratedOhm, Basis basis) {
    public boolean isPerVolt() {
      return basis == Basis.TWO_POINT_EIGHT_THREE_VOLT;
    }

    double squaredV() {
      return isPerVolt() ? DriverLaws.REFERENCE_V * DriverLaws.REFERENCE_V : ratedOhm;
    }
  }

  public final AirState air;
  public final Drive drive;
  final Steps steps;
  private final boolean rounded;
  private final double[] values = new double[Figure.ALL.length];
  private final double[] roundings = new double[Figure.ALL.length];

  /** For each figure the identities it was derived through, as bits. */
  private final int[] through = new int[Figure.ALL.length];

  /** Paths taken, in order, one bit each. */
  private int taken;

  private int given;
  private int known;

  public Sheet(AirState air, Drive drive, boolean rounded, Steps steps) {
    this.air = air;
    this.drive = drive;
    this.rounded = rounded;
    this.steps = steps;
  }

  public void give(Figure figure, Double value) {
    if (value != null) {
      give(figure, value.doubleValue());
    }
  }

  private void give(Figure figure, double value) {
    values[figure.index()] = value;
    roundings[figure.index()] = rounded ? figure.rounding(value) : 0;
    given |= figure.bit();
    known |= figure.bit();
  }

  /** The same record, one given figure replaced, or left out where there is no other; aside. */
  public Sheet with(Figure changed, Double other) {
    Sheet sheet = new Sheet(air, drive, rounded, Steps.ASIDE);
    for (Figure figure : Figure.ALL) {
      if (isGiven(figure) && figure != changed) {
        int i = figure.index();
        sheet.values[i] = values[i];
        sheet.roundings[i] = roundings[i];
      }
    }
    sheet.given = given & ~changed.bit();
    sheet.known = sheet.given;
    sheet.give(changed, other);
    sheet.complete();
    return sheet;
  }

  /** Fills in all that follows. */
  public void complete() {
    boolean more = true;
    while (more) {
      more = false;
      for (Path path : Path.ALL) {
        if (!isKnown(path.target) && (known & path.needed) == path.needed && isPossible(path)) {
          follow(path);
          more = true;
        }
      }
    }
  }

  private void follow(Path path) {
    double value = path.at(this);
    int target = path.target.index();
    values[target] = value;
    roundings[target] = path.rounding(this, value);
    through[target] = path.identity.bit();
    for (Figure input : path.inputs) {
      through[target] |= through[input.index()];
    }
    known |= path.target.bit();
    taken |= path.bit();
  }

  /** qts must be the smallest of the three. */
  private boolean isPossible(Path path) {
    return switch (path) {
      case QES_OF_Q -> of(QTS) < of(QMS);
      case QMS_OF_Q -> of(QTS) < of(QES);
      default -> true;
    };
  }

  /** Whether qts is not below qes or qms, by more than rounding explains. */
  public boolean hasImpossibleTotalQ() {
    return isKnown(QTS) && (isAbove(QES) || isAbove(QMS));
  }

  private boolean isAbove(Figure other) {
    return isKnown(other)
        && isIndependentOf(Identity.QTS, other)
        && of(QTS) * (1 - rounding(QTS)) >= of(other) * (1 + rounding(other));
  }

  public double of(Figure figure) {
    return values[figure.index()];
  }

  /** The figure, or null where it is not known. */
  public Double orNull(Figure figure) {
    return isKnown(figure) ? (Double) of(figure) : null;
  }

  public double rounding(Figure figure) {
    return roundings[figure.index()];
  }

  public boolean isKnown(Figure figure) {
    return (known & figure.bit()) != 0;
  }

  boolean knows(int bits) {
    return (known & bits) == bits;
  }

  public boolean isGiven(Figure figure) {
    return (given & figure.bit()) != 0;
  }

  /** Whether an identity has a say: no figure in it was derived through it. */
  boolean isIndependentOf(Identity identity, Figure figure) {
    return (through[figure.index()] & identity.bit()) == 0;
  }

  /** The paths taken. */
  public List<Path> paths() {
    return taken == 0 ? List.of() : Stream.of(Path.ALL).filter(path -> isTaken(path, -1)).toList();
  }

  /** The paths taken to figures of an identity; none when all of those were given. */
  public List<Path> pathsInto(Identity identity) {
    return Stream.of(Path.ALL).filter(path -> isTaken(path, identity.members)).toList();
  }

  private boolean isTaken(Path path, int targets) {
    return (taken & path.bit()) != 0 && (targets & path.target.bit()) != 0;
  }
}
