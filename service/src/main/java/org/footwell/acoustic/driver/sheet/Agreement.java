package org.footwell.acoustic.driver.sheet;

import static org.footwell.acoustic.driver.sheet.Figure.BL_TM;
import static org.footwell.acoustic.driver.sheet.Figure.FS_HZ;
import static org.footwell.acoustic.driver.sheet.Figure.MMS_G;
import static org.footwell.acoustic.driver.sheet.Figure.QES;
import static org.footwell.acoustic.driver.sheet.Figure.RE_OHM;
import static org.footwell.acoustic.driver.sheet.Figure.SD_CM2;
import static org.footwell.acoustic.driver.sheet.Figure.SENSITIVITY;
import static org.footwell.acoustic.driver.sheet.Figure.VAS_L;

import org.footwell.physics.ThieleSmall;

/** How well a completed record agrees with itself, identity by identity. */
public final class Agreement {

  private static final int BY_VOLUME = Figure.bits(FS_HZ, VAS_L, QES);
  private static final int BY_MOTOR = Figure.bits(SD_CM2, BL_TM, RE_OHM, MMS_G);
  private static final double DB_PER_RATIO = 10 / Math.log(10);

  private final Sheet sheet;
  private final DriverTolerance tolerance;

  /** What the others give for the figure of each identity; 0 where it cannot be checked. */
  private final double[] expected = new double[Identity.ALL.length];

  /** How much rounding explains, as a ratio; for the sensitivity in dB. */
  private final double[] rounding = new double[Identity.ALL.length];

  /** Identities that disagree by more than passes, and by so much that it is gross, as bits. */
  private int off;

  private int gross;

  /** Reference efficiency, or 0 where it does not follow. */
  private double efficiency;

  /** Level for 1 W into re in dB SPL; holds only with an efficiency. */
  private double referenceLevel;

  /** Levels for 1 W into the rated impedance and for 2.83 V; hold only when re is known too. */
  private double oneWattLevel;

  private double voltageLevel;

  private Agreement(Sheet sheet, DriverTolerance tolerance) {
    this.sheet = sheet;
    this.tolerance = tolerance;
  }

  public static Agreement of(Sheet sheet, DriverTolerance tolerance) {
    Agreement agreement = new Agreement(sheet, tolerance);
    for (Identity identity : Identity.ALL) {
      if (identity == Identity.SENSITIVITY) {
        agreement.checkSensitivity();
      } else {
        agreement.check(identity, Path.of(identity));
      }
      agreement.judge(identity);
    }
    return agreement;
  }

  private void judge(Identity identity) {
    double far = disagreement(identity);
    double passes = identity.allowed(tolerance);
    double rounded = rounding[identity.index()];
    off |= far > passes + rounded ? identity.bit() : 0;
    gross |= far > tolerance.grossFactor() * passes + rounded ? identity.bit() : 0;
  }

  private void check(Identity identity, Path path) {
    if (!sheet.isKnown(path.target)
        || !sheet.knows(path.needed)
        || !sheet.isIndependentOf(identity, path.target)) {
      return;
    }
    for (Figure input : path.inputs) {
      if (!sheet.isIndependentOf(identity, input)) {
        return;
      }
    }
    double value = path.at(sheet);
    expected[identity.index()] = value;
    rounding[identity.index()] = path.rounding(sheet, value) + sheet.rounding(path.target);
  }

