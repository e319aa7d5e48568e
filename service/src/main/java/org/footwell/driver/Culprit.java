package org.footwell.driver;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.footwell.driver.sheet.Agreement;
import org.footwell.driver.sheet.DriverTolerance;
import org.footwell.driver.sheet.Figure;
import org.footwell.driver.sheet.Identity;
import org.footwell.driver.sheet.Reconciliation;
import org.footwell.driver.sheet.Sheet;
import org.footwell.physics.Piston;

/** Looks for the single figure that spoils a record. */
final class Culprit {

  /** Of equally possible figures, one is named whose residual is this much larger... */
  private static final double CLEARLY_WORSE = 1.2;

  /** ...or whose correction is this much smaller. */
  private static final double CLEARLY_SMALLER = 3;

  /** By so much at most sensitivities are overstated, dB; common practice, no source. */
  private static final double MOST_OVERSTATED_DB = 12;

  /** Two figures that went wrong together are wrong by the same factor but for rounding. */
  private static final double TOGETHER = Math.log(1.1);

  /** Two figures closer than that are not said to be exchanged. */
  private static final double EXCHANGED = Math.log(1.5);

  private static final double SLACK = 0.05;

  /**
   * A figure whose change makes the rest agree.
   *
   * @param implied what the rest gives for it, or 0
   * @param correction how far that is from what is given, as a natural logarithm
   * @param unusual whether it is given outside of what is usual and implied inside
   */
  record Suspect(Figure figure, double implied, double correction, boolean unusual) {
    /** Whether the rest says what the figure would be. */
    boolean isImplied() {
      return implied != 0;
    }
  }

  /** qes and qts, where only the change of both makes the rest agree. */
  record QPair(double impliedQes, double impliedQts, boolean unusual) {}

  /** A figure and what is wrong with its unit. */
  record Slip(Figure figure, UnitSlip slip, double right) {}

  private final Sheet sheet;
  private final DriverTolerance tolerance;
  private final Double nominalMm;
  private final boolean small;

  Culprit(Sheet sheet, DriverTolerance tolerance, Double nominalMm) {
    this.sheet = sheet;
    this.tolerance = tolerance;
    this.nominalMm = nominalMm;
    this.small = UsualRange.isSmall(sheet, nominalMm);
  }

  /** Whether qes and qms are usual and all agrees once these two have changed places. */
  boolean areQesAndQmsExchanged() {
    double qes = sheet.of(Figure.QMS);
    double qms = sheet.of(Figure.QES);
    if (!sheet.isGiven(Figure.QES)
        || !sheet.isGiven(Figure.QMS)
        || Math.abs(Math.log(qes / qms)) < EXCHANGED
        || !UsualRange.QES.holds(qes, small)
        || !UsualRange.QMS.holds(qms, small)) {
      return false;
    }
    Sheet other = sheet.with(Figure.QES, qes).with(Figure.QMS, qms);
    return isPlausible(other) && !Agreement.of(other, tolerance).isAnyOff();
  }

  /** The one figure in a wrong unit that explains it all, or null. */
  Slip slip() {
    Slip unit = onlySlip(UnitSlip::units);
    Slip slip = unit != null ? unit : onlySlip(figure -> UnitSlip.DECIMAL_POINT);
    return slip == null || (isUsual(slip.figure()) && isMerelyOverstated()) ? null : slip;
  }

  private boolean isUsual(Figure figure) {
    return UsualRange.of(figure).holds(sheet.of(figure), small);
  }

  /** Whether a sensitivity overstated as sensitivities are explains it all. */
  private boolean isMerelyOverstated() {
    if (!sheet.isGiven(Figure.LEVEL)) {
      return false;
    }
    Sheet rest = sheet.with(Figure.LEVEL, null);
    Agreement agreement = Agreement.of(rest, tolerance);
    return isOverstated(level(agreement)) && isPlausible(rest) && !agreement.isAnyOff();
  }

  private boolean isOverstated(double impliedLevel) {
    double above = sheet.of(Figure.LEVEL) - impliedLevel;
    return above > 0 && above <= MOST_OVERSTATED_DB;
  }

