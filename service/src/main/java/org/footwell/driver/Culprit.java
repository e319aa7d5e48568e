package org.footwell.driver;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.footwell.driver.sheet.Agreement;
import org.footwell.driver.sheet.DriverTolerance;
import org.footwell.driver.sheet.Figure;
import org.footwell.driver.sheet.Reconciliation;
import org.footwell.driver.sheet.Sheet;
import org.footwell.physics.Piston;

/** Looks for the single figure that spoils a record. */
final class Culprit {

  /** Of equally possible figures, one is named whose residual is this much larger... */
  private static final double CLEARLY_WORSE = 1.2;

  /** ...or whose correction is this much smaller. */
  private static final double CLEARLY_SMALLER = 3;

  private static final double SLACK = 0.05;

  /** A figure whose change makes the rest agree. */
  record Suspect(Figure figure, double implied, double correction) {
    /** Whether the rest says what the figure would be. */
    boolean isImplied() {
      return implied != 0;
    }
  }

  /** A figure and what is wrong with its unit. */
  record Slip(Figure figure, UnitSlip slip, double right) {}

  private final Sheet sheet;
  private final DriverTolerance tolerance;
  private final Double nominalMm;

  Culprit(Sheet sheet, DriverTolerance tolerance, Double nominalMm) {
    this.sheet = sheet;
    this.tolerance = tolerance;
    this.nominalMm = nominalMm;
  }

  /** The one figure in a wrong unit that explains it all, or null. */
  Slip slip() {
    Slip unit = onlySlip(UnitSlip::units);
    return unit != null ? unit : onlySlip(figure -> UnitSlip.DECIMAL_POINT);
  }

  private Slip onlySlip(Function<Figure, List<UnitSlip>> slips) {
    Slip found = null;
    for (Figure figure : Figure.ALL) {
      if (figure == Figure.LEVEL || !sheet.isGiven(figure)) {
        continue;
      }
      for (UnitSlip slip : slips.apply(figure)) {
        double right = sheet.of(figure) * slip.factor();
        if (explains(sheet.with(figure, right))) {
          if (found != null) {
            return null;
          }
          found = new Slip(figure, slip, right);
        }
      }
    }
    return found;
  }

  private boolean explains(Sheet other) {
    return isPlausible(other) && !Agreement.of(other, tolerance).isAnyGross();
  }

  private boolean isPlausible(Sheet other) {
    boolean small = UsualRange.isSmall(other, nominalMm);
    for (Figure figure : Figure.ALL) {
      if (other.isKnown(figure) && UsualRange.of(figure).isSuspicious(other.of(figure), small)) {
        return false;
      }
    }
    return !hasOddMass(other) && hasUsualResistance(other) && fitsNominal(other);
  }

  private boolean hasUsualResistance(Sheet other) {
    double ratio = other.of(Figure.RE) / other.drive.ratedOhm();
    return !other.isKnown(Figure.RE)
        || (ratio >= tolerance.reRatioLow() * (1 - SLACK)
            && ratio <= tolerance.reRatioHigh() * (1 + SLACK));
  }

  private boolean fitsNominal(Sheet other) {
    boolean small = UsualRange.isSmall(other, nominalMm);
    return nominalMm == null
        || !other.isKnown(Figure.SD)
        || UsualRange.DIAMETER.isSuspicious(nominalMm, small)
        || UsualRange.fitsNominal(
            Piston.EFFECTIVE_DIAMETER.at(other.of(Figure.SD)), nominalMm, small);
  }

  /** Whether the moving mass is out of all proportion to the cone area. */
  static boolean hasOddMass(Sheet sheet) {
    if (!sheet.isKnown(Figure.MMS) || !sheet.isKnown(Figure.SD)) {
      return false;
    }
    double massPerArea = sheet.of(Figure.MMS) / sheet.of(Figure.SD);
    return massPerArea < UsualRange.LEAST_MASS_PER_AREA
        || massPerArea > UsualRange.MOST_MASS_PER_AREA;
  }

  /** Every figure without which the rest agrees and, where it says so, gives a plausible value. */
  List<Suspect> suspects() {
    List<Suspect> suspects = new ArrayList<>();
    for (Figure figure : Figure.ALL) {
      if (sheet.isGiven(figure)) {
        Sheet rest = sheet.with(figure, null);
        Agreement agreement = Agreement.of(rest, tolerance);
        if (!agreement.isAnyOff()) {
          suspect(figure, rest, agreement, suspects);
        }
      }
    }
    return suspects;
  }

  private void suspect(Figure figure, Sheet rest, Agreement agreement, List<Suspect> into) {
    double given = sheet.of(figure);
    if (figure == Figure.LEVEL) {
      double implied =
          sheet.drive.isPerVolt() ? agreement.voltageLevel() : agreement.oneWattLevel();
      into.add(new Suspect(figure, implied, Math.abs(implied - given) * Reconciliation.PER_DB));
    } else if (!rest.isKnown(figure)) {
      into.add(new Suspect(figure, 0, Double.POSITIVE_INFINITY));
    } else if (isPlausible(rest)) {
      double implied = rest.of(figure);
      into.add(new Suspect(figure, implied, Math.abs(Math.log(implied / given))));
    }
  }

  /** The suspect that stands out from the others, or null. */
  static Suspect odd(List<Suspect> suspects, Reconciliation reconciliation) {
    Suspect worst = null;
    for (Suspect suspect : suspects) {
      if (worst == null || score(suspect, reconciliation) > score(worst, reconciliation)) {
        worst = suspect;
      }
    }
    for (Suspect other : suspects) {
      if (!other.equals(worst) && !standsOut(worst, other, reconciliation)) {
        return null;
      }
    }
    return worst;
  }

  /** Residual first, small corrections among equals. */
  private static double score(Suspect suspect, Reconciliation reconciliation) {
    return reconciliation.standardised(suspect.figure()) / (1 + suspect.correction());
  }

  private static boolean standsOut(Suspect one, Suspect other, Reconciliation reconciliation) {
    return reconciliation.standardised(one.figure())
            > CLEARLY_WORSE * reconciliation.standardised(other.figure())
        || CLEARLY_SMALLER * one.correction() < other.correction();
  }
}
