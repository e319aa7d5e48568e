package org.footwell.web.batch;

import java.util.List;
import org.footwell.web.request.Digits;
import org.footwell.web.request.Query;

/**
 * How a caller writes CSV and what it wants to read.
 *
 * @param columns the result's figures wanted, in this order; null for all
 * @param digits of each of them
 */
record CsvForm(char separator, List<String> columns, Digits digits) {

  /** Options of a query that are its business. */
  static final List<String> OPTIONS = List.of("columns", "separator");

  /** The one that says how it is written, whatever stands in it. */
  static final List<String> SEPARATOR = List.of("separator");

  static CsvForm of(Query query) {
    String columns = query.option("columns");
    return new CsvForm(
        "semicolon".equals(query.option("separator")) ? ';' : ',',
        columns == null ? null : List.of(columns.split(",", -1)),
        query.digits());
  }
}
