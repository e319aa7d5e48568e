package org.footwell.web;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.footwell.calculation.Engine;
import org.footwell.driver.CatalogueSample;
import org.footwell.driver.DriverCheck;
import org.footwell.driver.DriverCheckRequest;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A catalogue of 5,000 drivers: driver-check over it against a program that only reads and writes
 * the same CSV with the same library, and where the time of a row goes. Per row.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgs = "-XX:+UseSerialGC")
public class CatalogueBenchmark {

  private static final int ROWS = 5000;
  private static final Duration LONG = Duration.ofSeconds(10);

  private final Engine engine = new Engine();
  private final DriverCheck check = new DriverCheck();
  private final Endpoint<DriverCheckRequest, ?> endpoint = new Endpoint<>(check, engine, LONG);
  private final List<Map<String, Object>> trees = new ArrayList<>();
  private final List<DriverCheckRequest> requests = new ArrayList<>();
  private byte[] csv;

  @Setup
  public void prepare() throws IOException {
    List<CatalogueSample.Row> rows = CatalogueSample.rows(ROWS, 1);
    Path file = Files.createTempFile("catalogue", ".csv");
    CatalogueSample.write(rows, file);
    csv = Files.readAllBytes(file);
    Files.delete(file);
    for (CatalogueSample.Row row : rows) {
      Map<String, Object> tree = new HashMap<>();
      row.cells().forEach((name, cell) -> Query.put(tree, name.split("\\."), cell));
      trees.add(tree);
      requests.add(engine.bind(DriverCheckRequest.class, tree, true));
    }
  }

  /** Only reads and writes. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public void readAndWrite() throws IOException {
    Writer out = new OutputStreamWriter(OutputStream.nullOutputStream(), StandardCharsets.UTF_8);
    InputStream in = new ByteArrayInputStream(csv);
    try (CsvReader<CsvRecord> reader =
            CsvReader.builder().ofCsvRecord(in, StandardCharsets.UTF_8);
        CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(out)) {
      reader.forEach(row -> writer.writeRecord(row.getFields()));
    }
  }

  /** The batch as the service runs it, from CSV to CSV. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public void batch() throws IOException {
    InputStream in = new ByteArrayInputStream(csv);
    try (CsvBatch<?> batch = CsvBatch.open(endpoint, in, ',')) {
      batch.run(new FlushingOutput(in, OutputStream.nullOutputStream()));
    }
  }

  /** Cells to a request: numbers parsed, record built. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public int bind() {
    int sum = 0;
    for (Map<String, Object> tree : trees) {
      sum += engine.bind(DriverCheckRequest.class, tree, true).hashCode();
    }
    return sum;
  }

  /** Request to answer: validate, compute, judge, texts of findings. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public int answer() {
    int sum = 0;
    for (DriverCheckRequest request : requests) {
      sum += engine.answer(check, request, false, LONG).findings().size();
    }
    return sum;
  }

  /** Request to answer, and the answer to the tree that the batch writes cells from. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public int answerAndTree() {
    int sum = 0;
    for (DriverCheckRequest request : requests) {
      sum += Rendering.tree(engine.answer(check, request, false, LONG)).size();
    }
    return sum;
  }
}
