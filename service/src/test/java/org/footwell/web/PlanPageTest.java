package org.footwell.web;

import static org.footwell.web.RunningServer.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.footwell.Committed;
import org.footwell.web.pages.PageWords;
import org.footwell.web.request.ContractWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What the page at {@code /plan} is made of: its files, its words, and a word for every field. */
@ExtendWith(RunningServer.class)
class PlanPageTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Path FILES = Path.of("src/main/resources/plan");
  private static final String MEANING = "meaning.";
  private static final Pattern SLOT = Pattern.compile("\\{\\w+}");

  /** A word asked for by its whole key; keys put together from parts are asked for otherwise. */
  private static final Pattern ASKED =
      Pattern.compile("(?:say|counted)\\(\\s*\"([a-z.-]+)\"|data-(?:say|label)=\"([a-z.-]+)\"");

  private static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(FILES)) {
      return files.sorted().toList();
    }
  }

  private static Set<String> slots(String text) {
    Set<String> slots = new TreeSet<>();
    SLOT.matcher(text).results().map(MatchResult::group).forEach(slots::add);
    return slots;
  }

  @Test
  void everyFileOfThePageIsServedAndNoOtherIsThere() throws IOException {
    for (Path file : files()) {
      String name = file.getFileName().toString();
      String address = name.equals("index.html") ? "/plan" : "/plan/" + name;
      assertEquals(Files.readString(file), given().get(address).asString(), address);
    }
    assertEquals(404, given().get("/plan/index.html").statusCode());
    assertEquals(404, given().get("/plan/nothing.js").statusCode());
  }

  @Test
  void theDemoVehiclesAreTheExamplesThatAreDocumented() throws IOException {
    List<String> names =
        PageWords.in(Locale.ENGLISH).keySet().stream()
            .filter(key -> key.startsWith("example."))
            .map(key -> key.substring("example.".length()))
            .toList();
    assertTrue(names.contains("camper-van.json"), names.toString());
    for (String name : names) {
      Path file = Committed.PROJECT.resolve("docs/examples").resolve(name);
      assertEquals(Files.readString(file), given().get("/plan/examples/" + name).asString(), name);
    }
  }

  @Test
  void theWordsAreServedWithTheirLanguage() throws IOException {
    Response response = given().header("Accept-Language", "fi").get(PageWords.PATH);
    assertEquals("application/json", response.contentType());
    JsonNode said = MAPPER.readTree(response.asString());
    assertEquals("en", said.get("lang").asText());
    assertEquals("Work on a plan", said.get("texts").get("page.title").asText());
  }

  @Test
  void everyWordHasItsGermanOneWithTheSameSlotsAndNoneIsLeftOver() throws IOException {
    Properties german = new Properties();
    try (InputStreamReader in =
        new InputStreamReader(
            PageWords.class.getResourceAsStream("/org/footwell/languages/de.properties"),
            StandardCharsets.UTF_8)) {
      german.load(in);
    }
    Map<String, String> english = PageWords.in(Locale.ENGLISH);
    Set<String> there = new TreeSet<>();
    german.stringPropertyNames().stream()
        .filter(key -> key.startsWith("web.pages."))
        .forEach(key -> there.add(key.substring("web.pages.".length())));
    there.removeIf(key -> key.startsWith(MEANING));
    assertEquals(english.keySet(), there);
    Map<String, String> inGerman = PageWords.in(Locale.GERMAN);
    english.forEach((key, text) -> assertEquals(slots(text), slots(inGerman.get(key)), key));
    assertEquals("Resonanzfrequenz", inGerman.get("field.fs_hz"));
  }

  /** In English the contract says it, so the words of the page need not. */
  @Test
  void whatAFieldMeansIsSaidInGermanForEverySentenceOfTheContract() {
    Set<String> english = ContractWords.meanings().keySet();
    Set<String> german = new TreeSet<>();
    PageWords.in(Locale.GERMAN).keySet().stream()
        .filter(key -> key.startsWith(MEANING))
        .forEach(key -> german.add(key.substring(MEANING.length())));
    assertEquals(english, german);
    assertEquals("Resonanz in freier Luft, Hz", PageWords.in(Locale.GERMAN).get("meaning.fs_hz"));
    assertEquals(
        "Trennfrequenz, Hz", PageWords.in(Locale.GERMAN).get("meaning.Crossover.frequency_hz"));
    assertTrue(
        PageWords.in(Locale.ENGLISH).keySet().stream().noneMatch(k -> k.startsWith(MEANING)));
  }

  @Test
  void aLanguageWithoutWordsIsEnglish() {
    assertEquals(PageWords.in(Locale.ENGLISH), PageWords.in(Locale.forLanguageTag("fi")));
  }

  @Test
  void everyWordTheFilesAskForIsThere() throws IOException {
    Map<String, String> english = PageWords.in(Locale.ENGLISH);
    List<String> asked = new ArrayList<>();
    for (Path file : files()) {
      Matcher found = ASKED.matcher(Files.readString(file));
      while (found.find()) {
        asked.add(found.group(1) != null ? found.group(1) : found.group(2));
      }
    }
    assertTrue(asked.size() > 40, asked.toString());
    asked.removeIf(key -> english.containsKey(key) || english.containsKey(key + ".other"));
    assertEquals(List.of(), asked);
  }

  /** Nobody reads {@code fs_hz} on this page: the contract is walked, from the plan down. */
  @Test
  void everyFieldOfAPlanAndEveryValueOfItsListsHasAName() throws IOException {
    JsonNode contract = MAPPER.readTree(given().get("/openapi.json").asString());
    Map<String, String> english = PageWords.in(Locale.ENGLISH);
    Set<String> nameless = new TreeSet<>();
    Set<String> fields = new TreeSet<>();
    for (String record : recordsOf(contract)) {
      JsonNode properties = contract.at("/components/schemas/" + record + "/properties");
      for (Map.Entry<String, JsonNode> field : properties.properties()) {
        fields.add(field.getKey());
        if (!english.containsKey("field." + record + "." + field.getKey())
            && !english.containsKey("field." + field.getKey())) {
          nameless.add("field." + field.getKey());
        }
        for (JsonNode value : field.getValue().path("enum")) {
          if (value.isTextual() && !english.containsKey("value." + value.asText())) {
            nameless.add("value." + value.asText());
          }
        }
      }
    }
    assertTrue(fields.size() > 200, "fields found: " + fields.size());
    assertEquals(Set.of(), nameless);
  }

  /** The plan and every record it refers to. */
  private static Set<String> recordsOf(JsonNode contract) {
    Set<String> found = new TreeSet<>();
    List<String> ahead = new ArrayList<>(List.of("VehiclePlan"));
    while (!ahead.isEmpty()) {
      String record = ahead.remove(ahead.size() - 1);
      if (found.add(record)) {
        contract.at("/components/schemas/" + record).findValuesAsText("$ref").stream()
            .map(ref -> ref.substring(ref.lastIndexOf('/') + 1))
            .forEach(ahead::add);
      }
    }
    return found;
  }
}
