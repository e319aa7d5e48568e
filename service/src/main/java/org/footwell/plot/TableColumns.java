package org.footwell.plot;

import java.util.List;
import java.util.function.DoubleFunction;
import org.footwell.sheet.WrittenFigure;

/**
 * Where the table beside a plot reads its curves, and how what it reads is written.
 *
 * @param at places on the axis from left to right, with what stands over their columns
 * @param figure a value of the other axis, without its unit
 */
public record TableColumns(List<Axis.Tick> at, DoubleFunction<WrittenFigure> figure) {

  public TableColumns {
    at = List.copyOf(at);
  }

  List<String> columns() {
    return at.stream().map(Axis.Tick::text).toList();
  }
}
