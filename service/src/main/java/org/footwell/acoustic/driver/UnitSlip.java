package org.footwell.acoustic.driver;

import java.util.List;
import org.footwell.acoustic.driver.sheet.Figure;
import org.footwell.calculation.text.Phrase;

/**
 * Ways to get a unit or the decimal point wrong.
 *
 * @param factor what the figure must be multiplied by to be right
 * @param words what it looks like
 */
record UnitSlip(double factor, Phrase words) {

  private static final UnitSlip KILO = unit(1000, "m");
  private static final UnitSlip POINT_LEFT = slip(10, DriverWords.POINT_LEFT);
  private static final UnitSlip POINT_RIGHT = slip(0.1, DriverWords.POINT_RIGHT);

  /** For lengths in mm. */
  static final List<UnitSlip> LENGTH =
      List.of(slip(25.4, DriverWords.IN_INCHES), unit(10, "cm"), KILO);

  /** For inductance in mH. */
  static final List<UnitSlip> INDUCTANCE = List.of(unit(1000, "H"), unit(0.001, "µH"));

  /** For power in W. */
  static final List<UnitSlip> POWER = List.of(unit(1000, "kW"));

  /** For mass in g. */
  static final List<UnitSlip> MASS = List.of(unit(1000, "kg"));

  static final List<UnitSlip> DECIMAL_POINT = List.of(POINT_LEFT, POINT_RIGHT);

  private static UnitSlip slip(double factor, DriverWords words) {
    return new UnitSlip(factor, Phrase.of(words));
  }

  private static UnitSlip unit(double factor, String unit) {
    return new UnitSlip(factor, Phrase.of(DriverWords.IN_UNIT).own("unit", unit));
  }

  /** Wrong units of a figure that were seen on data sheets, the usual ones first. */
  static List<UnitSlip> units(Figure figure) {
    return switch (figure) {
      case SD_CM2 ->
          List.of(unit(10000, "m²"), unit(0.01, "mm²"), slip(6.4516, DriverWords.IN_SQUARE_INCHES));
      case CMS_MM_PER_N -> List.of(unit(0.001, "µm/N"), unit(1000, "m/N"));
      case MMS_G -> List.of(unit(1000, "kg"), unit(0.001, "mg"));
      case VAS_L ->
          List.of(unit(1000, "m³"), slip(28.3168, DriverWords.IN_CUBIC_FEET), unit(0.001, "cm³"));
      case FS_HZ -> List.of(unit(1000, "kHz"));
      case RE_OHM -> List.of(unit(1000, "kohm"), unit(0.001, "mohm"));
      case RMS_KG_PER_S -> List.of(unit(0.001, "g/s"));
      default -> List.of();
    };
  }
}
