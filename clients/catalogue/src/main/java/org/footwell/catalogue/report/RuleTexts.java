package org.footwell.catalogue.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import java.util.Set;

/** What the code of a finding means, without the figures of a row. */
public final class RuleTexts {

  private static final Properties TEXTS = load();

  private RuleTexts() {}

  private static Properties load() {
    Properties texts = new Properties();
    try (InputStream in = RuleTexts.class.getResourceAsStream("rules.properties")) {
      texts.load(in);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return texts;
  }

  /** The text of a code; of one that is newer than this program its words. */
  public static String of(String code) {
    return TEXTS.getProperty(code, code.replace('-', ' '));
  }

  static Set<String> codes() {
    return TEXTS.stringPropertyNames();
  }
}
