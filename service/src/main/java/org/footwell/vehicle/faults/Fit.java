package org.footwell.vehicle.faults;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How far predicted figures are from measured ones, or from each other; all scaled by their errors. */
final class Fit {

  private final List<VehicleFigure> figures;

  Fit(List<VehicleFigure> figures) {
    this.figures = figures;
  }

  /**
   * Differences, those of a group without their mean; NaN where one of both could not be measured.
   */
  double[] differences(double[] one, double[] other) {
    double[] off = new double[one.length];
    Map<Integer, double[]> sums = new HashMap<>();
    for (int i = 0; i < off.length; i++) {
      off[i] = one[i] - other[i];
      if (figures.get(i).relative() && !Double.isNaN(off[i])) {
        double[] sum = sums.computeIfAbsent(figures.get(i).group(), any -> new double[2]);
        sum[0] += off[i];
        sum[1]++;
      }
    }
    for (int i = 0; i < off.length; i++) {
      if (figures.get(i).relative() && !Double.isNaN(off[i])) {
        double[] sum = sums.get(figures.get(i).group());
        off[i] -= sum[0] / sum[1];
      }
    }
    return off;
  }

  /** Sum of their squares; infinite where one has a figure that the other cannot have. */
  double square(double[] one, double[] other) {
    double sum = 0;
    double[] off = differences(one, other);
    for (int i = 0; i < off.length; i++) {
      if (Double.isNaN(one[i]) != Double.isNaN(other[i])) {
        return Double.POSITIVE_INFINITY;
      }
      sum += Double.isNaN(off[i]) ? 0 : off[i] * off[i];
    }
    return sum;
  }

  /** How far apart two vehicles are by them, in standard deviations. */
  double distance(double[] one, double[] other) {
    return Math.sqrt(square(one, other));
  }

  /** Mean values that are taken off. */
  int groups() {
    return (int)
        figures.stream()
            .filter(VehicleFigure::relative)
            .mapToInt(VehicleFigure::group)
            .distinct()
            .count();
  }
}
