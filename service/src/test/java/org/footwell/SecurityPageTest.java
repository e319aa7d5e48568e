package org.footwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page on security names tests for what it says: they are there. */
class SecurityPageTest {

  private static final Path SOURCES = Path.of("service", "src", "test", "java");
  private static final Pattern NAMED = Pattern.compile("`(\\w+)#(\\w+)`");
  private static final Pattern TESTED =
      Pattern.compile("^\\| (API\\d+) .*`\\w+#\\w+`", Pattern.MULTILINE);

  private static String page() throws IOException {
    return Files.readString(Committed.PROJECT.resolve(Path.of("docs", "security.md")));
  }

  /** The text of every test class by its name; classes of one name are read as one. */
  private static Map<String, String> classes() throws IOException {
    try (Stream<Path> files = Files.walk(Committed.PROJECT.resolve(SOURCES))) {
      return files
          .filter(file -> file.toString().matches(".*(Test|IT)\\.java"))
          .collect(
              Collectors.toMap(
                  file -> file.getFileName().toString().replace(".java", ""),
                  SecurityPageTest::text,
                  String::concat));
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void everyTestThatThePageNamesExists() throws IOException {
    Map<String, String> classes = classes();
    List<String> missing = new ArrayList<>();
    Matcher named = NAMED.matcher(page());
    while (named.find()) {
      String method = " " + named.group(2) + "(";
      // A rule of the architecture is a field.
      String rule = " " + named.group(2) + " =";
      String text = classes.getOrDefault(named.group(1), "");
      if (!text.contains(method) && !text.contains(rule)) {
        missing.add(named.group());
      }
    }
    assertEquals(List.of(), missing);
  }

  @Test
  void everyItemOfTheListIsShownByATest() throws IOException {
    Matcher tested = TESTED.matcher(page());
    List<String> items = tested.results().map(item -> item.group(1)).toList();
    assertEquals(IntStream.rangeClosed(1, 10).mapToObj(i -> "API" + i).toList(), items);
    assertTrue(page().contains("owasp.org/API-Security/editions/2023"));
  }
}
