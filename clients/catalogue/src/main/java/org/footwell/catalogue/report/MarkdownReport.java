package org.footwell.catalogue.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.row.Counted;
import org.footwell.catalogue.row.Level;

/**
 * Markdown for the page of a build, worst rows first, under 1 MiB: build servers refuse more. What
 * does not fit is counted.
 */
public final class MarkdownReport implements Report {

  /** Some room is left for the counts on top. */
  private static final int MOST_BYTES = 1_000_000;

  private static final List<Level> SHOWN = List.of(Level.STOP, Level.WARNING, Level.NOTE);

  /** Lines of one level, as many as could be shown if there were no worse ones. */
  private static final class Lines {
    private final List<byte[]> kept = new ArrayList<>();
    private int bytes;

    void add(byte[] line) {
      if (bytes + line.length <= MOST_BYTES) {
        kept.add(line);
        bytes += line.length;
      }
    }
  }

  private final ReportFile file;
  private final Map<Level, Lines> rows = new EnumMap<>(Level.class);

  public MarkdownReport(Path file) throws IOException {
    this.file = new ReportFile(file);
    SHOWN.forEach(level -> rows.put(level, new Lines()));
  }

  @Override
  public void add(CheckedRow row) {
    if (row.verdict().atLeast(Level.NOTE)) {
      rows.get(row.verdict()).add(line(row).getBytes(StandardCharsets.UTF_8));
    }
  }

  private static String line(CheckedRow row) {
    return row.remarks().stream()
        .map(remark -> "**" + remark.level() + "** " + escaped(remark.text()))
        .collect(
            Collectors.joining(
                "<br>", "| " + row.line() + " | " + escaped(row.name()) + " | ", " |\n"));
  }

  private static String escaped(String text) {
    return text.replaceAll("[\\r\\n]+", " ")
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replaceAll("([\\\\`*_\\[\\]|#~$])", "\\\\$1");
  }

  @Override
  public void finish(Tally tally) throws IOException {
    StringBuilder top = new StringBuilder();
    top.append("# Catalogue check: ").append(escaped(tally.catalogue())).append("\n\n");
    top.append(Counted.of(tally.rows(), "row")).append(": ").append(tally.verdicts()).append(".\n");
    tally.notes().forEach(note -> top.append(note).append('\n'));
    if (!tally.counts().isEmpty()) {
      top.append("\n| level | finding | count | meaning |\n|---|---|---:|---|\n");
    }
    for (Tally.Count count : tally.counts()) {
      top.append("| ").append(count.level()).append(" | `").append(count.code()).append("` | ");
      top.append(count.times()).append(" | ").append(RuleTexts.of(count.code())).append(" |\n");
    }
    write(top.toString());
    rows(tally);
    if (!tally.cautions().isEmpty()) {
      write("\n## Safety\n\n");
    }
    for (String caution : tally.cautions()) {
      write("- " + escaped(caution) + "\n");
    }
    file.complete();
  }

  private void rows(Tally tally) throws IOException {
    long left = tally.rowsFrom(Level.NOTE);
    if (left > 0) {
      write("\n| line | part | findings |\n|---:|---|---|\n");
    }
    int bytes = 0;
    for (byte[] line : SHOWN.stream().flatMap(level -> rows.get(level).kept.stream()).toList()) {
      bytes += line.length;
      if (bytes > MOST_BYTES) {
        break;
      }
      file.out().write(line);
      left--;
    }
    if (left > 0) {
      String rows = Counted.of(left, "more row");
      write("\nCut here to stay under 1 MiB: there are " + rows + " with findings.\n");
    }
  }

  private void write(String text) throws IOException {
    file.out().write(text.getBytes(StandardCharsets.UTF_8));
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
