package org.footwell.catalogue.input;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Row;

/** A catalogue in CSV, with a header line. */
final class CsvCatalogue implements Catalogue {

  /** Characters of the longest cell. */
  private static final int LONGEST_CELL = 1 << 20;

  private final ObjectMapper mapper;
  private final Fields fields;
  private final RowJson json;
  private final Mapping mapping;
  private final CloseableIterator<CsvRecord> records;

  /** Our name of each column; null where it is ignored. */
  private final List<String> columns = new ArrayList<>();

  private int partAt = -1;
  private long line = 1;

  CsvCatalogue(
      InputStream in,
      char separator,
      Charset charset,
      Mapping mapping,
      ObjectMapper mapper,
      Fields fields)
      throws CannotRun, IOException {
    this.mapping = mapping;
    this.mapper = mapper;
    this.fields = fields;
    this.json = new RowJson(fields);
    this.records =
        CsvReader.builder()
            .fieldSeparator(separator)
            .skipEmptyLines(true)
            .allowMissingFields(true)
            .allowExtraFields(true)
            .detectBomHeader(true)
            .maxBufferSize(LONGEST_CELL)
            .ofCsvRecord(in, charset)
            .iterator();
    readHeader(separator);
  }

  private void readHeader(char separator) throws CannotRun, IOException {
    CsvRecord header = record();
    if (header == null) {
      throw new CannotRun("The catalogue is empty: not even a header line.");
    }
    List<String> theirs = header.getFields();
    if (theirs.size() == 1 && separator == ',' && theirs.get(0).contains(";")) {
      throw new CannotRun("The header holds semicolons; add --separator semicolon.");
    }
    for (String wanted : mapping.renamed().values()) {
      requireColumn(wanted, theirs);
    }
    for (String column : theirs) {
      columns.add(mapping.ignored().contains(column) ? null : mapping.ours(column));
    }
    if (mapping.partColumn() == null) {
      partAt = columns.indexOf(Mapping.PART_FIELD);
    } else {
      requireColumn(mapping.partColumn(), theirs);
      partAt = theirs.indexOf(mapping.partColumn());
    }
  }

  private static void requireColumn(String wanted, List<String> theirs) throws CannotRun {
    if (!theirs.contains(wanted)) {
      throw new CannotRun(
          "The header has no column " + wanted + "; it has " + String.join(", ", theirs) + ".");
    }
  }

  @Override
  public List<String> header() {
    List<String> header = new ArrayList<>();
    columns.stream().filter(column -> column != null).forEach(header::add);
    mapping.constants().keySet().stream()
        .filter(field -> !header.contains(field))
        .forEach(header::add);
    return header;
  }

  @Override
  public Row next() throws IOException, CannotRun {
    CsvRecord record = record();
    if (record == null) {
      return null;
    }
    String part = partAt >= 0 && partAt < record.getFieldCount() ? record.getField(partAt) : null;
    if (record.getFieldCount() != columns.size()) {
      return Row.refused(
          line,
          part,
          "unreadable",
          "The row has " + record.getFieldCount() + " cells, the header " + columns.size() + ".");
    }
    ObjectNode request = json.empty();
    mapping.constants().forEach((field, value) -> json.put(request, field, value));
    for (int i = 0; i < columns.size(); i++) {
      String cell = record.getField(i);
      if (columns.get(i) != null && fields.has(columns.get(i)) && !cell.isEmpty()) {
        json.put(request, columns.get(i), cell);
      }
    }
    return Row.of(line, part, mapper.writeValueAsString(request));
  }

  /** The next record, or null; afterwards {@code line} is where it begins. */
  private CsvRecord record() throws IOException, CannotRun {
    try {
      if (!records.hasNext()) {
        return null;
      }
      CsvRecord record = records.next();
      line = record.getStartingLineNumber();
      return record;
    } catch (CsvParseException malformed) {
      throw new CannotRun(
          "The CSV cannot be read after line "
              + line
              + ": a cell is too large or goes on after its closing quote.");
    } catch (UncheckedIOException failure) {
      throw failure.getCause();
    }
  }

  @Override
  public void close() throws IOException {
    records.close();
  }
}
