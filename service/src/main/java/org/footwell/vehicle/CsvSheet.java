package org.footwell.vehicle;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.footwell.calculation.CsvCell;

/** Rows as a file in CSV that a spreadsheet opens and does not run. */
public final class CsvSheet {

  private final StringWriter out = new StringWriter();
  private final CsvWriter csv =
      CsvWriter.builder().lineDelimiter(LineDelimiter.LF).bufferSize(0).build(out);

  /** Adds a row; what is null is an empty cell. */
  public void row(List<?> cells) {
    csv.writeRecord(
        cells.stream().map(cell -> cell == null ? "" : CsvCell.harmless(cell.toString())).toList());
  }

  /** All rows so far. */
  public byte[] bytes() {
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }
}
