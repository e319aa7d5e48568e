package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.footwell.vehicle.packages.PackageOptionsResult.Relaxed;

/**
 * Which wishes exclude each other, told from all packages that none beats without any wish: what meets some
 * of the wishes is beaten only by what meets them too.
 */
record Conflicts(List<PackageFigures> unlimited, Limits limits, double togetherDb) {

  /** The smallest sets of wishes that cannot be met together, single ones first. */
  List<Relaxed> smallest() {
    List<Set<Aim>> sets = new ArrayList<>(List.of(EnumSet.noneOf(Aim.class)));
    for (Aim aim : Aim.values()) {
      for (Set<Aim> smaller : List.copyOf(sets)) {
        Set<Aim> larger = EnumSet.copyOf(smaller);
        larger.add(aim);
        sets.add(larger);
      }
    }
    sets.sort(Comparator.comparingInt(Set::size));
    List<Set<Aim>> found = new ArrayList<>();
    List<Relaxed> relaxed = new ArrayList<>();
    for (Set<Aim> set : sets) {
      List<Aim> wishes = List.copyOf(set);
      if (wishes.stream().allMatch(limits::limits)
          && found.stream().noneMatch(set::containsAll)
          && meeting(wishes).isEmpty()) {
        found.add(set);
        relaxed.add(
            new Relaxed(
                wishes, wishes.stream().map(aim -> best(aim, without(wishes, aim))).toList()));
      }
    }
    return relaxed;
  }

  private static List<Aim> without(List<Aim> wishes, Aim one) {
    return wishes.stream().filter(aim -> aim != one).toList();
  }

  private List<PackageFigures> meeting(List<Aim> wishes) {
    return unlimited.stream()
        .filter(figures -> wishes.stream().allMatch(aim -> limits.allow(figures, aim)))
        .toList();
  }

  /** The best there is in one thing where some wishes are met. */
  private double best(Aim aim, List<Aim> met) {
    List<PackageFigures> those = meeting(met);
    return switch (aim) {
      case PRICE ->
          Prices.of(those.stream().mapToLong(PackageFigures::price).min().orElseThrow())
              .doubleValue();
      case MASS -> those.stream().mapToDouble(PackageFigures::massG).min().orElseThrow();
      case REACH -> those.stream().mapToDouble(PackageFigures::reachHz).min().orElseThrow();
      case LEVEL ->
          togetherDb + those.stream().mapToDouble(PackageFigures::levelDb).max().orElseThrow();
    };
  }
}
