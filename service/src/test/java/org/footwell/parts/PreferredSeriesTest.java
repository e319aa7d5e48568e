package org.footwell.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PreferredSeriesTest {

  @ParameterizedTest
  @CsvSource({"E12, 39.789, 39", "E12, 9.6, 10", "E6, 1.2, 1.0", "E24, 1.2e-300, 1.2e-300"})
  void theNearestIsThatOfTheSmallestRatio(PreferredSeries series, double value, double nearest) {
    assertEquals(nearest, series.nearest(value));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.MIN_VALUE, 1e-320, 1e308})
  void theSmallestAndLargestHaveOneNearThem(double value) {
    double nearest = PreferredSeries.E24.nearest(value);
    assertTrue(nearest / value > 0.9 && nearest / value < 1.11, nearest + " for " + value);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNoValueAboveZeroHasNoneAndIsToldAtOnce(double value) {
    assertEquals(Double.NaN, PreferredSeries.E12.nearest(value));
  }
}
