package org.footwell.web.upload;

import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.footwell.calculation.Series;
import org.footwell.calculation.text.Phrase;
import org.footwell.recording.RecordingRules;
import org.footwell.web.request.ProblemException;
import org.footwell.web.request.ProblemType;
import org.footwell.web.request.ProblemWords;
import org.footwell.web.request.UntypedJson;

/**
 * Reads JSON as it comes. Long rows of numbers are held without a box each, so that recordings cost four
 * bytes a sample; everything else is limited in number.
 */
final class SamplesInJson extends UntypedJson {

  /** Longer rows of numbers are kept as a series. */
  private static final int SHORT_ROW = 4096;

  private static final int MOST_VALUES = 200_000;
  private static final int COUNTED_VALUES = 1000;
  private static final int MOST_CHARACTERS = 1_000_000;

  private final UploadMemory.Share share;
  private long numbers;
  private int values;
  private int characters;

  private SamplesInJson(InputStream in, UploadMemory.Share share) throws IOException {
    super(in);
    this.share = share;
  }

  /**
   * Reads one value and nothing after it; null for an empty body.
   *
   * @param share of memory that the values take
   * @throws com.fasterxml.jackson.core.JsonProcessingException if it is not well-formed
   * @throws ProblemException if it holds too much
   */
  static Object read(InputStream in, UploadMemory.Share share) throws IOException {
    try (SamplesInJson json = new SamplesInJson(in, share)) {
      return json.begins() ? json.whole() : null;
    }
  }

  @Override
  protected Object value() throws IOException {
    if (++values > MOST_VALUES) {
      throw tooMuch(Phrase.of(ProblemWords.VALUES).with("most", MOST_VALUES));
    }
    if (values % COUNTED_VALUES == 0) {
      share.hold((long) COUNTED_VALUES * UploadMemory.BYTES_A_VALUE);
    }
    return super.value();
  }

  @Override
  protected String text(String text) {
    characters += text.length();
    if (characters > MOST_CHARACTERS) {
      throw tooMuch(Phrase.of(ProblemWords.CHARACTERS).with("most", MOST_CHARACTERS));
    }
    return text;
  }

  private static ProblemException tooMuch(Phrase what) {
    return ProblemException.of(
        ProblemType.TOO_LARGE, Phrase.of(ProblemWords.HOLDS_MORE).with("what", what));
  }

  @Override
  protected Object array() throws IOException {
    List<Object> entries = new ArrayList<>();
    boolean onlyNumbers = true;
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      onlyNumbers &= parser.currentToken().isNumeric();
      if (onlyNumbers && entries.size() == SHORT_ROW) {
        values -= SHORT_ROW;
        return row(entries);
      }
      entries.add(value());
    }
    return entries;
  }

  /** The rest of a row of numbers; if something else is among them, that alone in a list. */
  private Object row(List<Object> start) throws IOException {
    float[] row = new float[2 * SHORT_ROW];
    int size = 0;
    for (Object number : start) {
      row[size++] = ((Number) number).floatValue();
    }
    Object strange = null;
    for (JsonToken t = parser.currentToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
      if (t.isNumeric()) {
        if (size == row.length) {
          share.hold((long) Float.BYTES * (size / 2));
          row = Arrays.copyOf(row, size + size / 2);
        }
        row[size++] = parser.getFloatValue();
        if (++numbers > RecordingRules.MOST_SAMPLES_IN_ALL) {
          throw tooMuch(
              Phrase.of(ProblemWords.SAMPLES).with("most", RecordingRules.MOST_SAMPLES_IN_ALL));
        }
        if (size > RecordingRules.MOST_SAMPLES) {
          throw tooMuch(
              Phrase.of(ProblemWords.SAMPLES_IN_ONE).with("count", RecordingRules.MOST_SAMPLES));
        }
      } else {
        Object other = value();
        strange = other == null ? "null" : other;
      }
    }
    return strange == null ? Series.of(Arrays.copyOf(row, size)) : List.of(strange);
  }
}
