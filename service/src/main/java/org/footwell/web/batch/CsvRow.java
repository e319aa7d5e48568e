package org.footwell.web.batch;

import org.footwell.calculation.Row;

/**
 * A row as a caller sent it.
 *
 * @param cells without quotes
 * @param quoted whether any of them stood in quotes
 * @param line number of the line it starts in
 */
record CsvRow(Row cells, boolean quoted, long line) {}
