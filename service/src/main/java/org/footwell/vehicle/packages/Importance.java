package org.footwell.vehicle.packages;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.Source;

/**
 * How far packages are from the best of a front, by an order of importance. Of n aims the k-th in order weighs
 * the mean of 1/k to 1/n with nothing for those before: rank order centroids. Aims that are not named
 * share what is left evenly.
 */
final class Importance {

  static final Source RANK_ORDER_CENTROID =
      Source.of(
          "F. H. Barron, B. E. Barrett: Decision quality using ranked attribute weights, Management"
              + " Science 42 (1996) 11 (from memory)");

  private final Map<Aim, Double> weights = new EnumMap<>(Aim.class);
  private final Map<Aim, Double> best = new EnumMap<>(Aim.class);
  private final Map<Aim, Double> worst = new EnumMap<>(Aim.class);

  Importance(List<Aim> order, List<PackageFigures> front) {
    Aim[] aims = Aim.values();
    double left = 1;
    for (int k = 0; k < order.size(); k++) {
      weights.put(order.get(k), weight(k + 1, aims.length));
      left -= weight(k + 1, aims.length);
    }
    for (Aim aim : aims) {
      weights.putIfAbsent(aim, left / (aims.length - order.size()));
      best.put(aim, front.stream().mapToDouble(one -> lack(aim, one)).min().orElse(0));
      worst.put(aim, front.stream().mapToDouble(one -> lack(aim, one)).max().orElse(0));
    }
  }

  /** Weight of the k-th of n in order, k from 1. */
  static double weight(int k, int n) {
    double sum = 0;
    for (int i = k; i <= n; i++) {
      sum += 1.0 / i;
    }
    return sum / n;
  }

  /** 0 for the best in everything, 1 for the worst. */
  double distance(PackageFigures figures) {
    double sum = 0;
    for (Aim aim : Aim.values()) {
      double range = worst.get(aim) - best.get(aim);
      sum += range > 0 ? weights.get(aim) * (lack(aim, figures) - best.get(aim)) / range : 0;
    }
    return sum;
  }

  /** More is worse. */
  private static double lack(Aim aim, PackageFigures figures) {
    return switch (aim) {
      case PRICE -> figures.price();
      case MASS -> figures.massG();
      case REACH -> figures.reachHz();
      case LEVEL -> -figures.levelDb();
    };
  }
}
