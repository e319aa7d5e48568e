package org.footwell.analysis;

import java.util.Arrays;
import java.util.List;
import org.footwell.calculation.Outcome;
import org.footwell.calculation.Place;
import org.footwell.calculation.Refused;
import org.footwell.calculation.Verdict;

/**
 * What a calculation came to with one set of values.
 *
 * @param outputs the values asked for, unrounded; null where the result has none. Null if refused
 * @param codes codes of the findings, each once, worst first; null if refused
 * @param verdict the worst finding, null if refused
 * @param refused why there is no answer, or null
 */
public record Point(List<Object> outputs, List<String> codes, Verdict verdict, Refused refused) {

  static Point of(Outcome<?> outcome, List<Place> outputs) {
    Object[] values = new Object[outputs.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = outputs.get(i).of(outcome.result());
    }
    return new Point(Arrays.asList(values), outcome.codes(), outcome.verdict(), null);
  }

  static Point of(Refused refused) {
    return new Point(null, null, null, refused);
  }

  /** An output as a number; not a number where there is none. */
  public double number(int output) {
    return refused == null && outputs.get(output) instanceof Number number
        ? number.doubleValue()
        : Double.NaN;
  }
}
