package org.footwell.calculation;

import ch.randelshofer.fastdoubleparser.JavaBigDecimalParser;
import ch.randelshofer.fastdoubleparser.JsonDoubleParser;
import java.math.BigDecimal;
import org.footwell.calculation.text.Quantity;

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

  /**
   * The same where a length, an area or a volume may have its unit.
   *
   * @param of path of the quantity that the value is one of
   */
  static Object value(Node.Scalar scalar, String text, String of) {
    Object value = value(scalar, text);
    return value == null && scalar.isFractional() ? Quantity.read(of, text) : value;
  }

  /** The same of a cell of a row. */
  static Object value(Node.Scalar scalar, Row row, int cell) {
    if (scalar.type() != Double.class || row.length(cell) > LONGEST_NUMBER) {
      return value(scalar, row.text(cell));
    }
    try {
      return finite(
          JsonDoubleParser.parseDouble(row.characters(), row.start(cell), row.length(cell)));
    } catch (NumberFormatException notANumber) {
      return null;
    }
  }

  private static Object number(Class<?> type, String text) {
    try {
      if (type == Integer.class) {
        return Integer.valueOf(text);
      }
      if (type == BigDecimal.class) {
        return JavaBigDecimalParser.parseBigDecimal(text);
      }
      return finite(JsonDoubleParser.parseDouble(text));
    } catch (NumberFormatException notANumber) {
      return null;
    }
  }

  /** A number, or null where no double can hold it; nothing has no sign, however it is written. */
  static Double finite(double number) {
    return Double.isFinite(number) ? (Double) (number + 0.0) : null;
  }
}
