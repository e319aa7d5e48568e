package org.footwell.calculation;

import ch.randelshofer.fastdoubleparser.JavaBigDecimalParser;
import ch.randelshofer.fastdoubleparser.JsonDoubleParser;
import java.math.BigDecimal;

/** A value written as text, as in a query or a CSV row. */
final class Cell {

  private static final int LONGEST_NUMBER = 40;

  private Cell() {}

  /** The value a text stands for, or null if it is none of the kind. */
  static Object value(Node.Scalar scalar, String text) {
    Class<?> type = scalar.type();
    if (type == String.class) {
      return text;
    }
    if (type.isEnum()) {
      return scalar.constants().get(text);
    }
    if (type == Boolean.class) {
      return text.equals("true") ? Boolean.TRUE : text.equals("false") ? Boolean.FALSE : null;
    }
    return text.length() > LONGEST_NUMBER ? null : number(type, text);
  }

  private static Object number(Class<?> type, String text) {
    try {
      if (type == Integer.class) {
        return Integer.valueOf(text);
      }
      if (type == BigDecimal.class) {
        return JavaBigDecimalParser.parseBigDecimal(text);
      }
      double number = JsonDoubleParser.parseDouble(text);
      return Double.isFinite(number) ? (Double) number : null;
    } catch (NumberFormatException notANumber) {
      return null;
    }
  }
}
