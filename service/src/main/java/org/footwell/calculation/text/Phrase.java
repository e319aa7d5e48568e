package org.footwell.calculation.text;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Words within a sentence, with arguments of their own. */
public final class Phrase extends Arguments<Phrase> {

  private static final Phrase NOTHING = new Phrase(null);

  private final Words words;

  private Phrase(Words words) {
    this.words = words;
  }

  public static Phrase of(Words words) {
    return new Phrase(words);
  }

  /** No words: the sentence closes up where they would stand. */
  public static Phrase nothing() {
    return NOTHING;
  }

  /** One of several: "a, b, or c". */
  public static Phrase anyOf(List<Phrase> all) {
    int last = all.size() - 1;
    if (last == 0) {
      return all.get(0);
    }
    return of(CoreWords.OR).with("first", all.subList(0, last)).with("last", all.get(last));
  }

  @Override
  protected Phrase self() {
    return this;
  }

  /** As someone reads it. */
  public String said(Reader reader) {
    if (words == null) {
      return "";
    }
    assert fill(words, reader);
    return sentence(words, reader);
  }

  /** For a program: the code of the words, and what fills them. */
  Map<String, Object> byCode() {
    Map<String, Object> coded = new LinkedHashMap<>();
    if (words != null) {
      coded.put("words", words.code());
    }
    Map<String, Object> filling = coded();
    if (filling != null) {
      coded.put("arguments", filling);
    }
    return coded;
  }

  /** As it reads in English. */
  @Override
  public String toString() {
    return said(Reader.ANYONE);
  }
}
