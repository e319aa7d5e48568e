package org.footwell.web.request;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Faults;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;

/** The query of an address, read strictly: no parameter is overlooked and none is guessed. */
public final class Query {

  public static final int MOST_PARAMETERS = 1_000;

  /** Stands for every index of a repeated group. */
  private static final Pattern ENTRY = Pattern.compile("\\.\\*(?=\\.|$)");

  private static final String ABOUT = "about";

  private static final String LANGUAGE = "lang";

  private static final String DIGITS = "digits";

  private static final String UNITS = "units";

  private static final List<String> SYSTEMS =
      Stream.of(Reader.Units.values()).map(Names::of).toList();

  private static final String FINDINGS = "findings";

  /** How findings can be said. */
  public static final List<String> WORDINGS =
      Reader.Wording.ASKED_FOR.stream().map(Names::of).toList();

  private static final List<String> ERRORS = List.of("problem", "text");

  private static final Map<String, List<String>> OF_BATCH =
      sorted(
          Map.of(
              "columns",
              List.of(),
              DIGITS,
              Digits.NAMES,
              "errors",
              ERRORS,
              LANGUAGE,
              List.of(),
              "separator",
              List.of("comma", "semicolon"),
              UNITS,
              SYSTEMS));

  private static final Map<String, List<String>> OF_SWEEP =
      sorted(
          Map.of(
              DIGITS,
              Digits.NAMES,
              "errors",
              ERRORS,
              LANGUAGE,
              List.of(),
              "format",
              List.of("json", "csv", "ndjson"),
              "separator",
              List.of("comma", "semicolon"),
              UNITS,
              SYSTEMS));

  /** Options with their values; of none where any text may stand. */
  private final Map<String, List<String>> known;

  private final Map<String, String> options = new LinkedHashMap<>();
  private final Map<String, String> fields = new LinkedHashMap<>();

  private Query(Map<String, List<String>> known) {
    this.known = known;
  }

  /** The options of a single request whose answer has these formats. */
  static Map<String, List<String>> optionsWith(List<String> formats) {
    return sorted(
        Map.of(
            DIGITS,
            Digits.NAMES,
            "errors",
            ERRORS,
            "field",
            List.of(),
            FINDINGS,
            WORDINGS,
            "format",
            formats,
            LANGUAGE,
            List.of(),
            UNITS,
            SYSTEMS,
            "workings",
            List.of("true", "false")));
  }

  /** The same with the place of a document that a question is about. */
  static Map<String, List<String>> withPlace(Map<String, List<String>> options) {
    Map<String, List<String>> all = new TreeMap<>(options);
    all.put(ABOUT, List.of());
    return Collections.unmodifiableMap(all);
  }

  /** In an order that is always the same: it shows in sentences. */
  private static Map<String, List<String>> sorted(Map<String, List<String>> options) {
    return Collections.unmodifiableMap(new TreeMap<>(options));
  }

  /** Reads the raw query of a single request; null is an empty one. */
  public static Query of(String raw, Map<String, List<String>> options) {
    return new Query(options).read(raw);
  }

  /** Reads the raw query of a batch; null is an empty one. */
  public static Query ofBatch(String raw) {
    return new Query(OF_BATCH).read(raw);
  }

  /** Reads the raw query of a sweep; null is an empty one. */
  public static Query ofSweep(String raw) {
    return new Query(OF_SWEEP).read(raw);
  }

  private Query read(String raw) {
    if (raw == null || raw.isEmpty()) {
      return this;
    }
    Faults faults = new Faults();
    String[] pairs = raw.split("&", MOST_PARAMETERS + 1);
    if (pairs.length > MOST_PARAMETERS) {
      throw ProblemException.of(
          ProblemType.UNREADABLE,
          Phrase.of(ProblemWords.TOO_MANY_PARAMETERS).with("most", MOST_PARAMETERS));
    }
    for (String pair : pairs) {
      if (!pair.isEmpty()) {
        add(pair, faults);
      }
    }
    checkOptions(faults);
    refuse(faults);
    return this;
  }

  private void add(String pair, Faults faults) {
    int equals = pair.indexOf('=');
    String name = decode(equals < 0 ? pair : pair.substring(0, equals));
    String value = equals < 0 ? "" : pair.substring(equals + 1);
    if (known.containsKey(name)) {
      put(options, name, decode(value), faults);
    } else if (ENTRY.matcher(name).results().count() == 1) {
      column(name, value, faults);
    } else {
      put(fields, name, decode(value), faults);
    }
  }

  private static void put(Map<String, String> into, String name, String value, Faults faults) {
    if (into.put(name, value) != null) {
      faults.add(CoreFault.DUPLICATE).at("/" + name.replace('.', '/')).given(name);
    }
  }

  /**
   * A field of all entries: {@code coils.*.rated_ohm=4,2} is {@code coils.0.rated_ohm=4} and {@code
   * coils.1.rated_ohm=2}. An empty value is left out. A comma within a value comes as %2C, so the
   * values are taken apart before they are decoded.
   */
  private void column(String name, String values, Faults faults) {
    int index = 0;
    for (String value : values.split(",", -1)) {
      if (!value.isEmpty()) {
        put(fields, ENTRY.matcher(name).replaceFirst("." + index), decode(value), faults);
      }
      index++;
    }
  }

  private void checkOptions(Faults faults) {
    known.forEach(
        (name, allowed) -> {
          String given = options.get(name);
          if (given != null && !fits(name, given, allowed)) {
            faults
                .add(CoreFault.NOT_ALLOWED)
                .at("/" + name)
                .given(given)
                .allowed(fitting(name, allowed));
          }
        });
    boolean text = !options.containsKey("format") || "text".equals(options.get("format"));
    if (options.containsKey("field") && !text) {
      faults
          .add(CoreFault.NOT_ALLOWED)
          .at("/format")
          .given(options.get("format"))
          .allowed(Phrase.of(WebWords.TEXT_FOR_A_FIELD));
    }
  }

