package org.footwell.catalogue.input;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Counted;
import org.footwell.catalogue.row.Level;
import org.footwell.catalogue.row.Remark;
import org.footwell.catalogue.row.Row;
import org.footwell.catalogue.row.SeenNames;

/**
 * A catalogue whose part numbers are looked at: whether they are missing, were there before, or were
 * there before with other figures.
 */
public final class PartNumbers implements Catalogue {

  /** Code of the finding about a part number that stands for two different records. */
  public static final String CONTRADICTED = "part-contradicted";

  private final Catalogue catalogue;
  private final SeenNames parts = new SeenNames(8);
  private final SeenNames records = new SeenNames(4);
  private long missing;
  private long repeated;
  private long firstRepeated;

  public PartNumbers(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  @Override
  public List<String> header() {
    return catalogue.header();
  }

  @Override
  public Row next() throws IOException, CannotRun {
    Row row = catalogue.next();
    if (row == null) {
      return null;
    }
    if (row.part() == null) {
      missing++;
      return row;
    }
    boolean isNewRecord = row.figures() != null && records.add(row.part() + "\t" + row.figures());
    if (parts.add(row.part())) {
      return row;
    }
    firstRepeated = repeated == 0 ? row.line() : firstRepeated;
    repeated++;
    return isNewRecord ? row.with(contradicted()) : row;
  }

  private static Remark contradicted() {
    return new Remark(
        Level.WARNING,
        CONTRADICTED,
        Mapping.PART_FIELD,
        "An earlier row has the same part number and other figures.");
  }

  @Override
  public List<String> notes() {
    List<String> notes = new ArrayList<>(catalogue.notes());
    if (missing > 0) {
      notes.add(Counted.of(missing, "row") + " without a part number, which no baseline knows.");
    }
    if (repeated > 0) {
      String rows = Counted.of(repeated, "row");
      notes.add(
          rows + " with the part number of an earlier one, first in line " + firstRepeated + ".");
    }
    return notes;
  }

  @Override
  public void close() throws IOException {
    catalogue.close();
  }
}
