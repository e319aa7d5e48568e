package org.footwell.catalogue.report;

import java.io.IOException;
import java.util.List;
import org.footwell.catalogue.row.CheckedRow;

/** Several reports as one. */
public final class Reports implements Report {

  private final List<Report> reports;

  public Reports(List<Report> reports) {
    this.reports = reports;
  }

  @Override
  public void add(CheckedRow row) throws IOException {
    for (Report report : reports) {
      report.add(row);
    }
  }

  @Override
  public void finish(Tally tally) throws IOException {
    for (Report report : reports) {
      report.finish(tally);
    }
  }

  @Override
  public void close() throws IOException {
    for (Report report : reports) {
      report.close();
    }
  }
}