  private static boolean fits(String name, String given, List<String> allowed) {
    if (name.equals(LANGUAGE)) {
      return Reader.in(given).isPresent();
    }
    // No place at all is the document as a whole.
    return allowed.isEmpty() ? name.equals(ABOUT) || !given.isBlank() : allowed.contains(given);
  }

  private static Phrase fitting(String name, List<String> allowed) {
    if (name.equals(LANGUAGE)) {
      return Allowed.oneOf(Reader.languages());
    }
    if (name.equals(DIGITS)) {
      return Allowed.between(Digits.LEAST, Digits.MOST, "");
    }
    return allowed.isEmpty() ? Phrase.of(WebWords.FIGURE_NAME) : Allowed.oneOf(allowed);
  }

  private static void refuse(Faults faults) {
    if (!faults.none()) {
      throw ProblemException.invalid(faults);
    }
  }

  /** Refuses every parameter that is not an option, as on a POST. */
  public void requireNoFields() {
    Faults faults = new Faults();
    for (String name : fields.keySet()) {
      faults
          .add(CoreFault.UNKNOWN_FIELD)
          .at("/" + name)
          .given(name)
          .allowed(Allowed.fields(known.keySet()))
          .with("nearest", Names.didYouMean(name, known.keySet()));
    }
    refuse(faults);
  }

  /** Refuses options that mean something with other types only. */
  public void requireNone(List<String> names, Format... only) {
    List<String> types = Arrays.stream(only).map(Format::mediaType).toList();
    Faults faults = new Faults();
    for (String name : names) {
      if (options.containsKey(name)) {
        faults
            .add(CoreFault.NOT_ALLOWED)
            .at("/" + name)
            .given(option(name))
            .allowed(Phrase.of(WebWords.ONLY_WITH).own("type", types));
      }
    }
    refuse(faults);
  }

  /** The fields as a tree: {@code coils.0.rated_ohm=4} becomes coils → 0 → rated_ohm → 4. */
  public Map<String, Object> tree() {
    Map<String, Object> root = new LinkedHashMap<>();
    Faults faults = new Faults();
    fields.forEach(
        (name, value) -> {
          if (!put(root, List.of(name.split("\\.", -1)), value)) {
            faults
                .add(CoreFault.WRONG_TYPE)
                .at("/" + name.replace('.', '/'))
                .given(value)
                .allowed(Phrase.of(WebWords.VALUE_OR_GROUP));
          }
        });
    refuse(faults);
    return root;
  }

  @SuppressWarnings("unchecked") // every map in the tree was put there below
  public static boolean put(Map<String, Object> root, List<String> path, String value) {
    Map<String, Object> here = root;
    for (int i = 0; i < path.size() - 1; i++) {
      Object next = here.computeIfAbsent(path.get(i), name -> new LinkedHashMap<String, Object>());
      if (!(next instanceof Map)) {
        return false;
      }
      here = (Map<String, Object>) next;
    }
    return here.putIfAbsent(path.get(path.size() - 1), value) == null;
  }

  /** The value of an option, or null. */
  public String option(String name) {
    return options.get(name);
  }

  /** Refuses digits for a format that rounds in its own way; a single value takes any. */
  public void requireDigitsFit(Format format) {
    if (!options.containsKey("field") && !Rendering.OF_NUMBERS.contains(format)) {
      requireNone(List.of(DIGITS), Rendering.OF_NUMBERS.toArray(Format[]::new));
    }
  }

  /** How many digits an answer is wanted with. */
  public Digits digits() {
    return Digits.of(option(DIGITS));
  }

  public boolean workings() {
    return "true".equals(options.get("workings"));
  }

  /**
   * Who reads an answer: {@code findings=} says how they are said; on a page someone sees tables beside them.
   *
   * @throws ProblemException if a form for people is asked for at the same time as codes
   */
  public Reader reader(Reader asking, Format format) {
    String asked = option(FINDINGS);
    Reader.Wording wording =
        asked == null
            ? Reader.Wording.SENTENCES
            : Reader.Wording.valueOf(asked.toUpperCase(Locale.ROOT));
    if (wording == Reader.Wording.CODES && option("field") == null && !format.equals(Format.JSON)) {
      requireNone(List.of(FINDINGS), Format.JSON);
    }
    return asking.told(wording == Reader.Wording.SENTENCES ? format.wording() : wording);
  }

  /** Whether the raw query asks for problems as text; looks before anything is checked. */
  static boolean asksForTextErrors(String raw) {
    return raw != null && ("&" + raw + "&").contains("&errors=text&");
  }

  /** The language a raw query asks for, or an empty text; looks before anything is checked. */
  static String language(String raw) {
    return asked(raw, LANGUAGE);
  }

  /** The units a raw query asks for, or an empty text; looks before anything is checked. */
  static String units(String raw) {
    return asked(raw, UNITS);
  }

  private static String asked(String raw, String option) {
    if (raw == null) {
      return "";
    }
    String name = option + "=";
    int before = raw.startsWith(name) ? 0 : raw.indexOf("&" + name) + 1;
    if (before == 0 && !raw.startsWith(name)) {
      return "";
    }
    int from = before + name.length();
    int end = raw.indexOf('&', from);
    return end < 0 ? raw.substring(from) : raw.substring(from, end);
  }

  private static String decode(String text) {
    try {
      return URLDecoder.decode(text, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException brokenEscape) {
      throw ProblemException.of(ProblemType.UNREADABLE, ProblemWords.BROKEN_ESCAPE);
    }
  }
}
