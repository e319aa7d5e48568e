package org.footwell.web;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.BufferedWriter;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Rows a second of a batch over HTTP, by a caller that reads while it sends, against a program that only
 * reads and writes a file of CSV with the same library on one core: the rows sent, and the rows answered.
 * Arguments: address of the service, calculation and query, file of rows, how many rows, folder to write in.
 */
public final class BatchOverHttp {

  private BatchOverHttp() {}

  public static void main(String[] arguments) throws IOException {
    URI service = URI.create(arguments[0]);
    String target = "/v1/" + arguments[1];
    List<String> lines = Files.readAllLines(Path.of(arguments[2]));
    int count = Integer.parseInt(arguments[3]);
    Path folder = Path.of(arguments[4]);
    Path asked = folder.resolve("asked.csv");
    Path answered = folder.resolve("answered.csv");
    write(asked, lines, count);
    post(service, target, lines, count, folder.resolve("warm.csv"));
    double overHttp = post(service, target, lines, count, answered);
    copy(asked, folder.resolve("copy.csv"));
    double asked1 = count / copy(asked, folder.resolve("copy.csv"));
    double answered1 = count / copy(answered, folder.resolve("copy.csv"));
    System.out.printf(
        Locale.ROOT,
        "%s: %,.0f rows/s over HTTP; copying the rows sent %,.0f (ratio %.2f), the rows answered %,.0f"
            + " (ratio %.2f)%n",
        arguments[1], count / overHttp, asked1, count / overHttp / asked1, answered1,
        count / overHttp / answered1);
  }

  private static void write(Path file, List<String> lines, int count) throws IOException {
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      out.write("row," + lines.get(0) + "\n");
      for (int i = 0; i < count; i++) {
        out.write(i + "," + lines.get(1 + i % (lines.size() - 1)) + "\n");
      }
    }
  }

  /** Seconds from the first byte sent to the last row written. */
  private static double post(URI service, String target, List<String> lines, int count, Path into)
      throws IOException {
    long start = System.nanoTime();
    try (RowsOverSocket caller = new RowsOverSocket(service, target, lines, count);
        BufferedWriter out = Files.newBufferedWriter(into)) {
      int rows = -1;
      for (String line = caller.readLine(); line != null; line = caller.readLine()) {
        if (rows == 0) {
          System.out.printf(
              Locale.ROOT,
              "first row after %.1f ms, when %,d of %,d rows were sent%n",
              (System.nanoTime() - start) / 1e6,
              caller.sent(),
              count);
        }
        out.write(line);
        out.write('\n');
        rows++;
      }
      if (rows != count) {
        throw new IllegalStateException(rows + " rows came back of " + count);
      }
    }
    return (System.nanoTime() - start) / 1e9;
  }

  private static double copy(Path from, Path to) throws IOException {
    long start = System.nanoTime();
    try (var reader = CsvReader.builder().ofCsvRecord(from, StandardCharsets.UTF_8);
        CsvWriter writer =
            CsvWriter.builder()
                .lineDelimiter(LineDelimiter.LF)
                .build(to, StandardCharsets.UTF_8)) {
      reader.forEach(row -> writer.writeRecord(row.getFields()));
    }
    return (System.nanoTime() - start) / 1e9;
  }
}
