package org.footwell.calculation.text;

import static java.util.stream.Collectors.toCollection;
import static java.util.stream.Collectors.toMap;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.footwell.CodesTest;
import org.footwell.web.request.ContractWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each language says all that English says, and leaves the same open. */
class TranslationTest {

  private static final Map<Arguments.Kind, Object> SAMPLES =
      Map.of(
          Arguments.Kind.NUMBER,
          -1.5,
          Arguments.Kind.OWN,
          "own",
          Arguments.Kind.FIELD,
          "field_hz",
          Arguments.Kind.WORDS,
          CoreWords.THE_REQUEST);

  private static final Pattern LEFT_OPEN = Pattern.compile("\\{[\\w:]*}");

  /** Numbers with decimals, not those of standards, protocols and names. */
  private static final Pattern DECIMALS =
      Pattern.compile("(?<![\\w/.])(?!1910\\.95)\\d+\\.\\d+(?![\\w.])");

  private static final List<Coded> CODES = CodesTest.allCodes();

  static Stream<Locale> languages() {
    return Reader.languages().stream().skip(1).map(Locale::forLanguageTag);
  }

  @Test
  void germanIsFoundByItsFile() {
    assertEquals(List.of("en", "de"), Reader.languages());
  }

  @ParameterizedTest
  @MethodSource("languages")
  void noTextIsMissingOrLeftOver(Locale language) throws IOException {
    TreeSet<String> needed =
        CODES.stream().flatMap(TranslationTest::keys).collect(toCollection(TreeSet::new));
    assertTrue(needed.size() > 1000, () -> needed.size() + " texts");
    needed.addAll(ofPages());
    needed.addAll(ofContract(file(language).stringPropertyNames()));
    assertEquals(
        String.join("\n", needed),
        String.join("\n", file(language).stringPropertyNames().stream().sorted().toList()));
  }

  /** Words of the page to work on a plan belong to no code. */
  private static List<String> ofPages() throws IOException {
    Properties texts = new Properties();
    try (InputStream in =
        Texts.class.getResourceAsStream("/org/footwell/web/pages/texts.properties")) {
      texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
    return texts.stringPropertyNames().stream().map(key -> "web.pages." + key).toList();
  }

  /** What people read of the contract: its English is the sentence or the name that is there. */
  private static Set<String> ofContract(Set<String> translated) throws IOException {
    Set<String> meanings = ContractWords.meanings().keySet();
    Set<String> labelled = ContractWords.labelled();
    Set<String> values = ContractWords.values();
    assertTrue(meanings.size() > 300 && labelled.size() > 900 && values.size() > 150);
    Set<String> ofPages = Set.copyOf(ofPages());
    Set<String> needed = new TreeSet<>();
    meanings.forEach(name -> needed.add("web.pages.meaning." + name));
    for (String name : labelled) {
      String own = "web.request.label." + name;
      if (translated.contains(own)) {
        needed.add(own);
      } else if (!ofPages.contains("web.pages.field." + name)) {
        needed.add("web.request.label." + ContractWords.bare(name));
      }
    }
    values.stream()
        .filter(value -> !ofPages.contains("web.pages.value." + value))
        .forEach(value -> needed.add("web.request.value." + value));
    ContractWords.titled().forEach(id -> needed.add("web.request.title." + id));
    return needed;
  }

  @ParameterizedTest
  @MethodSource("languages")
  void noKeyStandsTwice(Locale language) throws IOException {
    try (BufferedReader lines = reader(language)) {
      long keys = lines.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).count();
      assertEquals(file(language).size(), keys);
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void whatIsLeftOpenIsThatOfEnglish(Locale language) {
    for (Coded code : CODES) {
      assertEquals(
          slots(code, Reader.ANYONE.language()),
          slots(code, language),
          () -> home(code) + code.key());
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void everySentenceCanBeFilledIn(Locale language) {
    for (Coded code : CODES) {
      Sentence sentence = Texts.sentence(code, language);
      Stream.of(sentence.text(), sentence.advice() == null ? sentence.text() : sentence.advice())
          .forEach(
              template -> {
                String filled =
                    template.filled(
                        samples(template)::get,
                        any -> null,
                        new Reader(language, Reader.Units.METRIC));
                assertFalse(filled.isBlank() || LEFT_OPEN.matcher(filled).find(), filled);
                assertFalse(filled.contains("-1.5"), filled);
              });
    }
  }

  private static Map<String, Object> samples(Template template) {
    return template.slots().stream()
        .collect(toMap(Template.Slot::name, slot -> SAMPLES.get(slot.kind()), (a, b) -> a));
  }

  @Test
  void germanTextsHaveADecimalComma() throws IOException {
    List<String> points =
        file(Locale.GERMAN).entrySet().stream()
            .map(Object::toString)
            .filter(line -> DECIMALS.matcher(line.substring(line.indexOf('='))).find())
            .toList();
    assertEquals(List.of(), points);
  }

  private static Map<String, Arguments.Kind> slots(Coded code, Locale language) {
    Map<String, Arguments.Kind> kinds = new TreeMap<>();
    Texts.sentence(code, language).slots().forEach(slot -> kinds.put(slot.name(), slot.kind()));
    return kinds;
  }

  private static Stream<String> keys(Coded code) {
    String key = home(code) + code.key();
    return Texts.advice(code).isPresent() ? Stream.of(key, key + ".advice") : Stream.of(key);
  }

  private static String home(Coded code) {
    String name = ((Enum<?>) code).getDeclaringClass().getPackageName();
    return name.substring("org.footwell.".length()) + ".";
  }

  private static Properties file(Locale language) throws IOException {
    Properties texts = new Properties();
    try (BufferedReader reader = reader(language)) {
      texts.load(reader);
    }
    return texts;
  }

  private static BufferedReader reader(Locale language) {
    String file = "/org/footwell/languages/" + language.toLanguageTag() + ".properties";
    return new BufferedReader(
        new InputStreamReader(
            TranslationTest.class.getResourceAsStream(file), StandardCharsets.UTF_8));
  }
}