  /** The level that a record gives on the basis stated. */
  private double level(Agreement agreement) {
    return sheet.drive.isPerVolt() ? agreement.voltageLevel() : agreement.oneWattLevel();
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
    boolean isSmall = UsualRange.isSmall(other, nominalMm);
    for (Figure figure : Figure.ALL) {
      if (other.isKnown(figure) && UsualRange.of(figure).isSuspicious(other.of(figure), isSmall)) {
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
    boolean isSmall = UsualRange.isSmall(other, nominalMm);
    return nominalMm == null
        || !other.isKnown(Figure.SD)
        || UsualRange.DIAMETER.isSuspicious(nominalMm, isSmall)
        || UsualRange.fitsNominal(
            Piston.EFFECTIVE_DIAMETER.at(other.of(Figure.SD)), nominalMm, isSmall);
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
      double implied = level(agreement);
      double correction = Math.abs(implied - given) * Reconciliation.PER_DB;
      into.add(new Suspect(figure, implied, correction, becomesUsual(figure, implied)));
    } else if (!rest.isKnown(figure)) {
      into.add(new Suspect(figure, 0, Double.POSITIVE_INFINITY, false));
    } else if (isPlausible(rest)) {
      double implied = rest.of(figure);
      double correction = Math.abs(Math.log(implied / given));
      into.add(new Suspect(figure, implied, correction, becomesUsual(figure, implied)));
    }
  }

  private boolean becomesUsual(Figure figure, double implied) {
    return !isUsual(figure) && UsualRange.of(figure).holds(implied, small);
  }

  /**
   * qes and qts, if they explain it all when wrong together: by the same factor, or because one was
   * worked out from the other. Null otherwise.
   */
  QPair pair() {
    if (!sheet.isGiven(Figure.QES) || !sheet.isGiven(Figure.QTS)) {
      return null;
    }
    Sheet rest = sheet.with(Figure.QES, null).with(Figure.QTS, null);
    if (!rest.isKnown(Figure.QES)
        || !isPlausible(rest)
        || Agreement.of(rest, tolerance).isAnyOff()) {
      return null;
    }
    double qes = rest.of(Figure.QES);
    double sameFactor = sheet.of(Figure.QTS) * qes / sheet.of(Figure.QES);
    double qts = rest.isKnown(Figure.QTS) ? rest.of(Figure.QTS) : sameFactor;
    boolean unusual = becomesUsual(Figure.QES, qes) || becomesUsual(Figure.QTS, qts);
    boolean together =
        rest.isKnown(Figure.QTS)
            ? Math.abs(Math.log(qts / sameFactor)) < TOGETHER
                || !Agreement.of(sheet, tolerance).isOff(Identity.QTS)
            : unusual;
    return together ? new QPair(qes, qts, unusual) : null;
  }

  /**
   * The suspect that stands out from the others, or null. Of those that the residuals leave equal,
   * one that is not usual as given comes first, and then an overstated sensitivity.
   */
  Suspect odd(List<Suspect> suspects, Reconciliation reconciliation) {
    double farthest = 0;
    for (Suspect suspect : suspects) {
      farthest = Math.max(farthest, reconciliation.standardised(suspect.figure()));
    }
    Suspect unusual = null;
    Suspect overstated = null;
    int unusuals = 0;
    for (Suspect suspect : suspects) {
      if (farthest <= CLEARLY_WORSE * reconciliation.standardised(suspect.figure())) {
        unusuals += suspect.unusual() ? 1 : 0;
        unusual = suspect.unusual() ? suspect : unusual;
        boolean level = suspect.figure() == Figure.LEVEL && isOverstated(suspect.implied());
        overstated = level ? suspect : overstated;
      }
    }
    if (unusuals == 1) {
      return unusual;
    }
    return overstated != null ? overstated : standingOut(suspects, reconciliation);
  }

  private static Suspect standingOut(List<Suspect> suspects, Reconciliation reconciliation) {
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