  private void checkSensitivity() {
    double efficiencyRounding;
    double c = sheet.air.speed();
    if (sheet.knows(BY_VOLUME)) {
      efficiency =
          sheet.steps.apply(
              ThieleSmall.REFERENCE_EFFICIENCY, c, sheet.of(FS_HZ), sheet.of(VAS_L), sheet.of(QES));
      efficiencyRounding = 3 * sheet.rounding(FS_HZ) + sheet.rounding(VAS_L) + sheet.rounding(QES);
    } else if (sheet.knows(BY_MOTOR)) {
      double a =
          sheet.steps.apply(
              DriverLaws.VOLUME_ACCELERATION, sheet.of(SD_CM2), sheet.of(BL_TM), sheet.of(MMS_G));
      efficiency =
          sheet.steps.apply(
              DriverLaws.EFFICIENCY_OF_ACCELERATION, sheet.air.density(), c, a, sheet.of(RE_OHM));
      efficiencyRounding =
          2 * (sheet.rounding(SD_CM2) + sheet.rounding(BL_TM) + sheet.rounding(MMS_G))
              + sheet.rounding(RE_OHM);
    } else {
      return;
    }
    referenceLevel =
        sheet.steps.apply(ThieleSmall.EFFICIENCY_LEVEL, efficiency, sheet.air.density(), c);
    if (!sheet.isKnown(RE_OHM)) {
      return;
    }
    double re = sheet.of(RE_OHM);
    oneWattLevel =
        sheet.steps.apply(DriverLaws.ONE_WATT_LEVEL, referenceLevel, sheet.drive.ratedOhm(), re);
    voltageLevel = sheet.steps.apply(DriverLaws.VOLTAGE_LEVEL, referenceLevel, re);
    if (sheet.isGiven(SENSITIVITY)) {
      int here = Identity.SENSITIVITY.index();
      expected[here] = sheet.drive.isPerVolt() ? voltageLevel : oneWattLevel;
      rounding[here] =
          sheet.rounding(SENSITIVITY)
              + DB_PER_RATIO * (efficiencyRounding + sheet.rounding(RE_OHM));
    }
  }

  /** What the stated level would have to be on the other basis, less what it is. */
  public double otherBasisExcess() {
    return sheet.of(SENSITIVITY) - (sheet.drive.isPerVolt() ? oneWattLevel : voltageLevel);
  }

  public double efficiency() {
    return efficiency;
  }

  public double referenceLevel() {
    return referenceLevel;
  }

  public double oneWattLevel() {
    return oneWattLevel;
  }

  public double voltageLevel() {
    return voltageLevel;
  }

  public boolean hasEfficiency() {
    return efficiency != 0;
  }

  public boolean hasLevels() {
    return efficiency != 0 && sheet.isKnown(RE_OHM);
  }

  public boolean isChecked(Identity identity) {
    return expected[identity.index()] != 0;
  }

  public double expected(Identity identity) {
    return expected[identity.index()];
  }

  /** Given above expected: in percent, for the sensitivity in dB. */
  public double excess(Identity identity) {
    double value = sheet.of(identity.figure);
    double wanted = expected(identity);
    return identity == Identity.SENSITIVITY ? value - wanted : 100 * (value / wanted - 1);
  }

  /** The same, or null where it could not be checked. */
  public Double excessOrNull(Identity identity) {
    return isChecked(identity) ? (Double) excess(identity) : null;
  }

  /** What passes, tolerance and rounding together: in percent, for the sensitivity in dB. */
  public double allowed(Identity identity) {
    double allowed = identity.allowed(tolerance) + rounding[identity.index()];
    return identity == Identity.SENSITIVITY ? allowed : 100 * allowed;
  }

  public boolean isOff(Identity identity) {
    return (off & identity.bit()) != 0;
  }

  public boolean isGross(Identity identity) {
    return (gross & identity.bit()) != 0;
  }

  /** The larger over the smaller, less 1; for the sensitivity the difference in dB; 0 unchecked. */
  private double disagreement(Identity identity) {
    if (!isChecked(identity)) {
      return 0;
    }
    double value = sheet.of(identity.figure);
    double wanted = expected(identity);
    if (identity == Identity.SENSITIVITY) {
      return Math.abs(value - wanted);
    }
    return Math.max(value / wanted, wanted / value) - 1;
  }

  public boolean isAnyGross() {
    return gross != 0 || sheet.hasImpossibleTotalQ();
  }

  public boolean isAnyOff() {
    return off != 0 || sheet.hasImpossibleTotalQ();
  }
}
