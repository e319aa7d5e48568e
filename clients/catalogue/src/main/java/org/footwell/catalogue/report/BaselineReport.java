package org.footwell.catalogue.report;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.row.Remark;

/** Writes every finding down as known, for {@link Baseline} to read next time. */
public final class BaselineReport implements Report {

  private final ReportFile file;
  private final PrintWriter out;

  public BaselineReport(Path file) throws IOException {
    this.file = new ReportFile(file);
    this.out = new PrintWriter(this.file.out(), false, StandardCharsets.UTF_8);
    out.print(Baseline.TITLE + "\n");
  }

  @Override
  public void add(CheckedRow row) throws IOException {
    for (Remark remark : row.part() == null ? List.<Remark>of() : row.remarks()) {
      out.print(Baseline.key(row, remark) + "\n");
    }
    failIfLost();
  }

  private void failIfLost() throws IOException {
    if (out.checkError()) {
      throw new IOException("the baseline cannot be written");
    }
  }

  @Override
  public void finish(Tally tally) throws IOException {
    failIfLost();
    file.complete();
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
