package org.footwell.web;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An answer in CSV, read back. Where a name stands twice its last column counts. */
record Table(List<String> header, List<List<String>> rows) {

  static Table of(String csv) {
    return of(csv, ',');
  }

  static Table of(String csv, char separator) {
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder().fieldSeparator(separator).ofCsvRecord(csv)) {
      List<List<String>> all = reader.stream().map(CsvRecord::getFields).toList();
      return new Table(all.get(0), all.subList(1, all.size()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Map<String, String> row(int index) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < header.size(); i++) {
      cells.put(header.get(i), rows.get(index).get(i));
    }
    return cells;
  }

  /** All cells below a name. */
  List<String> column(String name) {
    int index = header.lastIndexOf(name);
    return rows.stream().map(row -> row.get(index)).toList();
  }
}
