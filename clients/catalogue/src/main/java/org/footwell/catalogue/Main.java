package org.footwell.catalogue;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.footwell.catalogue.input.Catalogue;
import org.footwell.catalogue.input.Source;
import org.footwell.catalogue.report.Baseline;
import org.footwell.catalogue.report.Reports;
import org.footwell.catalogue.report.Tally;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.service.Poster;
import org.footwell.client.ApiClient;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The program. Its exit code is 0 for clean, 1 for findings, 2 when it could not check. */
@Command(
    name = "footwell-catalogue",
    mixinStandardHelpOptions = true,
    versionProvider = VersionProvider.class,
    sortOptions = false,
    usageHelpAutoWidth = true,
    description = "Checks a catalogue of drivers against itself, with a running Footwell.%n",
    footer =
        "%nExit codes: 0 clean, 1 findings at the level of --fail-on or worse, 2 it could not be"
            + " checked.")
public final class Main implements Callable<Integer> {

  private static final int CLEAN = 0;
  private static final int FINDINGS = 1;
  private static final int CANNOT_RUN = 2;

  @Spec private CommandSpec spec;
  @Mixin private InputOptions input;
  @Mixin private ServiceOptions service;
  @Mixin private ReportOptions report;

  @Option(names = "--no-progress", negatable = false, description = "No bar, even on a terminal.")
  private boolean noProgress;

  public static void main(String[] arguments) {
    Charset charset = Terminal.there() ? Terminal.charset() : StandardCharsets.UTF_8;
    int code = CANNOT_RUN;
    PrintWriter errors = writer(FileDescriptor.err, charset);
    try {
      code =
          new CommandLine(new Main())
              .setCaseInsensitiveEnumValuesAllowed(true)
              .setOut(writer(FileDescriptor.out, charset))
              .setErr(errors)
              .setExecutionExceptionHandler((failure, line, parsed) -> told(failure, line.getErr()))
              .execute(arguments);
    } catch (OutOfMemoryError full) {
      errors.println("Out of memory: give fewer --chunk-rows, or more with java -Xmx.");
      errors.flush();
    }
    System.exit(code);
  }

  private static PrintWriter writer(FileDescriptor to, Charset charset) {
    return new PrintWriter(
        new PrintStream(new FileOutputStream(to), false, charset), true, charset);
  }

  private static int told(Exception failure, PrintWriter errors) {
    errors.println(
        failure instanceof CannotRun
            ? failure.getMessage()
            : "footwell-catalogue failed: " + failure);
    return CANNOT_RUN;
  }

  @Override
  public Integer call() throws IOException, CannotRun, InterruptedException {
    service.check();
    report.check();
    ApiClient client = service.client();
    Poster poster = service.poster(client, spec.commandLine().getErr());
    Baseline known = report.baseline();
    try (Source source = input.source();
        Catalogue catalogue = input.open(source, client.getObjectMapper());
        Reports all = new Reports(report.ofAll());
        Reports news =
            new Reports(report.ofNews(source.name(), known, spec.commandLine().getOut()))) {
      Tally tally = new Tally(source.name());
      try (Progress progress = new Progress(!noProgress && Terminal.there())) {
        new Check(poster, service.chunkRows, service.parallel)
            .run(
                catalogue,
                rows -> {
                  for (CheckedRow row : rows) {
                    CheckedRow fresh = known.news(row);
                    tally.add(fresh);
                    all.add(row);
                    news.add(fresh);
                  }
                  progress.show(tally.rows(), source.share());
                });
      }
      if (tally.rows() == 0) {
        throw new CannotRun("The catalogue has no rows.");
      }
      all.finish(tally);
      news.finish(tally);
      return tally.rowsFrom(report.failOn) == 0 ? CLEAN : FINDINGS;
    }
  }
}
