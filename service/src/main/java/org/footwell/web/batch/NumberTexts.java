package org.footwell.web.batch;

import com.fasterxml.jackson.core.io.NumberOutput;
import org.footwell.web.request.Json;

/**
 * Numbers as texts, to all their digits. In a table many stand again and again, and finding the
 * digits is the dearest part of writing them: each keeps its text until another takes its place.
 * Used by one thread at a time.
 */
final class NumberTexts {

  private static final int PLACE_BITS = 9;

  /** The golden ratio spreads neighbouring numbers over all places. */
  private static final long SPREAD = 0x9E37_79B9_7F4A_7C15L;

  private final long[] numbers = new long[1 << PLACE_BITS];
  private final String[] texts = new String[1 << PLACE_BITS];

  /** The number as it stands in JSON. */
  String of(double number) {
    long bits = Double.doubleToRawLongBits(number);
    int place = (int) ((bits * SPREAD) >>> (Long.SIZE - PLACE_BITS));
    if (numbers[place] != bits || texts[place] == null) {
      numbers[place] = bits;
      texts[place] = NumberOutput.toString(number, Json.FAST_DOUBLES);
    }
    return texts[place];
  }
}
