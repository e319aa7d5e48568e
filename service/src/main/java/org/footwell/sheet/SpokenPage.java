package org.footwell.sheet;

import org.footwell.calculation.text.Measure;
import org.footwell.calculation.text.Phrase;
import org.footwell.calculation.text.Reader;
import org.footwell.calculation.text.Texts;
import org.footwell.calculation.text.Words;

/** What a template shows, in the language of a reader. */
public abstract class SpokenPage {

  /** Less is not shown. */
  private static final double NO_DIFFERENCE_OCTAVES = 0.05;

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
    return phrase.said(reader);
  }

  /** How much lower something plays, in words and never with a sign. */
  protected final WrittenFigure lower(Double octaves) {
    if (octaves == null) {
      return figures.of(Measure.OCTAVES, null);
    }
    if (Math.abs(octaves) < NO_DIFFERENCE_OCTAVES) {
      return new WrittenFigure(octaves, say(ReachWords.AS_LOW));
    }
    ReachWords words = octaves > 0 ? ReachWords.LOWER : ReachWords.HIGHER;
    String size = figures.bare(Measure.OCTAVES, Math.abs(octaves));
    return new WrittenFigure(octaves, say(Phrase.of(words).own("value", size)));
  }

  protected final Reader reader() {
    return reader;
  }

  protected final FigureWriter figures() {
    return figures;
  }
}
