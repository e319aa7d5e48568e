package org.footwell.catalogue.service;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Consumer;
import org.footwell.catalogue.input.Chunk;
import org.footwell.catalogue.row.CannotRun;
import org.footwell.catalogue.row.CheckedRow;
import org.footwell.catalogue.row.Counted;
import org.footwell.catalogue.row.Remark;
import org.footwell.catalogue.row.Row;
import org.footwell.client.ApiClient;

/**
 * Has chunks checked by {@code /v1/driver-check/batch}. Rows go out as JSON lines, since the answer
 * to these carries the findings whole; the answer to CSV has only their codes.
 */
public final class Poster {

  private final ApiClient client;
  private final Connection connection;
  private final Retry retry;
  private final Set<String> cautions = Collections.synchronizedSet(new TreeSet<>());

  public Poster(ApiClient client, int retries, Consumer<String> messages) {
    this.client = client;
    this.connection = new Connection(client);
    this.retry =
        new Retry(retries, new Backoff(() -> ThreadLocalRandom.current().nextDouble()), messages);
  }

  /**
   * Lets the service judge a header by its own rules: a batch without rows.
   *
   * @throws CannotRun with every fault of the header
   */
  public void checkHeader(List<String> header) throws CannotRun, InterruptedException {
    StringWriter line = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().build(line)) {
      csv.writeRecord(header);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    byte[] body = line.toString().getBytes(StandardCharsets.UTF_8);
    retry.until(
        "checking the header", () -> connection.post("text/csv", body, InputStream::readAllBytes));
  }

  /** Has a chunk checked, whole; in order. */
  public List<CheckedRow> post(Chunk chunk) throws CannotRun, InterruptedException {
    byte[] body = chunk.body();
    List<RowAnswer> answers =
        chunk.sent().isEmpty()
            ? List.of()
            : retry.until(
                chunk.lines(),
                () -> connection.post("application/x-ndjson", body, answer -> read(answer, chunk)));
    Iterator<RowAnswer> next = answers.iterator();
    List<CheckedRow> checked = new ArrayList<>(chunk.rows().size());
    for (Row row : chunk.rows()) {
      List<Remark> remarks =
          new ArrayList<>(row.json() == null ? List.of() : next.next().remarks());
      if (row.remark() != null) {
        remarks.add(row.remark());
        remarks.sort(Comparator.comparing(Remark::level).reversed());
      }
      checked.add(new CheckedRow(row.line(), row.part(), List.copyOf(remarks)));
    }
    return checked;
  }

  /** Cautions that came with the answers so far. */
  public List<String> cautions() {
    return List.copyOf(cautions);
  }

  private List<RowAnswer> read(InputStream in, Chunk chunk)
      throws IOException, TryAgain, CannotRun {
    List<Row> sent = chunk.sent();
    int expected = sent.size();
    List<RowAnswer> answers = new ArrayList<>(expected);
    AnswerBody body = new AnswerBody(in);
    try (MappingIterator<RowAnswer> lines =
        client.getObjectMapper().readerFor(RowAnswer.class).readValues(body)) {
      while (lines.hasNextValue()) {
        RowAnswer answer = lines.nextValue();
        if (!answer.recognised() || answers.size() == expected) {
          throw new CannotRun("What answers is not driver-check of Footwell.");
        }
        long line = sent.get(answers.size()).line();
        if (answer.failed()) {
          throw new TryAgain("line " + line + ": " + answer.sentence());
        }
        if (!answer.isOf(answers.size(), line)) {
          throw new TryAgain("line " + line + ": the answer is that of another row.");
        }
        answers.add(answer);
        if (answer.safety() != null) {
          cautions.addAll(answer.safety());
        }
      }
    } catch (JsonProcessingException malformed) {
      if (body.ended()) {
        throw brokenOff(answers.size(), expected);
      }
      throw new CannotRun("What answers is not driver-check of Footwell.");
    }
    if (answers.size() < expected) {
      throw brokenOff(answers.size(), expected);
    }
    return answers;
  }

  private static TryAgain brokenOff(int answered, int expected) {
    return new TryAgain(
        "the answer broke off after " + answered + " of " + Counted.of(expected, "row") + ".");
  }
}
