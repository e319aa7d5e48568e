package org.footwell.web.batch;

import org.footwell.calculation.text.Reader;
import org.footwell.web.request.Coding;
import org.footwell.web.request.Digits;
import org.footwell.web.request.Endpoint;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.footwell.Calculations;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Engine;
import org.footwell.acoustic.driver.CatalogueSample;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A batch in CSV, in process, answered on one core and on two, against programs that only read and
 * write CSV with the same library on one core. sound-level takes a table of made-up wishes,
 * driver-check a catalogue of made-up drivers.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgs = "-XX:+UseSerialGC")
public class BatchBenchmark {

  static final int ROWS = 20_000;

  @Param({"sound-level", "driver-check"})
  public String id;

  /** Significant digits of the answer, 0 for all; what is only copied has the same. */
  @Param({"0", "6"})
  public int digits;

  /** Commas, and every figure of the result. */
  private CsvForm whole;

  private Endpoint<?, ?> endpoint;
  private Endpoint<?, ?> ready;
  private byte[] csv;
  private byte[] answer;
  private final List<List<String>> rowsOfAnswer = new ArrayList<>();
  private ExecutorService one;
  private ExecutorService two;

  @Setup
  public void prepare() throws IOException {
    whole = new CsvForm(',', null, digits == 0 ? Digits.ALL : Digits.of(digits));
    Calculation<?, ?> calculation =
        Calculations.all().stream().filter(c -> c.card().id().equals(id)).findFirst().orElseThrow();
    endpoint = new Endpoint<>(calculation, new Engine(), Duration.ofSeconds(10));
    csv = id.equals("driver-check") ? catalogue() : LevelTable.of(ROWS).getBytes(StandardCharsets.UTF_8);
    one = Executors.newFixedThreadPool(1);
    two = Executors.newFixedThreadPool(2);
    answer = answer();
    ready = new Endpoint<>(new Remembered<>(calculation, ROWS), new Engine(), Duration.ofSeconds(10));
    answered(ready, one, whole, OutputStream.nullOutputStream());
    try (CsvReader<CsvRecord> reader = reader(answer)) {
      reader.forEach(row -> rowsOfAnswer.add(row.getFields()));
    }
  }

  private byte[] answer() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    answered(endpoint, two, whole, out);
    return out.toByteArray();
  }

  @TearDown
  public void stop() {
    one.shutdownNow();
    two.shutdownNow();
  }

  private static byte[] catalogue() throws IOException {
    Path file = Files.createTempFile("catalogue", ".csv");
    CatalogueSample.write(CatalogueSample.rows(ROWS, 1), file);
    byte[] csv = Files.readAllBytes(file);
    Files.delete(file);
    return csv;
  }

  /** Reads the rows asked and writes them as they are. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public void copyAsked() throws IOException {
    copy(csv);
  }

  /** Reads the rows of the answer and writes them as they are. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public void copyAnswer() throws IOException {
    copy(answer);
  }

  private static void copy(byte[] rows) throws IOException {
    try (CsvReader<CsvRecord> reader = reader(rows);
        CsvWriter writer = writer()) {
      reader.forEach(row -> writer.writeRecord(row.getFields()));
    }
  }

  /** Reads the rows asked and writes those of the answer, which lie ready. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public void readAskedWriteAnswer() throws IOException {
    Iterator<List<String>> ready = rowsOfAnswer.iterator();
    try (CsvReader<CsvRecord> reader = reader(csv);
        CsvWriter writer = writer()) {
      reader.forEach(row -> writer.writeRecord(ready.next()));
    }
  }

  @Benchmark
  @OperationsPerInvocation(ROWS)
  public void answeredOnOneCore() throws IOException {
    answered(endpoint, one, whole, OutputStream.nullOutputStream());
  }

  @Benchmark
  @OperationsPerInvocation(ROWS)
  public void answeredOnTwoCores() throws IOException {
    answered(endpoint, two, whole, OutputStream.nullOutputStream());
  }

  /** The same with results that lie ready: read, checked and written, but not computed. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public void notComputedOnTwoCores() throws IOException {
    answered(ready, two, whole, OutputStream.nullOutputStream());
  }

  /** Verdict, findings and error only, as a check of a catalogue wants them. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public void judgedOnTwoCores() throws IOException {
    answered(endpoint, two, new CsvForm(',', List.of("verdict"), whole.digits()), OutputStream.nullOutputStream());
  }

  private static CsvReader<CsvRecord> reader(byte[] rows) throws IOException {
    return CsvReader.builder()
        .ofCsvRecord(new ByteArrayInputStream(rows), StandardCharsets.UTF_8);
  }

  private static CsvWriter writer() {
    return CsvWriter.builder()
        .lineDelimiter(LineDelimiter.LF)
        .build(
            new OutputStreamWriter(OutputStream.nullOutputStream(), StandardCharsets.UTF_8));
  }

  private void answered(
      Endpoint<?, ?> endpoint, ExecutorService workers, CsvForm form, OutputStream out)
      throws IOException {
    Pipeline pipeline = new Pipeline(workers, 4, out, Reader.ANYONE);
    try (CsvBatch<?, ?> batch =
        new CsvBatch<>(
            endpoint,
            new AnnouncedInput(new ByteArrayInputStream(csv), Coding.IDENTITY),
            1 << 20,
            form,
            Reader.ANYONE)) {
      batch.answer(pipeline);
    }
  }
}
