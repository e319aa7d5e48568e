package org.footwell.fitting.comparison;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.Predicate;
import org.footwell.calculation.Run;
import org.footwell.fitting.comparison.DriverComparisonResult.AdditionLine;
import org.footwell.fitting.comparison.DriverComparisonResult.GroupLine;
import org.footwell.fitting.comparison.DriverComparisonResult.PositionLine;
import org.footwell.fitting.comparison.DriverComparisonResult.VehicleTotals;
import org.footwell.fitting.comparison.sides.ChangeFigures;
import org.footwell.fitting.comparison.sides.ComparedPosition.Band;
import org.footwell.fitting.comparison.sides.ComparedPosition.MountedAt;
import org.footwell.fitting.comparison.sides.ComparedPosition.Zone;
import org.footwell.fitting.comparison.sides.ComparedSide;
import org.footwell.fitting.comparison.sides.SideFormulas;
import org.footwell.parts.Money;

/** Positions taken together: by group, and for the whole vehicle. */
final class ComparisonTotals {

  private record Key(Zone zone, Band band) {}

  private final List<PositionLine> positions;
  private final List<AdditionLine> additions;
  private final Run run;

  ComparisonTotals(List<PositionLine> positions, List<AdditionLine> additions, Run run) {
    this.positions = positions;
    this.additions = additions;
    this.run = run;
  }

  List<GroupLine> groups() {
    Map<Key, List<PositionLine>> members = new LinkedHashMap<>();
    for (PositionLine line : positions) {
      members
          .computeIfAbsent(new Key(line.zone(), line.band()), key -> new ArrayList<>())
          .add(line);
    }
    List<GroupLine> groups = new ArrayList<>();
    members.forEach((key, lines) -> groups.add(group(key, lines)));
    return groups;
  }

  private GroupLine group(Key key, List<PositionLine> lines) {
    List<PositionLine> old = lines.stream().filter(line -> line.before() != null).toList();
    Double before = old.isEmpty() ? null : together(old, PositionLine::before);
    Double after = together(lines, PositionLine::after);
    boolean comparable = old.stream().allMatch(line -> line.change().largestLevelDb() != null);
    Double change =
        comparable && before != null && after != null
            ? (Double) run.apply(SideFormulas.CHANGE, after, before)
            : null;
    BigDecimal price = Money.sum(prices(lines));
    return DriverComparisonResultGroupLineBuilder.builder()
        .zone(key.zone())
        .band(key.band())
        .coneAreaBeforeCm2(sum(lines, PositionLine::before, ComparedSide::coneAreaCm2))
        .coneAreaAfterCm2(sum(lines, PositionLine::after, ComparedSide::coneAreaCm2))
        .largestLevelBeforeDbSpl(before)
        .largestLevelAfterDbSpl(after)
        .levelChangeDb(change)
        .price(price)
        .pricePerDb(Money.perDb(price, exact(old) ? change : null))
        .build();
  }

  /** Whether no gain of some old positions is only a bound. */
  private static boolean exact(List<PositionLine> old) {
    return old.stream().noneMatch(line -> ChangeFigures.levelIsBound(line.before(), line.after()));
  }

  /** All drivers of some positions at their largest, dB SPL; null when one is not known. */
  private Double together(List<PositionLine> lines, Function<PositionLine, ComparedSide> which) {
    Double sum = null;
    for (PositionLine line : lines) {
      Double one = which.apply(line).largestLevelDbSpl();
      if (one == null) {
        return null;
      }
      double all =
          line.driverCount() == 1
              ? one
              : run.apply(SideFormulas.OF_SEVERAL, one, line.driverCount());
      sum = sum == null ? all : run.apply(SideFormulas.TOGETHER, sum, all);
    }
    return sum;
  }

