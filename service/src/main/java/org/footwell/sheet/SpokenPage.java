package org.footwell.sheet;

import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Texts;
import org.footwell.calculation.text.Words;

/** What a template shows, in the language of a reader. */
public abstract class SpokenPage {

  private final Reader reader;
  private final FigureWriter figures;

  protected SpokenPage(Reader reader) {
    this.reader = reader;
    figures = new FigureWriter(reader);
  }

  /** By its BCP 47 tag. */
  public final String language() {
    return reader.language().toLanguageTag();
  }

  /** Words of ours. */
  public final String say(Words words) {
    return Texts.of(words, reader.language());
  }

  protected final String say(Phrase phrase) {
    return phrase.said(reader.language());
  }

  protected final Reader reader() {
    return reader;
  }

  protected final FigureWriter figures() {
    return figures;
  }
}
