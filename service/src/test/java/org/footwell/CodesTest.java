package org.footwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.footwell.calculation.FindingCode;
import org.footwell.calculation.Verdict;
import org.footwell.calculation.text.Coded;
import org.footwell.calculation.text.Texts;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Codes and their sentences belong together, one to one. */
@Tag("long")
public class CodesTest {

  private static final Pattern SPELT_OUT = Pattern.compile("(?<![\\w.])[cm]?m[23]\\b");

  /** Every constant of the program that has words. */
  public static List<Coded> allCodes() {
    JavaClasses classes =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.footwell");
    return classes.stream()
        .filter(type -> type.isAssignableTo(Coded.class) && type.isEnum())
        .filter(type -> !type.getName().contains("Test$"))
        .map(JavaClass::reflect)
        .flatMap(type -> Stream.of(type.getEnumConstants()))
        .map(Coded.class::cast)
        .toList();
  }

  @TestFactory
  Stream<DynamicTest> everyCodeHasItsSentence() {
    return allCodes().stream()
        .map(
            code ->
                DynamicTest.dynamicTest(
                    code.key(), () -> assertFalse(Texts.of(code).isBlank(), code::key)));
  }

  @TestFactory
  Stream<DynamicTest> everyWarningAndStopSaysWhatToDo() {
    return allCodes().stream()
        .filter(code -> code instanceof FindingCode finding && finding.level() != Verdict.NOTE)
        .map(
            code ->
                DynamicTest.dynamicTest(
                    code.key(), () -> assertTrue(Texts.advice(code).isPresent(), code::key)));
  }

  @Test
  void noKeyStandsTwice() throws IOException {
    List<String> twice = new ArrayList<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/resources"))) {
      for (Path file : files.filter(path -> path.endsWith("texts.properties")).toList()) {
        Set<String> seen = new TreeSet<>();
        Files.readAllLines(file).stream()
            .map(line -> line.substring(0, line.indexOf('=')))
            .filter(key -> !seen.add(key))
            .forEach(key -> twice.add(file + ": " + key));
      }
    }
    assertEquals(List.of(), twice);
  }

  /** Areas and volumes read as on paper; only names of fields spell them {@code mm2}. */
  @Test
  void squaresAndCubesAreWrittenOneWay() throws IOException {
    List<String> spelt = new ArrayList<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/resources"))) {
      for (Path file : files.filter(path -> path.endsWith("texts.properties")).toList()) {
        Files.readAllLines(file).stream()
            .filter(line -> SPELT_OUT.matcher(line).find())
            .forEach(spelt::add);
      }
    }
    assertEquals(List.of(), spelt);
  }

  @Test
  void noSentenceIsWithoutACode() {
    Set<String> packages =
        allCodes().stream()
            .map(code -> ((Enum<?>) code).getDeclaringClass().getPackageName())
            .collect(Collectors.toSet());
    Set<String> sentences = new TreeSet<>();
    for (String home : packages) {
      sentences.addAll(ResourceBundle.getBundle(home + ".texts", Locale.ROOT).keySet());
    }
    for (Coded code : allCodes()) {
      sentences.remove(code.key());
      sentences.remove(code.key() + ".advice");
    }
    assertEquals(Set.of(), sentences);
  }
}
