package org.footwell.calculation.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The texts of a language other than English: one file for the whole service, read when somebody
 * first reads that language. A text stands under its package below {@code org.footwell} and its key,
 * such as {@code acoustic.level.exposure-unknown.advice}.
 */
final class Translation {

  private static final String ROOT = "org.footwell.";
  private static final String HOME = "/org/footwell/languages/";

  /** A language without region or script. */
  private static final Pattern CODE = Pattern.compile("[a-z]{2,3}");

  private static final Map<String, Translation> READ = new ConcurrentHashMap<>();

  private final Properties texts = new Properties();

  private Translation(String code) {
    try (InputStream file = Translation.class.getResourceAsStream(file(code))) {
      if (file != null) {
        texts.load(new InputStreamReader(file, StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether a language has such a file. */
  static boolean exists(String code) {
    Translation read = READ.get(code);
    return read != null
        ? !read.texts.isEmpty()
        : CODE.matcher(code).matches() && Translation.class.getResource(file(code)) != null;
  }

  /** The languages of ISO 639 that have one; looking for each takes longer than English may wait. */
  static Stream<String> all() {
    return Stream.of(Locale.getISOLanguages()).filter(Translation::exists);
  }

  /** The texts there are in a language; none where it has no file. */
  static Translation into(Locale language) {
    return READ.computeIfAbsent(language.getLanguage(), Translation::new);
  }

  private static String file(String code) {
    return HOME + code + ".properties";
  }

  /** The text under a key of a package, or the one given where there is none. */
  String text(String home, String key, String english) {
    return texts.getProperty(home.substring(ROOT.length()) + '.' + key, english);
  }

  /** All texts under keys of a package that begin alike, without that beginning. */
  Map<String, String> beginning(String home, String start) {
    String whole = home.substring(ROOT.length()) + '.' + start;
    Map<String, String> found = new TreeMap<>();
    for (String key : texts.stringPropertyNames()) {
      if (key.startsWith(whole)) {
        found.put(key.substring(whole.length()), texts.getProperty(key));
      }
    }
    return found;
  }
}
