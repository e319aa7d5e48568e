package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What the units from one on can add at best and at worst, whatever drives them.
 *
 * @param best least price and mass, lowest reach, highest level
 * @param worstReachHz the highest of the lowest frequencies it may have: the package plays at least so low
 */
record Rest(PackageFigures best, double worstReachHz) {

  /** Behind the last unit. */
  static final Rest NOTHING = new Rest(PackageFigures.NONE, Double.POSITIVE_INFINITY);

  /** For each unit that from it on, and nothing behind the last. */
  static List<Rest> of(List<List<Map<Double, List<Choice>>>> units) {
    List<Rest> rests = new ArrayList<>(List.of(NOTHING));
    for (int u = units.size() - 1; u >= 0; u--) {
      long price = Long.MAX_VALUE / 1024;
      double mass = Double.POSITIVE_INFINITY;
      double reach = Double.POSITIVE_INFINITY;
      double level = Double.NEGATIVE_INFINITY;
      double worst = 0;
      for (Map<Double, List<Choice>> groups : units.get(u)) {
        for (List<Choice> group : groups.values()) {
          for (Choice choice : group) {
            price = Math.min(price, choice.figures().price());
            mass = Math.min(mass, choice.figures().massG());
            reach = Math.min(reach, choice.figures().reachHz());
            level = Math.max(level, choice.figures().levelDb());
            worst = Math.max(worst, choice.figures().reachHz());
          }
        }
      }
      Rest behind = rests.get(0);
      rests.add(
          0,
          new Rest(
              new PackageFigures(price, mass, reach, level).and(behind.best()),
              Math.min(worst, behind.worstReachHz())));
    }
    return rests;
  }

  /**
   * What of the figures of a part of a package still decides: it plays as low as the rest at least, and no
   * louder than the rest can.
   */
  PackageFigures deciding(PackageFigures figures) {
    return new PackageFigures(
        figures.price(),
        figures.massG(),
        Math.min(figures.reachHz(), worstReachHz),
        Math.min(figures.levelDb(), best.levelDb()));
  }
}
