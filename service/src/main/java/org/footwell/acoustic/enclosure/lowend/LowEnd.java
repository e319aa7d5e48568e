package org.footwell.acoustic.enclosure.lowend;

import java.util.OptionalDouble;
import org.footwell.acoustic.enclosure.radiator.Survey;
import org.footwell.acoustic.enclosure.radiator.Survey.Quantity;
import org.footwell.acoustic.enclosure.radiator.Survey.Summit;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.loudspeaker.Radiator;
import org.footwell.physics.Decibels;
import org.footwell.physics.ThieleSmall;

/** Corners and peak of the response: in closed form where there is one, otherwise searched. */
public final class LowEnd {

  /** How far off the resonances the search goes. */
  private static final double REACH = 50;

  /** What counts as a peak, dB: less is the search's own rounding. */
  private static final double LEAST_PEAK_DB = 1e-6;

  private static final double HALF_POWER_DB = Decibels.ofPower(2);
  private static final double TEN_DB = 10;

  /**
   * Frequency over resonance at which a closed box has lost some dB, from its total Q: the squared
   * response x⁴/((x² − 1)² + x²/Q²) is solved for x.
   */
  static final Formula.Of2 CORNER_RATIO =
      Formula.of(
              "frequency_ratio",
              "√((b + √(b² + 4·k))/(2·k)), b = 1/qtc² − 2, k = 10^(drop/10) − 1",
              "",
              ThieleSmall.SMALL_CLOSED)
          .with("qtc", "drop", LowEnd::cornerRatio);

  private static final Formula.Of2 CORNER =
      Formula.of("frequency_hz", "fc·ratio", "Hz", ThieleSmall.SMALL_CLOSED)
          .with("fc", "ratio", (fc, ratio) -> fc * ratio);

  /** Peak in dB of a closed box whose total Q is above 1/√2. */
  static final Formula.Of1 PEAK =
      Formula.of("peak_db", "20·lg(qtc²/√(qtc² − 1/4))", "dB", ThieleSmall.SMALL_CLOSED)
          .with("qtc", q -> Decibels.ofAmplitude(q * q / Math.sqrt(q * q - 0.25)));

  private static final Formula.Of2 PEAK_FREQUENCY =
      Formula.of("peak_hz", "fc/√(1 − 1/(2·qtc²))", "Hz", ThieleSmall.SMALL_CLOSED)
          .with("fc", "qtc", (fc, q) -> fc / Math.sqrt(1 - 1 / (2 * q * q)));

  private LowEnd() {}

  /** A closed box without leaks. */
  public static BoxResponse closed(double referenceLevel, double fc, double qtc, Arithmetic steps) {
    double f3 = steps.apply(CORNER, fc, steps.apply(CORNER_RATIO, qtc, HALF_POWER_DB));
    double f10 = steps.apply(CORNER, fc, steps.apply(CORNER_RATIO, qtc, TEN_DB));
    boolean peaked = qtc * qtc > 0.5;
    return new BoxResponse(
        referenceLevel,
        f3,
        f10,
        peaked ? steps.apply(PEAK, qtc) : 0,
        peaked ? steps.apply(PEAK_FREQUENCY, fc, qtc) : null);
  }

  /**
   * Any box, between the lowest and the highest of its resonances in Hz and well beyond.
   *
   * @param bare the driver in its box without inductance and filters
   */
  public static BoxResponse searched(
      BoxDrive drive, Radiator bare, double lowestHz, double highestHz) {
    double from = lowestHz / REACH;
    double to = highestHz * REACH;
    Survey survey = new Survey(bare, from, to);
    Quantity drop = (f, s) -> drive.oneVoltLevel() - s.levelDbSpl();
    Summit peak = survey.highest((f, s) -> -drop.of(f, s));
    boolean peaked = peak.value() > LEAST_PEAK_DB && peak.frequencyHz() < to;
    return new BoxResponse(
        drive.referenceLevel(),
        number(survey.lastReaching(drop, HALF_POWER_DB, to)),
        number(survey.lastReaching(drop, TEN_DB, to)),
        peaked ? peak.value() : 0,
        peaked ? peak.frequencyHz() : null);
  }

  private static Double number(OptionalDouble found) {
    return found.isPresent() ? found.getAsDouble() : null;
  }

  private static double cornerRatio(double q, double dropDb) {
    double b = 1 / (q * q) - 2;
    double k = Decibels.toPower(dropDb) - 1;
    double root = Math.sqrt(b * b + 4 * k);
    // For b below 0 the sum would cancel: the same root by the product of the two.
    double square = b >= 0 ? (b + root) / (2 * k) : 2 / (root - b);
    return Math.sqrt(square);
  }
}