  VehicleTotals vehicle(List<GroupLine> groups) {
    List<BigDecimal> prices = new ArrayList<>(prices(positions));
    additions.forEach(addition -> prices.add(addition.price()));
    BigDecimal price = Money.sum(prices);
    Double level = leastChange(groups);
    return DriverComparisonResultVehicleTotalsBuilder.builder()
        .massChangeG(massChange(place -> true))
        .doorMassChangeG(massChange(place -> place == MountedAt.DOOR))
        .price(price)
        .levelChangeDb(level)
        .pricePerDb(pricePerDb(price, level))
        .continuousPowerDb(powerChange(ComparedSide::continuousPowerW))
        .peakPowerDb(powerChange(ComparedSide::peakPowerW))
        .coneAreaBeforeCm2(sum(positions, PositionLine::before, ComparedSide::coneAreaCm2))
        .coneAreaAfterCm2(sum(positions, PositionLine::after, ComparedSide::coneAreaCm2))
        .displacementBeforeCm3(sum(positions, PositionLine::before, ComparedSide::displacementCm3))
        .displacementAfterCm3(sum(positions, PositionLine::after, ComparedSide::displacementCm3))
        .lowestUsefulBeforeHz(lowest(PositionLine::before))
        .lowestUsefulAfterHz(lowest(PositionLine::after))
        .build();
  }

  /** What is new costs, but adds nothing to the gain of what was there: such a price misleads. */
  private BigDecimal pricePerDb(BigDecimal price, Double level) {
    List<PositionLine> old = positions.stream().filter(line -> line.before() != null).toList();
    BigDecimal perDb = Money.perDb(price, exact(old) ? level : null);
    if (perDb == null || old.size() == positions.size()) {
      return perDb;
    }
    run.find(ComparisonFinding.PRICE_PER_DB_LEFT_OUT)
        .at("/positions")
        .own(
            "what",
            positions.stream()
                .filter(line -> line.before() == null)
                .map(PositionLine::name)
                .toList());
    return null;
  }

  /** However the groups are balanced, the whole gains no less than the one that gains least. */
  private Double leastChange(List<GroupLine> groups) {
    List<GroupLine> old = groups.stream().filter(this::wasThere).toList();
    boolean known = old.stream().allMatch(group -> group.levelChangeDb() != null);
    return old.isEmpty() || !known
        ? null
        : old.stream().map(GroupLine::levelChangeDb).min(Double::compare).orElseThrow();
  }

  private boolean wasThere(GroupLine group) {
    return positions.stream()
        .filter(line -> line.zone() == group.zone() && line.band() == group.band())
        .anyMatch(line -> line.before() != null);
  }

  private Double massChange(Predicate<MountedAt> counts) {
    List<Double> masses = new ArrayList<>();
    for (PositionLine line : positions) {
      if (counts.test(line.at())) {
        masses.add(line.change().massG());
      }
    }
    for (AdditionLine addition : additions) {
      if (counts.test(addition.at())) {
        masses.add(addition.massG());
      }
    }
    return sum(masses);
  }

  private Double powerChange(Function<ComparedSide, Double> power) {
    Double before = sum(positions, PositionLine::before, power);
    Double after = sum(positions, PositionLine::after, power);
    return before == null || after == null || before == 0
        ? null
        : (Double) run.apply(SideFormulas.POWER_CHANGE, after, before);
  }

  private Double lowest(Function<PositionLine, ComparedSide> which) {
    return positions.stream()
        .map(which)
        .filter(Objects::nonNull)
        .map(ComparedSide::lowestUsefulHz)
        .filter(Objects::nonNull)
        .min(Double::compare)
        .orElse(null);
  }

  private static List<BigDecimal> prices(List<PositionLine> lines) {
    List<BigDecimal> prices = new ArrayList<>();
    lines.forEach(line -> prices.add(line.after().price()));
    return prices;
  }

  /** A sum over sides; where nothing was, it is 0, and where something is not known, null. */
  private static Double sum(
      List<PositionLine> lines,
      Function<PositionLine, ComparedSide> which,
      Function<ComparedSide, Double> quantity) {
    List<Double> all = new ArrayList<>();
    for (PositionLine line : lines) {
      ComparedSide side = which.apply(line);
      all.add(side == null ? Double.valueOf(0) : quantity.apply(side));
    }
    return sum(all);
  }

  private static Double sum(Collection<Double> all) {
    return all.stream().anyMatch(Objects::isNull)
        ? null
        : (Double) all.stream().mapToDouble(Double::doubleValue).sum();
  }
}
