package org.footwell.calculation;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.List;

/**
 * A long row of numbers, such as the samples of a recording: one value of a request, held in single
 * precision without a box for each number. In JSON it is a plain array.
 */
public final class Series {

  private final float[] values;

  private Series(float[] values) {
    this.values = values;
  }

  /** Wraps an array, which must not be changed afterwards. */
  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public static Series of(float... values) {
    return new Series(values);
  }

  /** The series of a list of numbers, or null if something else is among them. */
  static Series ofNumbers(List<?> numbers) {
    float[] values = new float[numbers.size()];
    int i = 0;
    for (Object entry : numbers) {
      if (!(entry instanceof Number number)) {
        return null;
      }
      values[i++] = number.floatValue();
    }
    return new Series(values);
  }

  public int size() {
    return values.length;
  }

  public float at(int index) {
    return values[index];
  }

  /** A copy in double precision. */
  public double[] toDoubles() {
    double[] doubles = new double[values.length];
    for (int i = 0; i < doubles.length; i++) {
      doubles[i] = values[i];
    }
    return doubles;
  }

  @JsonValue
  float[] values() {
    return values;
  }

  /** What a fault shows of it. */
  @Override
  public String toString() {
    return values.length + " numbers";
  }
}
