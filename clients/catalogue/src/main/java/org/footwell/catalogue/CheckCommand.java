package org.footwell.catalogue;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.footwell.catalogue.input.Catalogue;
import org.footwell.catalogue.input.PartNumbers;
import org.footwell.catalogue.input.Source;
import org.footwell.catalogue.report.Baseline;
import org.footwell.catalogue.report.Reports;
import org.footwell.catalogue.report.Tally;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.service.Poster;
import org.footwell.client.ApiClient;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Checks one catalogue; a failure to do so is thrown. */
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
final class CheckCommand implements Callable<Integer> {

  private static final int CLEAN = 0;
  private static final int FINDINGS = 1;

  @Spec private CommandSpec spec;
  @Mixin private InputOptions input;
  @Mixin private ServiceOptions service;
  @Mixin private ReportOptions report;

  @Option(names = "--no-progress", description = "No bar, even on a terminal.")
  private boolean noProgress;

  @Override
  public Integer call() throws IOException, CannotRun, InterruptedException {
    service.check();
    report.check(input.file());
    ApiClient client = service.client();
    Baseline known = report.baseline();
    try (Progress progress = new Progress(!noProgress && Terminal.there());
        Source source = input.source();
        Catalogue catalogue = new PartNumbers(input.open(source, client.getObjectMapper()));
        Reports all = new Reports(report.ofAll());
        Reports news = new Reports(report.ofNews(source.name(), spec.commandLine().getOut()))) {
      Tally tally = new Tally(source.name());
      Poster poster = service.poster(client, progress::say);
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
      progress.erase();
      tally.caution(poster.cautions());
      tally.note(catalogue.notes());
      tally.withoutKnown(known);
      if (tally.rows() == 0) {
        throw new CannotRun("The catalogue has no rows.");
      }
      all.finish(tally);
      news.finish(tally);
      return tally.rowsFrom(report.failOn) == 0 ? CLEAN : FINDINGS;
    }
  }
}
