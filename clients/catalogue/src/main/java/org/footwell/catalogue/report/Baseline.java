package org.footwell.catalogue.report;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.row.Remark;

/**
 * What is known already. A finding is known by part number, code and field, wherever its row has
 * moved to and whatever the figures in its sentence. Those of a row without part number never are.
 */
public final class Baseline {

  static final String TITLE = "# footwell-catalogue baseline: part number, code, field";

  /** How many of each are known and were not met yet. */
  private final Map<String, Integer> left = new HashMap<>();

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
        baseline.left.merge(line, 1, Integer::sum);
      }
    } catch (MalformedInputException binary) {
      throw new CannotRun(file + " is no baseline; --write-baseline writes one.");
    }
    return baseline;
  }

  static String key(CheckedRow row, Remark remark) {
    return row.part() + "\t" + remark.code() + "\t" + remark.field();
  }

  /** What is new about a row. */
  public CheckedRow news(CheckedRow row) {
    return row.part() == null ? row : row.only(remark -> !isKnown(key(row, remark)));
  }

  /** One entry stands for one finding: a further one of a part listed twice is new. */
  private boolean isKnown(String key) {
    int times = left.getOrDefault(key, 0);
    if (times == 0) {
      return false;
    }
    left.put(key, times - 1);
    met++;
    return true;
  }

  public boolean isEmpty() {
    return left.isEmpty();
  }

  /** Findings so far that were known. */
  public long met() {
    return met;
  }

  /** Known ones that were not found again. */
  public long gone() {
    return left.values().stream().mapToLong(Integer::longValue).sum();
  }
}
