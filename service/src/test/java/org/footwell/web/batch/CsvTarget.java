package org.footwell.web.batch;

import static org.footwell.fuzz.Refusals.require;
import static org.footwell.fuzz.Refusals.requireEqual;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.AbstractExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.footwell.acoustic.level.SoundLevel;
import org.footwell.calculation.CsvCell;
import org.footwell.calculation.Engine;
import org.footwell.calculation.text.Reader;
import org.footwell.fuzz.Refusals;
import org.footwell.fuzz.Target;
import org.footwell.web.request.Coding;
import org.footwell.web.request.Digits;
import org.footwell.web.request.Endpoint;

/**
 * CSV with either separator: as many rows as its library reads by itself, each written so that it is
 * the same when read again, and each of a batch answered by one row as wide as the header.
 */
public final class CsvTarget implements Target {

  private static final int MOST = 10_000;
  private static final String LAST_CELL = "last";

  private static final Endpoint<?, ?> ENDPOINT =
      new Endpoint<>(new SoundLevel(), new Engine(), Duration.ofSeconds(10));

  /** Rows that could be read, and whether something after them could not. */
  private record Sheet(List<CsvRow> rows, boolean broken) {}

  @Override
  public void read(byte[] given) throws Exception {
    for (char separator : new char[] {',', ';'}) {
      Sheet sheet = sheet(given, separator);
      requireAllOf(given, separator, sheet);
      requireWrittenAlike(sheet, separator);
      requireAnswered(given, separator, sheet);
    }
  }

  private static Sheet sheet(byte[] csv, char separator) throws IOException {
    List<CsvRow> all = new ArrayList<>();
    try (CsvRows rows = new CsvRows(new ByteArrayInputStream(csv), separator, MOST)) {
      for (CsvRow row = rows.next(); row != null; row = rows.next()) {
        all.add(row);
      }
      return new Sheet(all, false);
    } catch (CsvRows.Broken broken) {
      return new Sheet(all, true);
    }
  }

  private static void requireAllOf(byte[] csv, char separator, Sheet sheet) throws IOException {
    List<List<String>> plain = plain(new String(csv, StandardCharsets.UTF_8), separator);
    if (plain != null && !sheet.broken()) {
      requireAlike(
          plain, sheet.rows().stream().map(row -> row.cells().texts()).toList(), "all rows");
    }
  }

  /** What the library reads with nothing of ours around it, or null. */
  private static List<List<String>> plain(String csv, char separator) throws IOException {
    String unmarked = csv.startsWith("\uFEFF") ? csv.substring(1) : csv;
    // As a row ends in most files: a line feed alone is lost after a return in quotes, see
    // EndedReader. A cell that begins with a line feed gets a return before it by that.
    String text = unmarked.replaceAll("\"\n", "\"\r\n");
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(separator)
            .allowMissingFields(true)
            .allowExtraFields(true)
            .ofCsvRecord(text)) {
      return reader.stream().map(CsvRecord::getFields).toList();
    } catch (CsvParseException unreadable) {
      return null;
    }
  }

  /** Whether cells are the same but for returns before their line feeds. */
  private static void requireAlike(
      List<List<String>> expected, List<List<String>> rows, String what) {
    requireEqual(withoutReturns(expected), withoutReturns(rows), what);
  }

  private static List<List<String>> withoutReturns(List<List<String>> rows) {
    return rows == null
        ? null
        : rows.stream()
            .map(row -> row.stream().map(cell -> cell.replace("\r\n", "\n")).toList())
            .toList();
  }

  private static void requireWrittenAlike(Sheet sheet, char separator) throws IOException {
    CsvText text = new CsvText(new CsvForm(separator, null, Digits.ALL));
    text.row(List.of(LAST_CELL));
    for (CsvRow row : sheet.rows()) {
      text.cells(row, row.cells().size());
      text.cell(LAST_CELL);
      text.endRow();
    }
    List<List<String>> written = new ArrayList<>();
    written.add(List.of(LAST_CELL));
    for (CsvRow row : sheet.rows()) {
      written.add(
          Stream.concat(row.cells().texts().stream().map(CsvCell::harmless), Stream.of(LAST_CELL))
              .toList());
    }
    requireAlike(
        written,
        plain(new String(text.take(), StandardCharsets.UTF_8), separator),
        "written and read again");
  }

  private static void requireAnswered(byte[] csv, char separator, Sheet sheet) throws Exception {
    byte[] answer = Refusals.orNull(() -> answer(csv, separator));
    if (answer != null) {
      List<List<String>> rows = plain(new String(answer, StandardCharsets.UTF_8), separator);
      require(rows != null, "an answer is CSV");
      requireEqual(
          sheet.rows().size() + (sheet.broken() ? 1 : 0), rows.size(), "a row for each row");
      int width = rows.get(0).size();
      require(rows.stream().allMatch(row -> row.size() == width), "rows as wide as their header");
    }
  }

  private static byte[] answer(byte[] csv, char separator) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    AnnouncedInput input = new AnnouncedInput(new ByteArrayInputStream(csv), Coding.IDENTITY);
    CsvForm form = new CsvForm(separator, null, Digits.ALL);
    try (CsvBatch<?, ?> batch = new CsvBatch<>(ENDPOINT, input, MOST, form, Reader.ANYONE)) {
      batch.answer(new Pipeline(new AtOnce(), 2, out, Reader.ANYONE));
    }
    return out.toByteArray();
  }

  /** Does everything where it is asked to. */
  private static final class AtOnce extends AbstractExecutorService {
    @Override
    public void execute(Runnable task) {
      task.run();
    }

    @Override
    public void shutdown() {}

    @Override
    public List<Runnable> shutdownNow() {
      return List.of();
    }

    @Override
    public boolean isShutdown() {
      return false;
    }

    @Override
    public boolean isTerminated() {
      return false;
    }

    @Override
    public boolean awaitTermination(long timeout, TimeUnit unit) {
      return true;
    }
  }

  @Override
  public List<byte[]> seeds() {
    return Stream.of(
            "part,driver.rated_ohm,driver.sensitivity.db_1w_1m,power_w\nA,4,90,50\nB,8,,10\n",
            "part;driver.rated_ohm;driver.sensitivity.db_2v83_1m;power_w\r\n\"A;\"\"x\"\"\";4,5;90;50\r\n\r\n",
            "\uFEFFdriver.rated_ohm,driver.sensitivity.db_1w_1m,voltage_v,note\n4,90,2.83,=1+1\n\"4\",\"9",
            "a\n\"b\n\"")
        .map(text -> text.getBytes(StandardCharsets.UTF_8))
        .toList();
  }
}
