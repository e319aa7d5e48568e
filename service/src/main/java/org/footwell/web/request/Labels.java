package org.footwell.web.request;

import java.util.Locale;
import java.util.Optional;
import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Texts;

/**
 * What names of the contract are called where people read them. In English that follows from the
 * name. Another language has words for each: under {@code label.} and the name, as the page to work
 * on a plan has them, or under {@code label.} and the name without its unit for all that are called
 * so.
 */
final class Labels {

  private static final String HOME = Labels.class.getPackageName();
  private static final String PAGE_OF_A_PLAN = "org.footwell.web.pages";

  private final Locale language;

  Labels(Locale language) {
    this.language = language;
  }

  /** A quantity, without its unit. */
  String of(String name) {
    String bare = bare(name);
    String alike = said(HOME, "label." + bare, bare.replace('_', ' '));
    return said(HOME, "label." + name, said(PAGE_OF_A_PLAN, "field." + name, alike));
  }

  /** One of the values that a field can only have. */
  String value(String name) {
    return said(PAGE_OF_A_PLAN, "value." + name, said(HOME, "value." + name, name));
  }

  /** What a calculation is about. */
  String title(String calculation, String english) {
    return said(HOME, "title." + calculation, english);
  }

  /** The name of a quantity without its unit. */
  static String bare(String name) {
    return measure(name)
        .map(unit -> name.substring(0, name.length() - unit.ending().length()))
        .orElse(name);
  }

  /** The unit of a quantity; of one called like its unit, such as {@code l}, no name would be left. */
  static Optional<Measure> measure(String name) {
    return Measure.ofPath(name).filter(unit -> name.length() > unit.ending().length());
  }

  private String said(String home, String key, String otherwise) {
    return Texts.translated(home, key, otherwise, language);
  }
}
