package org.footwell.acoustic.driver;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.footwell.acoustic.driver.sheet.Agreement;
import org.footwell.acoustic.driver.sheet.DriverTolerance;
import org.footwell.acoustic.driver.sheet.Figure;
import org.footwell.acoustic.driver.sheet.Identity;
import org.footwell.acoustic.driver.sheet.Reconciliation;
import org.footwell.acoustic.driver.sheet.Sheet;
import org.footwell.physics.Piston;

/** Looks for the single figure that spoils a record. */
final class Culprit {

  /** Of several possible figures, one is named whose residual is this much larger. */
  private static final double CLEARLY_WORSE = 1.2;

  /** Two figures that went wrong together are wrong by the same factor but for rounding. */
  private static final double TOGETHER = Math.log(1.1);

  /** Two figures closer than that are not said to be exchanged. */
  private static final double EXCHANGED = Math.log(1.5);

  private static final double SLACK = 0.05;

  /**
   * A figure whose change makes the rest agree.
   *
   * @param implied what the rest gives for it, or 0
   * @param unusual whether it is given outside of what is usual and implied inside
   */
  record Suspect(Figure figure, double implied, boolean unusual) {
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

  /**
   * Whether qes and qms are usual and all agrees once these two have changed places. Only where a Q
   * itself was off: a level alone fits too many explanations, its basis first.
   */
  boolean areQesAndQmsExchanged(Agreement agreement) {
    if (!agreement.isOff(Identity.QES) && !agreement.isOff(Identity.QMS)) {
      return false;
    }
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

  /**
   * The one figure in a wrong unit that explains it all, or null. Of a figure that is usual as given
   * none is thought of where another figure explains it too.
   */
  Slip slip() {
    Slip unit = onlySlip(UnitSlip::units);
    Slip slip = unit != null ? unit : onlySlip(figure -> UnitSlip.DECIMAL_POINT);
    boolean doubtful =
        slip != null
            && isUsual(slip.figure())
            && suspects().stream().anyMatch(other -> other.figure() != slip.figure());
    return doubtful ? null : slip;
  }

  private boolean isUsual(Figure figure) {
    return UsualRange.of(figure).holds(sheet.of(figure), small);
  }

  /** The level that a record gives on the basis stated. */
  private double level(Agreement agreement) {
    return sheet.drive.isPerVolt() ? agreement.voltageLevel() : agreement.oneWattLevel();
  }

  private Slip onlySlip(Function<Figure, List<UnitSlip>> slips) {
    Slip found = null;
    for (Figure figure : Figure.ALL) {
      if (figure == Figure.SENSITIVITY || !sheet.isGiven(figure)) {
        continue;
      }
      for (UnitSlip slip : slips.apply(figure)) {
        double right = sheet.of(figure) * slip.factor();
        if (explains(figure, sheet.with(figure, right))) {
          if (found != null) {
            return null;
          }
          found = new Slip(figure, slip, right);
        }
      }
    }
    return found;
  }

  /** A correction that is proposed leaves nothing to object to. */
  private boolean explains(Figure figure, Sheet other) {
    return UsualRange.of(figure).holds(other.of(figure), UsualRange.isSmall(other, nominalMm))
        && isPlausible(other)
        && !Agreement.of(other, tolerance).isAnyOff();
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
    double ratio = other.of(Figure.RE_OHM) / other.drive.ratedOhm();
    return !other.isKnown(Figure.RE_OHM)
        || (ratio >= tolerance.reRatioLow() * (1 - SLACK)
            && ratio <= tolerance.reRatioHigh() * (1 + SLACK));
  }

  private boolean fitsNominal(Sheet other) {
    boolean isSmall = UsualRange.isSmall(other, nominalMm);
    return nominalMm == null
        || !other.isKnown(Figure.SD_CM2)
        || UsualRange.DIAMETER.isSuspicious(nominalMm, isSmall)
        || UsualRange.fitsNominal(
            Piston.EFFECTIVE_DIAMETER.at(other.of(Figure.SD_CM2)), nominalMm, isSmall);
  }

  /** Whether the moving mass is out of all proportion to the cone area. */
  static boolean hasOddMass(Sheet sheet) {
    if (!sheet.isKnown(Figure.MMS_G) || !sheet.isKnown(Figure.SD_CM2)) {
      return false;
    }
    double massPerArea = sheet.of(Figure.MMS_G) / sheet.of(Figure.SD_CM2);
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
    if (figure == Figure.SENSITIVITY) {
      double implied = level(agreement);
      into.add(new Suspect(figure, implied, becomesUsual(figure, implied)));
    } else if (!rest.isKnown(figure)) {
      into.add(new Suspect(figure, 0, false));
    } else if (isPlausible(rest)) {
      double implied = rest.of(figure);
      into.add(new Suspect(figure, implied, becomesUsual(figure, implied)));
    }
  }

  /** What is usual depends on the size: where that is contradictory, nothing is taken for unusual. */
  private boolean becomesUsual(Figure figure, double implied) {
    return (nominalMm == null || small == nominalMm <= UsualRange.SMALL_MM)
        && !isUsual(figure)
        && UsualRange.of(figure).holds(implied, small);
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
   * The suspect that is clearly the best explanation, or null: the only one, or the only one that is
   * not usual as given but would be as implied, or one whose residual is clearly the largest. What
   * nothing confirms has no residual to go by.
   */
  Suspect odd(List<Suspect> suspects, Reconciliation reconciliation) {
    double farthest = 0;
    for (Suspect suspect : suspects) {
      farthest = Math.max(farthest, reconciliation.standardised(suspect.figure()));
    }
    double near = farthest / CLEARLY_WORSE;
    List<Suspect> equals =
        suspects.stream().filter(s -> reconciliation.standardised(s.figure()) >= near).toList();
    List<Suspect> unusual = equals.stream().filter(Suspect::unusual).toList();
    List<Suspect> best = unusual.isEmpty() ? equals : unusual;
    boolean clear = best.size() == 1 && (suspects.size() == 1 || best.get(0).isImplied());
    return clear ? best.get(0) : null;
  }
}
