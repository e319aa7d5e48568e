package org.footwell.catalogue.row;

import java.util.List;
import java.util.function.Predicate;

/**
 * A row with what there is to say about it.
 *
 * @param line line of the file it begins in, from 1
 * @param part its part number, or null
 * @param remarks worst first
 */
public record CheckedRow(long line, String part, List<Remark> remarks) {

  /** What it is called: by its part number or, where it has none, by its line. */
  public String name() {
    return part == null ? "line " + line : part;
  }

  public Level verdict() {
    return remarks.stream().map(Remark::level).max(Level::compareTo).orElse(Level.OK);
  }

  public boolean refused() {
    return remarks.stream().anyMatch(Remark::refused);
  }

  /** The same row with only some of its remarks. */
  public CheckedRow only(Predicate<Remark> wanted) {
    return new CheckedRow(line, part, remarks.stream().filter(wanted).toList());
  }
}
