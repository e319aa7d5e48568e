package org.footwell.web.batch;

import org.footwell.web.request.Digits;

/**
 * Numbers as texts. In a table many stand again and again, and finding all digits is the dearest part
 * of writing them: each keeps its text until another takes its place. A few digits are found faster
 * than a text that was kept. Used by one thread at a time.
 */
final class NumberTexts {

  private static final int PLACE_BITS = 9;

  /** The golden ratio spreads neighbouring numbers over all places. */
  private static final long SPREAD = 0x9E37_79B9_7F4A_7C15L;

  private final Digits digits;
  private final char[] few = new char[Digits.LONGEST];
  private final long[] numbers = new long[1 << PLACE_BITS];
  private final String[] texts = new String[1 << PLACE_BITS];

  NumberTexts(Digits digits) {
    this.digits = digits;
  }

  /** Appends the number as it stands in JSON. */
  void append(double number, StringBuilder to) {
    if (digits.all()) {
      to.append(inFull(number));
    } else {
      to.append(few, 0, digits.put(number, few, 0));
    }
  }

  private String inFull(double number) {
    long bits = Double.doubleToRawLongBits(number);
    int place = (int) ((bits * SPREAD) >>> (Long.SIZE - PLACE_BITS));
    if (numbers[place] != bits || texts[place] == null) {
      numbers[place] = bits;
      texts[place] = Digits.inFull(number);
    }
    return texts[place];
  }
}
