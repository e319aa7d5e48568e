package org.footwell.web.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.footwell.calculation.text.Reader;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Pieces of a batch on their way. */
class PipelineTest {

  private final ExecutorService workers = Executors.newFixedThreadPool(2);
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final Pipeline pipeline = new Pipeline(workers, 4, out, Reader.ANYONE);

  @AfterEach
  void stop() {
    workers.shutdownNow();
  }

  @Test
  void whatIsReadyFirstWaitsForItsTurn() throws IOException {
    pipeline.add(
        () -> {
          Thread.sleep(50);
          return List.of(Part.of(new byte[] {'a'}));
        });
    pipeline.add(() -> List.of(Part.of(new byte[] {'b'})));
    pipeline.flush();
    assertEquals("ab", out.toString(StandardCharsets.US_ASCII));
  }

  @Test
  void memoryThatRunsOutIsToldAsWhatItIs() {
    OutOfMemoryError tooMuch = new OutOfMemoryError("as if");
    Executable batch =
        () -> {
          pipeline.add(
              () -> {
                throw tooMuch;
              });
          pipeline.flush();
        };
    assertSame(tooMuch, assertThrows(OutOfMemoryError.class, batch));
  }
}
