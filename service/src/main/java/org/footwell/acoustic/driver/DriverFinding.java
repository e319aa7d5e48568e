package org.footwell.acoustic.driver;

import static org.footwell.calculation.Verdict.NOTE;
import static org.footwell.calculation.Verdict.STOP;
import static org.footwell.calculation.Verdict.WARNING;

import org.footwell.acoustic.driver.sheet.Identity;
import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;

/** What there is to say about the record of a driver. */
public enum DriverFinding implements FindingCode {
  QTS_OFF(WARNING),
  QTS_CONTRADICTED(STOP),
  QTS_IMPOSSIBLE(STOP),
  FS_OFF(WARNING),
  FS_CONTRADICTED(STOP),
  VAS_OFF(WARNING),
  VAS_CONTRADICTED(STOP),
  QES_OFF(WARNING),
  QES_CONTRADICTED(STOP),
  QMS_OFF(WARNING),
  QMS_CONTRADICTED(STOP),
  SENSITIVITY_OFF(WARNING),
  SENSITIVITY_CONTRADICTED(STOP),
  SENSITIVITY_FITS_OTHER_BASIS(NOTE),
  UNIT_SLIP(STOP),
  QES_AND_QMS_EXCHANGED(STOP),
  ODD_ONE_OUT(WARNING),
  QES_AND_QTS_WRONG(WARNING),
  ONE_OF_SEVERAL_WRONG(WARNING),
  SEVERAL_FIGURES_WRONG(WARNING),
  IMPLAUSIBLE(WARNING),
  ABSURD(STOP),
  DERIVED_IMPLAUSIBLE(WARNING),
  XMAX_PEAK_TO_PEAK(WARNING),
  MASS_UNUSUAL_FOR_AREA(WARNING),
  RE_ABOVE_RATED(WARNING),
  RE_LOW_FOR_RATED(WARNING),
  RE_CONTRADICTS_RATED(STOP),
  PEAK_INFLATED(NOTE),
  PEAK_BELOW_CONTINUOUS(WARNING),
  SIZE_OFF(WARNING),
  AREA_ESTIMATED(NOTE),
  CUTOUT_TOO_LARGE(WARNING),
  POORLY_DETERMINED(NOTE),
  NOT_CHECKED(NOTE);

  private final Verdict level;

  DriverFinding(Verdict level) {
    this.level = level;
  }

  @Override
  public Verdict level() {
    return level;
  }

  /** What is said when an identity is off, or grossly so. */
  static DriverFinding about(Identity identity, boolean gross) {
    return switch (identity) {
      case QTS -> gross ? QTS_CONTRADICTED : QTS_OFF;
      case FS -> gross ? FS_CONTRADICTED : FS_OFF;
      case VAS -> gross ? VAS_CONTRADICTED : VAS_OFF;
      case QES -> gross ? QES_CONTRADICTED : QES_OFF;
      case QMS -> gross ? QMS_CONTRADICTED : QMS_OFF;
      case SENSITIVITY -> gross ? SENSITIVITY_CONTRADICTED : SENSITIVITY_OFF;
    };
  }
}
