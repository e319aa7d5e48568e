package org.footwell.catalogue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.catalogue.input.Catalogue;
import org.footwell.catalogue.input.Catalogues;
import org.footwell.catalogue.input.CsvManner;
import org.footwell.catalogue.input.Decimal;
import org.footwell.catalogue.input.Mapping;
import org.footwell.catalogue.input.Separator;
import org.footwell.catalogue.input.Source;
import org.footwell.catalogue.row.CannotRun;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the catalogue is and how to read it. */
final class InputOptions {

  /** What the catalogue is written in. */
  enum Format {
    CSV,
    NDJSON
  }

  @Parameters(
      arity = "0..1",
      paramLabel = "CATALOGUE",
      description = "The file to check, gzipped or not; standard input without it or with -.")
  private Path file;

  @Option(
      names = "--format",
      paramLabel = "csv|ndjson",
      description = "By default ndjson for files called .ndjson or .jsonl, otherwise csv.")
  private Format format;

  @Option(
      names = "--separator",
      paramLabel = "comma|semicolon|tab",
      defaultValue = "comma",
      description = "What separates the cells of the CSV (default: comma).")
  private Separator separator;

  @Option(
      names = "--decimal",
      paramLabel = "point|comma",
      defaultValue = "point",
      description = "What stands before the decimals of numbers in the CSV (default: point).")
  private Decimal decimal;

  @Option(
      names = "--charset",
      defaultValue = "UTF-8",
      description = "Of the CSV, such as windows-1252 (default: UTF-8).")
  private String charset;

  @Option(
      names = "--id-column",
      paramLabel = "COLUMN",
      description = "The column with the part number (default: part_id).")
  private String partColumn;

  @Option(
      names = "--column",
      paramLabel = "FIELD=COLUMN",
      description = "A field of the contract and what the catalogue calls it.")
  private final List<String> renamed = new ArrayList<>();

  @Option(names = "--ignore", paramLabel = "COLUMN", description = "A column to leave out.")
  private final Set<String> ignored = new LinkedHashSet<>();

  @Option(
      names = "--set",
      paramLabel = "FIELD=VALUE",
      description =
          "A field that is the same for every row unless the row has its own, such as"
              + " tolerance.fs_percent=8.")
  private final List<String> constants = new ArrayList<>();

  /** The catalogue, or null for standard input. */
  Path file() {
    return file == null || file.toString().equals("-") ? null : file;
  }

  Source source() throws IOException, CannotRun {
    return Source.open(file());
  }

  Catalogue open(Source source, ObjectMapper mapper) throws IOException, CannotRun {
    // Half the work and half the answer; the findings are the same.
    Map<String, String> everywhere = Pairs.of("--set", constants);
    everywhere.putIfAbsent("reconcile", "when_off");
    Catalogues catalogues =
        new Catalogues(
            mapper, new Mapping(partColumn, Pairs.of("--column", renamed), ignored, everywhere));
    return format(source.name()) == Format.NDJSON
        ? catalogues.lines(source)
        : catalogues.csv(source, new CsvManner(separator, charset(), decimal));
  }

  private Format format(String name) {
    if (format != null) {
      return format;
    }
    return name.matches(".*\\.(ndjson|jsonl)(\\.gz)?") ? Format.NDJSON : Format.CSV;
  }

  private Charset charset() throws CannotRun {
    try {
      return Charset.forName(charset);
    } catch (IllegalArgumentException unknown) {
      throw new CannotRun("There is no character set " + charset + ".");
    }
  }
}
