package org.footwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.footwell.web.request.ProblemException;
import org.junit.jupiter.api.Test;

/**
 * No English stands in the arguments of a sentence. The compiler takes numbers and constants; what
 * it cannot hold is that a name is the caller's and that a field is one.
 */
class SentenceArgumentsTest {

  private static final Path SOURCES = Path.of("src/main/java");

  /** An argument that is a text, up to the end of the call or of a choice. */
  private static final Pattern CALL =
      Pattern.compile("\\.(own|field)\\(\\s*\"\\w+\",([^;]*?)\\)\\s*(?=[.;)])");

  /** What was given or is allowed, up to the end of the call. */
  private static final Pattern FAULT =
      Pattern.compile("\\.(given|allowed)\\(([^;]*?)\\)\\s*(?=[.;)])");

  /** A unit behind its number, or a field by its name. */
  private static final Pattern NO_ENGLISH =
      Pattern.compile(" ?(Hz|s|m|mm|l|h|V|ohm|dBFS)|[a-z][a-z0-9]*(_[a-z0-9]+)*|\\P{L}*");

  /** Words with a blank between them. */
  private static final Pattern SENTENCE = Pattern.compile("\\p{L}{2,}[,.;:]? [\\p{L}\\d%+]");

  /** What is read in the log, in the contract or by programs. */
  private static final Pattern FOR_OTHERS =
      Pattern.compile(
          "LOG\\s*\\.|@Schema|\\.description\\(|\\.setHeader\\(|new (IllegalState|IllegalArgument|CsvParse)Exception"
              + "|MismatchedInputException\\.from|JsonParseException\\(|\\.log\\(|\\(\"Allow\"|Bearer realm");

  private static final Set<String> OF_SETTINGS =
      Set.of("Variables.java", "Settings.java", "KeyRing.java");

  private static final Pattern LITERAL = Pattern.compile("\"([^\"]*)\"");

  @Test
  void noneOfTheCallersOwnWordsIsWrittenInTheProgram() throws IOException {
    List<String> english = new ArrayList<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      files
          .filter(path -> path.toString().endsWith(".java"))
          .sorted()
          .forEach(file -> literals(file, english));
    }
    assertEquals(List.of(), english);
  }

  @Test
  void norIsWhatWasGivenOrIsAllowed() throws IOException {
    List<String> english = new ArrayList<>();
    int calls = 0;
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(SentenceArgumentsTest::isHeld).sorted().toList()) {
        Matcher call = FAULT.matcher(text(file));
        while (call.find()) {
          calls++;
          LITERAL
              .matcher(call.group(2))
              .results()
              .map(literal -> literal.group(1))
              .filter(literal -> !NO_ENGLISH.matcher(literal).matches())
              .forEach(literal -> english.add(file.getFileName() + ": " + literal));
        }
      }
    }
    assertTrue(calls > 100, calls + " calls looked at");
    assertEquals(List.of(), english);
  }

  @Test
  void noProblemIsWordedInTheProgram() throws IOException {
    List<String> english = new ArrayList<>();
    try (Stream<Path> files = Files.walk(SOURCES.resolve("org/footwell/web"))) {
      for (Path file : files.filter(SentenceArgumentsTest::mayBeToldCallers).sorted().toList()) {
        Stream.of(text(file).split(";\n", -1))
            .filter(statement -> !FOR_OTHERS.matcher(statement).find())
            .flatMap(statement -> LITERAL.matcher(statement).results())
            .map(literal -> literal.group(1))
            .filter(literal -> SENTENCE.matcher(literal).find())
            .forEach(literal -> english.add(file.getFileName() + ": " + literal));
      }
    }
    assertEquals(List.of(), english);
    Stream.of(ProblemException.class.getMethods())
        .filter(method -> method.getReturnType().equals(ProblemException.class))
        .filter(method -> !method.getName().equals("wrongMethod"))
        .forEach(method -> assertFalse(List.of(method.getParameterTypes()).contains(String.class)));
  }

  /** What is wrong with settings is read by who starts the service, in its log. */
  private static boolean mayBeToldCallers(Path file) {
    return isHeld(file) && !OF_SETTINGS.contains(file.getFileName().toString());
  }

  private static boolean isHeld(Path file) {
    return file.toString().endsWith(".java");
  }

  private static void literals(Path file, List<String> english) {
    Matcher call = CALL.matcher(text(file));
    while (call.find()) {
      Matcher literal = LITERAL.matcher(call.group(2));
      while (literal.find()) {
        boolean field =
            call.group(1).equals("field") && literal.group(1).matches("[a-z][a-z0-9_.]*");
        if (!field && literal.group(1).matches(".*\\p{L}.*")) {
          english.add(file.getFileName() + ": " + literal.group());
        }
      }
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
