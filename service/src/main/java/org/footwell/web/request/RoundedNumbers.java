package org.footwell.web.request;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.JsonGeneratorDelegate;
import java.io.IOException;
import org.footwell.calculation.AllDigits;

/**
 * Writes numbers to so many digits. Those that are copied into a device keep all of theirs, money its
 * cents, and whole numbers stay.
 */
final class RoundedNumbers extends JsonGeneratorDelegate {

  private final Digits digits;
  private final char[] text = new char[Digits.LONGEST];

  RoundedNumbers(JsonGenerator to, Digits digits) {
    super(to, false);
    this.digits = digits;
  }

  @Override
  public void writeNumber(double number) throws IOException {
    if (isOfDevice(delegate.currentValue())) {
      delegate.writeNumber(number);
    } else {
      delegate.writeNumber(text, 0, digits.put(number, text, 0));
    }
  }

  @Override
  public void writeArray(double[] numbers, int offset, int length) throws IOException {
    writeStartArray(numbers, length);
    for (int i = offset; i < offset + length; i++) {
      writeNumber(numbers[i]);
    }
    writeEndArray();
  }

  private static boolean isOfDevice(Object record) {
    return record != null && record.getClass().isAnnotationPresent(AllDigits.class);
  }
}
