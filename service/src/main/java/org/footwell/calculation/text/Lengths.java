package org.footwell.calculation.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Lengths that are said together, such as width and height, with their unit.
 *
 * @param figures each as it is written
 * @param measure what they are in
 * @param between what stands between them
 * @param rounding of what they are converted to
 */
public record Lengths(List<String> figures, Measure measure, String between, RoundingMode rounding)
    implements ToldTo {

  @Override
  public String text() {
    return together(figures, measure);
  }

  @Override
  public String said(Reader reader) {
    Measure shown = reader.units().of(measure);
    return shown == measure
        ? text()
        : together(figures.stream().map(one -> converted(one, shown)).toList(), shown);
  }

  private String converted(String one, Measure shown) {
    BigDecimal exact = Quantity.exactly(measure, new BigDecimal(one), shown);
    return Exact.inFour(exact, rounding);
  }

  private String together(List<String> all, Measure in) {
    return all.stream().collect(Collectors.joining(between, "", " " + in.symbol()));
  }
}
