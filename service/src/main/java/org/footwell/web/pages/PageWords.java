package org.footwell.web.pages;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.SortedMap;
import java.util.TreeMap;
import org.footwell.calculation.text.Quantity;
import org.footwell.calculation.text.Texts;
import org.footwell.web.request.Json;

/**
 * The words of the page at {@code /plan}. English ones stand beside this class; those of another
 * language in its one file for the whole service, under {@code web.pages.} and the same key. What
 * is not there is said in English. What a field means the contract says, in English; another
 * language says it under {@code meaning.} and the name of the field, or of its record and the field.
 */
public final class PageWords {

  /** Where the page finds them. */
  public static final String PATH = "/plan/texts.json";

  private static final String ENGLISH = "texts.properties";
  private static final String HOME = PageWords.class.getPackageName();

  /** What a demo vehicle is called stands under this and the name of its file. */
  private static final String EXAMPLE = "example.";

  private static final String MEANING = "meaning.";

  private record Said(
      String lang, SortedMap<String, String> texts, SortedMap<String, Quantity.Worth> units) {}

  private PageWords() {}

  /** All words in a language, by their keys. */
  public static SortedMap<String, String> in(Locale language) {
    SortedMap<String, String> words = new TreeMap<>();
    english().forEach((key, text) -> words.put((String) key, (String) text));
    words.replaceAll((key, english) -> Texts.translated(HOME, key, english, language));
    Texts.translations(HOME, MEANING, language)
        .forEach((field, sentence) -> words.put(MEANING + field, sentence));
    return words;
  }

  /** The files of the demo vehicles. */
  static List<String> examples() {
    return in(Locale.ENGLISH).keySet().stream()
        .filter(key -> key.startsWith(EXAMPLE))
        .map(key -> key.substring(EXAMPLE.length()))
        .toList();
  }

  static byte[] json(Locale language) {
    return Json.bytes(new Said(language.toLanguageTag(), in(language), Quantity.units()));
  }

  private static Properties english() {
    Properties texts = new Properties();
    try (InputStream in = PageWords.class.getResourceAsStream(ENGLISH)) {
      texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return texts;
  }
}
