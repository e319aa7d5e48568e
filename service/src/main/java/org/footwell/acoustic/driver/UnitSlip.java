package org.footwell.acoustic.driver;

import java.util.List;
import org.footwell.acoustic.driver.sheet.Figure;

/**
 * Ways to get a unit or the decimal point wrong.
 *
 * @param factor what the figure must be multiplied by to be right
 * @param words what it looks like
 */
record UnitSlip(double factor, String words) {

  private static final UnitSlip KILO = new UnitSlip(1000, "a figure in m");
  private static final UnitSlip POINT_LEFT =
      new UnitSlip(10, "a decimal point one place too far left");
  private static final UnitSlip POINT_RIGHT =
      new UnitSlip(0.1, "a decimal point one place too far right");

  /** For lengths in mm. */
  static final List<UnitSlip> LENGTH =
      List.of(new UnitSlip(25.4, "a figure in inches"), new UnitSlip(10, "a figure in cm"), KILO);

  /** For inductance in mH. */
  static final List<UnitSlip> INDUCTANCE =
      List.of(new UnitSlip(1000, "a figure in H"), new UnitSlip(0.001, "a figure in µH"));

  /** For power in W. */
  static final List<UnitSlip> POWER = List.of(new UnitSlip(1000, "a figure in kW"));

  /** For mass in g. */
  static final List<UnitSlip> MASS = List.of(new UnitSlip(1000, "a figure in kg"));

  static final List<UnitSlip> DECIMAL_POINT = List.of(POINT_LEFT, POINT_RIGHT);

  /** Wrong units of a figure that were seen on data sheets, the usual ones first. */
  static List<UnitSlip> units(Figure figure) {
    return switch (figure) {
      case SD ->
          List.of(
              new UnitSlip(10000, "a figure in m²"),
              new UnitSlip(0.01, "a figure in mm²"),
              new UnitSlip(6.4516, "a figure in square inches"));
      case CMS ->
          List.of(new UnitSlip(0.001, "a figure in µm/N"), new UnitSlip(1000, "a figure in m/N"));
      case MMS ->
          List.of(new UnitSlip(1000, "a figure in kg"), new UnitSlip(0.001, "a figure in mg"));
      case VAS ->
          List.of(
              new UnitSlip(1000, "a figure in m³"),
              new UnitSlip(28.3168, "a figure in cubic feet"),
              new UnitSlip(0.001, "a figure in cm³"));
      case FS -> List.of(new UnitSlip(1000, "a figure in kHz"));
      case RE ->
          List.of(new UnitSlip(1000, "a figure in kohm"), new UnitSlip(0.001, "a figure in mohm"));
      case RMS -> List.of(new UnitSlip(0.001, "a figure in g/s"));
      default -> List.of();
    };
  }
}
