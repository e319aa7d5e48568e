package org.footwell.fuzz;

import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.footwell.Committed;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every reader reads what a search begins with, and what a search once found. */
class FuzzedInputsTest {

  private static final Path FOUND =
      Committed.PROJECT.resolve(Path.of("service", "src", "test", "resources", "fuzz"));

  @TestFactory
  Stream<DynamicTest> whatASearchBeginsWith() {
    return Stream.of(FuzzedReader.values())
        .map(
            reader ->
                dynamicTest(
                    reader.id(),
                    () -> {
                      Target target = reader.target();
                      for (byte[] seed : target.seeds()) {
                        Effort.read(target, seed);
                        // Cut off and longer by a zero are the first that any search tries.
                        Effort.read(target, Arrays.copyOf(seed, seed.length / 2));
                        Effort.read(target, Arrays.copyOf(seed, seed.length + 1));
                      }
                    }));
  }

  @TestFactory
  Stream<DynamicTest> whatASearchFound() {
    return Stream.of(FuzzedReader.values()).flatMap(FuzzedInputsTest::found);
  }

  private static Stream<DynamicTest> found(FuzzedReader reader) {
    return files(reader).stream()
        .map(
            file ->
                dynamicTest(
                    reader.id() + "/" + file.getFileName(),
                    () -> Effort.read(reader.target(), Files.readAllBytes(file))));
  }

  /** What a search found for a reader, kept. */
  static List<Path> files(FuzzedReader reader) {
    Path folder = FOUND.resolve(reader.id());
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
