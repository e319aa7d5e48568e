package org.footwell.catalogue;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.footwell.catalogue.report.Baseline;
import org.footwell.catalogue.report.BaselineReport;
import org.footwell.catalogue.report.JunitReport;
import org.footwell.catalogue.report.MarkdownReport;
import org.footwell.catalogue.report.Report;
import org.footwell.catalogue.report.SarifReport;
import org.footwell.catalogue.report.Summary;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.Level;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** What is reported and when the check fails. */
final class ReportOptions {

  /** Levels a check can fail on. */
  static final class FailLevel implements ITypeConverter<Level> {
    @Override
    public Level convert(String given) {
      return Stream.of(Level.NOTE, Level.WARNING, Level.STOP)
          .filter(level -> level.toString().equalsIgnoreCase(given))
          .findFirst()
          .orElseThrow(() -> new TypeConversionException("give note, warning or stop"));
    }
  }

  @Option(
      names = "--fail-on",
      paramLabel = "note|warning|stop",
      defaultValue = "warning",
      converter = FailLevel.class,
      description = "The lowest level that makes the exit code 1 (default: warning).")
  Level failOn;

  @Option(
      names = "--baseline",
      paramLabel = "FILE",
      description = "Report only what is not in this file of findings known already.")
  private Path baseline;

  @Option(
      names = "--write-baseline",
      paramLabel = "FILE",
      description = "Write all findings to this file, for --baseline.")
  private Path newBaseline;

  @Option(names = "--junit", paramLabel = "FILE", description = "Write JUnit XML.")
  private Path junit;

  @Option(names = "--sarif", paramLabel = "FILE", description = "Write SARIF 2.1.0.")
  private Path sarif;

  @Option(names = "--markdown", paramLabel = "FILE", description = "Write Markdown, below 1 MiB.")
  private Path markdown;

  @Option(
      names = "--worst",
      paramLabel = "ROWS",
      defaultValue = "10",
      description = "How many rows the summary shows, worst first (default: 10).")
  private int worst;

  /**
   * Refuses what cannot be reported.
   *
   * @param catalogue its file, or null
   */
  void check(Path catalogue) throws IOException, CannotRun {
    if (worst < 0 || worst > 1000) {
      throw new CannotRun("--worst must be from 0 to 1000.");
    }
    new DistinctFiles()
        .with("the catalogue", catalogue)
        .with("--baseline", baseline)
        .with("--write-baseline", newBaseline)
        .with("--junit", junit)
        .with("--sarif", sarif)
        .with("--markdown", markdown);
  }

  Baseline baseline() throws IOException, CannotRun {
    return baseline == null ? Baseline.empty() : Baseline.read(baseline);
  }

  /** Reports of everything, whether it was known or not. */
  List<Report> ofAll() throws IOException {
    return newBaseline == null ? List.of() : List.of(new BaselineReport(newBaseline));
  }

  /** Reports of what is new. */
  List<Report> ofNews(String catalogue, PrintWriter out) throws IOException {
    List<Report> reports = new ArrayList<>();
    if (junit != null) {
      reports.add(new JunitReport(junit, catalogue, failOn));
    }
    if (sarif != null) {
      reports.add(new SarifReport(sarif, catalogue, VersionProvider.NUMBER));
    }
    if (markdown != null) {
      reports.add(new MarkdownReport(markdown));
    }
    reports.add(new Summary(out, failOn, worst));
    return reports;
  }
}
