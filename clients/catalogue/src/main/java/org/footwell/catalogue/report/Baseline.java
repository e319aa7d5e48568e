package org.footwell.catalogue.report;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.row.Remark;

/**
 * What is known already. A finding is known by part number, code and field, wherever its row has
 * moved to and whatever the figures in its sentence.
 */
public final class Baseline {

  static final String TITLE = "# footwell-catalogue baseline: part number, code, field";

  private final Set<String> known = new HashSet<>();
  private final Set<String> notMet = new HashSet<>();
  private long met;

  /** Nothing known. */
  public static Baseline empty() {
    return new Baseline();
  }

  /** Reads a file that {@link BaselineReport} wrote. */
  public static Baseline read(Path file) throws IOException, CannotRun {
    if (!Files.isReadable(file) || Files.isDirectory(file)) {
      throw new CannotRun("There is no baseline " + file + " that can be read.");
    }
    Baseline baseline = new Baseline();
    try (BufferedReader lines = Files.newBufferedReader(file)) {
      if (!TITLE.equals(lines.readLine())) {
        throw new CannotRun(file + " is no baseline; --write-baseline writes one.");
      }
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        baseline.known.add(line);
      }
    } catch (MalformedInputException binary) {
      throw new CannotRun(file + " is no baseline; --write-baseline writes one.");
    }
    baseline.notMet.addAll(baseline.known);
    return baseline;
  }

  static String key(CheckedRow row, Remark remark) {
    return row.part() + "\t" + remark.code() + "\t" + remark.field();
  }

  /** What is new about a row. */
  public CheckedRow news(CheckedRow row) {
    return row.only(
        remark -> {
          String key = key(row, remark);
          notMet.remove(key);
          met += known.contains(key) ? 1 : 0;
          return !known.contains(key);
        });
  }

  public boolean isEmpty() {
    return known.isEmpty();
  }

  /** Findings so far that were known. */
  public long met() {
    return met;
  }

  /** Known ones that were not found again. */
  public long gone() {
    return notMet.size();
  }
}
