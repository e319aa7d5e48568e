package org.footwell.acoustic.driver.sheet;

import static org.footwell.acoustic.driver.sheet.Figure.BL_TM;
import static org.footwell.acoustic.driver.sheet.Figure.CMS_MM_PER_N;
import static org.footwell.acoustic.driver.sheet.Figure.FS_HZ;
import static org.footwell.acoustic.driver.sheet.Figure.MMS_G;
import static org.footwell.acoustic.driver.sheet.Figure.QES;
import static org.footwell.acoustic.driver.sheet.Figure.QMS;
import static org.footwell.acoustic.driver.sheet.Figure.QTS;
import static org.footwell.acoustic.driver.sheet.Figure.RE_OHM;
import static org.footwell.acoustic.driver.sheet.Figure.RMS_KG_PER_S;
import static org.footwell.acoustic.driver.sheet.Figure.SD_CM2;
import static org.footwell.acoustic.driver.sheet.Figure.VAS_L;

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
  FS_OF_MECHANICS(FS_HZ, Identity.FS, DriverLaws.RESONANCE, MMS_G, CMS_MM_PER_N),
  CMS_OF_FS(CMS_MM_PER_N, Identity.FS, ThieleSmall.COMPLIANCE, FS_HZ, MMS_G),
  MMS_OF_FS(MMS_G, Identity.FS, ThieleSmall.MOVING_MASS, FS_HZ, CMS_MM_PER_N),
  CMS_OF_VAS(CMS_MM_PER_N, Identity.VAS, DriverLaws.COMPLIANCE_FROM_VOLUME, SD_CM2, VAS_L),
  VAS_OF_CMS(VAS_L, Identity.VAS, ThieleSmall.EQUIVALENT_VOLUME, SD_CM2, CMS_MM_PER_N),
  SD_OF_VAS(SD_CM2, Identity.VAS, DriverLaws.AREA_FROM_VOLUME, VAS_L, CMS_MM_PER_N),
  QES_OF_MOTOR(QES, Identity.QES, ThieleSmall.ELECTRICAL_Q, FS_HZ, MMS_G, RE_OHM, BL_TM),
  BL_OF_QES(BL_TM, Identity.QES, DriverLaws.FORCE_FACTOR, FS_HZ, MMS_G, RE_OHM, QES),
  MMS_OF_QES(MMS_G, Identity.QES, DriverLaws.MASS_FROM_ELECTRICAL_Q, QES, BL_TM, FS_HZ, RE_OHM),
  RE_OF_QES(RE_OHM, Identity.QES, DriverLaws.RESISTANCE, QES, BL_TM, FS_HZ, MMS_G),
  FS_OF_QES(FS_HZ, Identity.QES, DriverLaws.RESONANCE_FROM_ELECTRICAL_Q, QES, BL_TM, MMS_G, RE_OHM),
  QMS_OF_LOSSES(QMS, Identity.QMS, ThieleSmall.MECHANICAL_Q, FS_HZ, MMS_G, RMS_KG_PER_S),
  MMS_OF_QMS(MMS_G, Identity.QMS, DriverLaws.MASS_FROM_MECHANICAL_Q, QMS, RMS_KG_PER_S, FS_HZ),
  FS_OF_QMS(FS_HZ, Identity.QMS, DriverLaws.RESONANCE_FROM_MECHANICAL_Q, QMS, RMS_KG_PER_S, MMS_G),
  QMS_OF_Q(QMS, Identity.QTS, DriverLaws.MECHANICAL_FROM_TOTAL, QTS, QES),
  RMS_OF_QMS(RMS_KG_PER_S, Identity.QMS, DriverLaws.MECHANICAL_RESISTANCE, FS_HZ, MMS_G, QMS);

  static final Path[] ALL = values();

  public final Figure target;
  final Identity identity;
  final Figure[] inputs;
  final int needed;

  /** What stands in the answer: {@code qes from qts qms}. */
  public final String text;

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
      case FS -> target == FS_HZ ? 0.5 : input == FS_HZ ? 2 : 1;
      case VAS -> target == SD_CM2 ? 0.5 : input == SD_CM2 ? 2 : 1;
      case QES -> (target == BL_TM ? 0.5 : 1) * (input == BL_TM ? 2 : 1);
      default -> 1;
    };
  }
}
