package org.footwell.analysis.tolerance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;

class SamplePointsTest {

  @Test
  void theSameSeedDrawsTheSamePointsAndAnotherOneOthers() {
    double[][] points = SamplePoints.of(300, 20, 7);
    assertTrue(Arrays.deepEquals(points, SamplePoints.of(300, 20, 7)));
    double[][] others = SamplePoints.of(300, 20, 8);
    IntStream.range(0, 20).forEach(i -> assertFalse(Arrays.equals(points[i], others[i]), "" + i));
  }

  @Test
  void noCoordinateIsZeroOrOneWhichANormalDistributionCannotTake() {
    for (double[] coordinate : SamplePoints.of(2000, 20, 3)) {
      assertTrue(Arrays.stream(coordinate).allMatch(u -> u > 0 && u < 1));
    }
  }

  @Test
  void everyCoordinateHasOnePointInEachOfAPowerOfTwoOfCells() {
    int cells = 256;
    for (double[] coordinate : SamplePoints.of(cells, 40, 5)) {
      int[] taken = Arrays.stream(coordinate).mapToInt(u -> (int) (u * cells)).sorted().toArray();
      assertArrayEquals(IntStream.range(0, cells).toArray(), taken);
    }
  }

  /** The sequence as it comes has pairs at 0.2 among the first 300 coordinates and 0.9 among 1,000. */
  @Test
  void noTwoOfManyCoordinatesLookRelated() {
    int points = 1000;
    double[][] all = SamplePoints.of(points, 400, 11);
    PearsonsCorrelation correlation = new PearsonsCorrelation();
    double largest = 0;
    int beyond = 0;
    int pairs = 0;
    for (int i = 0; i < all.length; i++) {
      for (int k = 0; k < i; k++) {
        double r = Math.abs(correlation.correlation(all[i], all[k]));
        largest = Math.max(largest, r);
        beyond += r > Estimate.NORMAL_95 / Math.sqrt(points) ? 1 : 0;
        pairs++;
      }
    }
    // Of 79,800 independent pairs the largest is expected at 4.4 standard errors of 0.0316.
    assertTrue(largest < 0.17, "largest " + largest);
    assertEquals(0.05, (double) beyond / pairs, 0.005);
  }
}
