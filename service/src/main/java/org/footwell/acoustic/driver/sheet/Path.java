package org.footwell.acoustic.driver.sheet;

import static org.footwell.acoustic.driver.sheet.Figure.BL;
import static org.footwell.acoustic.driver.sheet.Figure.CMS;
import static org.footwell.acoustic.driver.sheet.Figure.FS;
import static org.footwell.acoustic.driver.sheet.Figure.MMS;
import static org.footwell.acoustic.driver.sheet.Figure.QES;
import static org.footwell.acoustic.driver.sheet.Figure.QMS;
import static org.footwell.acoustic.driver.sheet.Figure.QTS;
import static org.footwell.acoustic.driver.sheet.Figure.RE;
import static org.footwell.acoustic.driver.sheet.Figure.RMS;
import static org.footwell.acoustic.driver.sheet.Figure.SD;
import static org.footwell.acoustic.driver.sheet.Figure.VAS;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.calculation.Formula;
import org.footwell.physics.ThieleSmall;

/**
 * One way to a figure from others, in the order they are tried: the exact and short ones first, qms
 * from two other Q last, since it magnifies their rounding.
 */
@SuppressWarnings("ImmutableEnumChecker") // nobody writes to the inputs; formulas are records
public enum Path {
  QTS_OF_Q(QTS, Identity.QTS, ThieleSmall.TOTAL_Q, QMS, QES),
  QES_OF_Q(QES, Identity.QTS, DriverLaws.ELECTRICAL_FROM_TOTAL, QTS, QMS),
  FS_OF_MECHANICS(FS, Identity.FS, DriverLaws.RESONANCE, MMS, CMS),
  CMS_OF_FS(CMS, Identity.FS, ThieleSmall.COMPLIANCE, FS, MMS),
  MMS_OF_FS(MMS, Identity.FS, ThieleSmall.MOVING_MASS, FS, CMS),
  CMS_OF_VAS(CMS, Identity.VAS, DriverLaws.COMPLIANCE_FROM_VOLUME, SD, VAS),
  VAS_OF_CMS(VAS, Identity.VAS, ThieleSmall.EQUIVALENT_VOLUME, SD, CMS),
  SD_OF_VAS(SD, Identity.VAS, DriverLaws.AREA_FROM_VOLUME, VAS, CMS),
  QES_OF_MOTOR(QES, Identity.QES, ThieleSmall.ELECTRICAL_Q, FS, MMS, RE, BL),
  BL_OF_QES(BL, Identity.QES, DriverLaws.FORCE_FACTOR, FS, MMS, RE, QES),
  MMS_OF_QES(MMS, Identity.QES, DriverLaws.MASS_FROM_ELECTRICAL_Q, QES, BL, FS, RE),
  RE_OF_QES(RE, Identity.QES, DriverLaws.RESISTANCE, QES, BL, FS, MMS),
  FS_OF_QES(FS, Identity.QES, DriverLaws.RESONANCE_FROM_ELECTRICAL_Q, QES, BL, MMS, RE),
  QMS_OF_LOSSES(QMS, Identity.QMS, ThieleSmall.MECHANICAL_Q, FS, MMS, RMS),
  MMS_OF_QMS(MMS, Identity.QMS, DriverLaws.MASS_FROM_MECHANICAL_Q, QMS, RMS, FS),
  FS_OF_QMS(FS, Identity.QMS, DriverLaws.RESONANCE_FROM_MECHANICAL_Q, QMS, RMS, MMS),
  QMS_OF_Q(QMS, Identity.QTS, DriverLaws.MECHANICAL_FROM_TOTAL, QTS, QES),
  RMS_OF_QMS(RMS, Identity.QMS, DriverLaws.MECHANICAL_RESISTANCE, FS, MMS, QMS);

  static final Path[] ALL = values();

  public final Figure target;
  final Identity identity;
  final Figure[] inputs;
  final int needed;

  /** What stands in the answer: {@code qes from qts qms}. */
  final String text;

  private final Record formula;

  Path(Figure target, Identity identity, Record formula, Figure... inputs) {
    this.target = target;
    this.identity = identity;
    this.formula = formula;
    this.inputs = inputs;
    this.needed = Figure.bits(inputs);
    StringBuilder words = new StringBuilder(target.field).append(" from");
    for (Figure input : inputs) {
      words.append(' ').append(input.field);
    }
    this.text = words.toString();
  }

  /** The fields it goes out from. */
  public String inputs() {
    return Stream.of(inputs).map(input -> input.field).collect(Collectors.joining(" "));
  }

  /** The path that computes the figure an identity is named after; none for the sensitivity. */
  static Path of(Identity identity) {
    return switch (identity) {
      case QTS -> QTS_OF_Q;
      case FS -> FS_OF_MECHANICS;
      case VAS -> VAS_OF_CMS;
      case QES -> QES_OF_MOTOR;
      case QMS -> QMS_OF_LOSSES;
      case SENSITIVITY -> throw new IllegalArgumentException("has no path of its own");
    };
  }

  @SuppressWarnings("EnumOrdinal") // nothing outlives the run
  int bit() {
    return 1 << ordinal();
  }

  double at(Sheet sheet) {
    double a = sheet.of(inputs[0]);
    double b = sheet.of(inputs[1]);
    if (formula instanceof Formula.Of2 two) {
      return sheet.steps.apply(two, a, b);
    }
    if (formula instanceof Formula.Of3 three) {
      return sheet.steps.apply(three, a, b, sheet.of(inputs[2]));
    }
    Formula.Of4 four = (Formula.Of4) formula;
    return identity == Identity.VAS
        ? sheet.steps.apply(four, sheet.air.density(), sheet.air.speed(), a, b)
        : sheet.steps.apply(four, a, b, sheet.of(inputs[2]), sheet.of(inputs[3]));
  }

  /**
   * Largest relative error of the outcome that the errors of the inputs can cause: each counts with
   * its power in the formula.
   */
  double rounding(Sheet sheet, double outcome) {
    double sum = 0;
    for (Figure input : inputs) {
      sum += power(input, outcome, sheet) * sheet.rounding(input);
    }
    return sum;
  }

  private double power(Figure input, double outcome, Sheet sheet) {
    if (identity == Identity.QTS) {
      // 1/qts = 1/qms + 1/qes, so d ln x = ± x/y · d ln y.
      return Math.abs(outcome / sheet.of(input));
    }
    return switch (identity) {
      case FS -> target == FS ? 0.5 : input == FS ? 2 : 1;
      case VAS -> target == SD ? 0.5 : input == SD ? 2 : 1;
      case QES -> (target == BL ? 0.5 : 1) * (input == BL ? 2 : 1);
      default -> 1;
    };
  }
}
