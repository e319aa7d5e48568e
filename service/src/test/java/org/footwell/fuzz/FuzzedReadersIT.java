package org.footwell.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.footwell.Committed;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Searches, led by coverage, for what the readers do not stand. With all others only for a moment, all
 * readers in one search; {@code -P fuzz} gives each of them ten minutes, {@code
 * -Dfootwell.fuzz.seconds=60} another time, {@code -Dfootwell.fuzz.reader=CSV} to one alone. What is found is kept in {@code service/target/fuzz}: put
 * it into {@code src/test/resources/fuzz}, where {@link FuzzedInputsTest} tries it ever after.
 */
@Tag("long")
class FuzzedReadersIT {

  private static final Path FOLDER =
      Committed.PROJECT.resolve(Path.of("service", "target", "fuzz"));
  private static final Pattern DONE = Pattern.compile("Done (\\d+) runs in");
  private static final Pattern COVERED = Pattern.compile(" cov: (\\d+) ");

  /** A search that tried less, or reached less, searched for nothing. */
  private static final int LEAST_RUNS = 50;

  private static final int LEAST_COVERED = 200;

  @Test
  void noReaderBreaksWhateverItIsGiven() throws Exception {
    String seconds = System.getProperty("footwell.fuzz.seconds");
    if (seconds == null) {
      search(FuzzEntry.ALL, "15");
    } else {
      String only = System.getProperty(FuzzEntry.READER);
      for (FuzzedReader reader : FuzzedReader.values()) {
        if (only == null || only.equals(reader.name())) {
          search(reader.name(), seconds);
        }
      }
    }
  }

  private static void search(String reader, String seconds) throws Exception {
    Path folder = Files.createDirectories(FOLDER.resolve(reader));
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx1g", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-ea"));
    command.add("-D" + FuzzEntry.READER + "=" + reader);
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add("com.code_intelligence.jazzer.Jazzer");
    command.add("--target_class=" + FuzzEntry.class.getName());
    command.add("--instrumentation_includes=org.footwell.**:com.fasterxml.jackson.**");
    command.add("--reproducer_path=" + folder);
    command.addAll(
        List.of("-artifact_prefix=" + folder + "/", "-seed=1", "-max_total_time=" + seconds));
    command.addAll(List.of("-max_len=4096", "-timeout=60", "-rss_limit_mb=0"));
    command.add(seeds(folder, reader).toString());
    Process searching =
        new ProcessBuilder(command)
            .directory(Committed.PROJECT.toFile())
            .redirectErrorStream(true)
            .start();
    String told = new String(searching.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    Files.writeString(folder.resolve("log"), told);
    assertEquals(0, searching.waitFor(), () -> reader + ":\n" + whatBroke(told));
    assertTrue(last(DONE, told) >= LEAST_RUNS, told);
    assertTrue(last(COVERED, told) >= LEAST_COVERED, told);
    System.out.printf(
        "%s: %d tries, %d branches reached%n", reader, last(DONE, told), last(COVERED, told));
  }

  private static Path seeds(Path folder, String name) throws IOException {
    Path corpus = Files.createDirectories(folder.resolve("corpus"));
    for (FuzzedReader reader : FuzzedReader.values()) {
      boolean one = name.equals(reader.name());
      if (one || name.equals(FuzzEntry.ALL)) {
        List<byte[]> seeds = new ArrayList<>(reader.target().seeds());
        for (Path file : FuzzedInputsTest.files(reader)) {
          seeds.add(Files.readAllBytes(file));
        }
        for (int i = 0; i < seeds.size(); i++) {
          byte[] seed = one ? seeds.get(i) : FuzzEntry.forAll(reader, seeds.get(i));
          Files.write(corpus.resolve("seed-" + reader.id() + i), seed);
        }
      }
    }
    return corpus;
  }

  private static long last(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    long last = 0;
    while (matcher.find()) {
      last = Long.parseLong(matcher.group(1));
    }
    return last;
  }

  private static String whatBroke(String told) {
    List<String> lines = Arrays.asList(told.split("\n", -1));
    int from = 0;
    while (from < lines.size() && !lines.get(from).startsWith("==")) {
      from++;
    }
    return Stream.concat(lines.stream().skip(from).limit(40), Stream.of("the whole: log"))
        .reduce("", (all, line) -> all + line + "\n");
  }
}
