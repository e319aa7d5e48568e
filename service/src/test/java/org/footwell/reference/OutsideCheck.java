package org.footwell.reference;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.footwell.reference.ReferenceTable.Row;

/**
 * One quantity of a calculation held against a table from outside.
 *
 * @param calculation id of the calculation
 * @param quantity what is compared
 * @param table file name of the reference table
 * @param rows which rows of it
 * @param printed the outside value of a row
 * @param computed our value for the row
 * @param tolerance largest deviation, from the last printed digit
 * @param relative whether the deviation is relative to the printed value
 */
public record OutsideCheck(
    String calculation,
    String quantity,
    String table,
    Predicate<Row> rows,
    ToDoubleFunction<Row> printed,
    ToDoubleFunction<Row> computed,
    double tolerance,
    boolean relative) {

  private static final Map<String, Double> VALUES = new ConcurrentHashMap<>();

  public static OutsideCheck of(String calculation, String quantity, String table) {
    return new OutsideCheck(calculation, quantity, table, row -> true, null, null, 0, false);
  }

  public OutsideCheck rows(Predicate<Row> some) {
    return new OutsideCheck(
        calculation, quantity, table, some, printed, computed, tolerance, relative);
  }

  public OutsideCheck printed(ToDoubleFunction<Row> value) {
    return new OutsideCheck(
        calculation, quantity, table, rows, value, computed, tolerance, relative);
  }

  public OutsideCheck printed(String column) {
    return printed(row -> row.number(column));
  }

  public OutsideCheck computed(ToDoubleFunction<Row> value) {
    return new OutsideCheck(
        calculation, quantity, table, rows, printed, value, tolerance, relative);
  }

  /** Largest difference allowed, in the unit of the quantity. */
  public OutsideCheck within(double difference) {
    return new OutsideCheck(
        calculation, quantity, table, rows, printed, computed, difference, false);
  }

  /** Largest relative difference allowed. */
  public OutsideCheck withinRelative(double ratio) {
    return new OutsideCheck(calculation, quantity, table, rows, printed, computed, ratio, true);
  }

  /** Our value for a row; made once in a run of the tests, however many of them ask. */
  double value(Row row) {
    return VALUES.computeIfAbsent(
        String.join("|", calculation, quantity, table, row.toString()),
        first -> computed.applyAsDouble(row));
  }

  /** How far we are off in a row, absolute or relative as the check says. */
  public double deviation(Row row) {
    double outside = printed.applyAsDouble(row);
    double difference = Math.abs(value(row) - outside);
    return relative ? difference / Math.abs(outside) : difference;
  }
}
