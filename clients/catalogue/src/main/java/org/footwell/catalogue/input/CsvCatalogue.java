package org.footwell.catalogue.input;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.CsvRecordHandler;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Counted;
import org.footwell.catalogue.row.Row;

/** A catalogue in CSV, with a header line. */
final class CsvCatalogue implements Catalogue {

  /** Characters of the longest row, as in the service. */
  private static final int LONGEST_ROW = 1 << 20;

  private final CsvManner manner;
  private final Fields fields;
  private final RowJson json;
  private final Mapping mapping;
  private final CsvText text;
  private final CloseableIterator<CsvRecord> records;

  /** Our name of each column; null where it is ignored. */
  private final List<String> columns = new ArrayList<>();

  private int partAt = -1;
  private long line = 1;
  private long otherDecimals;
  private String otherDecimal;

  CsvCatalogue(
      InputStream in, CsvManner manner, Mapping mapping, ObjectMapper mapper, Fields fields)
      throws CannotRun, IOException {
    this.manner = manner;
    this.mapping = mapping;
    this.fields = fields;
    this.json = new RowJson(mapper, fields);
    this.text = new CsvText(in, manner.charset());
    this.records =
        CsvReader.builder()
            .fieldSeparator(manner.separator().character)
            .skipEmptyLines(true)
            .allowMissingFields(true)
            .allowExtraFields(true)
            .maxBufferSize(LONGEST_ROW)
            .build(
                CsvRecordHandler.of(
                    handler -> handler.maxFieldSize(LONGEST_ROW).maxRecordSize(LONGEST_ROW)),
                text)
            .iterator();
    readHeader();
  }

  private void readHeader() throws CannotRun, IOException {
    CsvRecord header = record();
    if (header == null) {
      throw new CannotRun("The catalogue is empty: not even a header line.");
    }
    List<String> theirs = header.getFields();
    Separator rather = manner.separator().ratherThanThis(theirs).orElse(null);
    if (rather != null) {
      throw new CannotRun("The header holds " + rather + "s; add --separator " + rather + ".");
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
  public List<String> notes() {
    Decimal other = manner.decimal().other();
    return otherDecimals == 0
        ? List.of()
        : List.of(
            Counted.of(otherDecimals, "row")
                + " with figures such as "
                + otherDecimal
                + ": if the catalogue is written with a decimal "
                + other
                + ", add --decimal "
                + other
                + ".");
  }

  @Override
  public Row next() throws IOException, CannotRun {
    CsvRecord record = record();
    // A spreadsheet writes the rows it left empty with all their separators.
    while (record != null && record.getFields().stream().allMatch(String::isBlank)) {
      record = record();
    }
    if (record == null) {
      return null;
    }
    String part = partAt >= 0 && partAt < record.getFieldCount() ? record.getField(partAt) : null;
    if (record.getFieldCount() != columns.size()) {
      return Row.refused(
          line,
          part,
          "unreadable",
          "The row has "
              + Counted.of(record.getFieldCount(), "cell")
              + ", the header "
              + columns.size()
              + ".");
    }
    return row(record, part);
  }

  private Row row(CsvRecord record, String part) throws IOException {
    ObjectNode request = json.empty();
    String foreign = null;
    mapping.constants().forEach((field, value) -> json.put(request, field, value, Decimal.POINT));
    for (int i = 0; i < columns.size(); i++) {
      String cell = record.getField(i);
      String field = columns.get(i);
      if (field != null && fields.has(field) && !cell.isEmpty()) {
        json.put(request, field, cell, manner.decimal());
        if (!fields.takesText(field) && manner.decimal().isForeign(cell)) {
          foreign = cell;
        }
      }
    }
    if (foreign != null) {
      otherDecimal = otherDecimals == 0 ? foreign : otherDecimal;
      otherDecimals++;
    }
    return json.row(line, part, request);
  }

  /** The next record, or null; afterwards {@code line} is where it begins. */
  private CsvRecord record() throws IOException, CannotRun {
    try {
      if (!records.hasNext()) {
        return null;
      }
      CsvRecord record = records.next();
      line = record.getStartingLineNumber();
      if (!records.hasNext()) {
        requireEnd(record);
        return null;
      }
      requireCharset(record);
      return record;
    } catch (CsvParseException malformed) {
      throw new CannotRun(
          "The CSV cannot be read after line "
              + line
              + ": a row is larger than 1 MiB, perhaps as its quote is never closed, or a cell goes on"
              + " after its closing quote.");
    } catch (UncheckedIOException failure) {
      throw failure.getCause();
    }
  }

  /** The last record is the end that was added, unless a quote swallowed it. */
  private void requireEnd(CsvRecord last) throws CannotRun {
    if (last.getFieldCount() != 1 || !last.getField(0).equals(CsvText.END)) {
      throw new CannotRun("A quote opened in the row of line " + line + " is never closed.");
    }
  }

  private void requireCharset(CsvRecord record) throws CannotRun {
    for (int i = 0; i < record.getFieldCount(); i++) {
      if (record.getField(i).indexOf(CsvText.MALFORMED) >= 0) {
        throw new CannotRun(
            "The row of line "
                + line
                + " is not in "
                + text.charset()
                + ": say what it is in, such as --charset windows-1252.");
      }
    }
  }

  @Override
  public void close() throws IOException {
    records.close();
  }
}
