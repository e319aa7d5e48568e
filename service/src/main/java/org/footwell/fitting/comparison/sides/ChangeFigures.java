package org.footwell.fitting.comparison.sides;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.Function;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.parts.Money;

/** What changes from one part to the other. */
public final class ChangeFigures {

  private final ComparedPosition position;
  private final ComparedSide before;
  private final ComparedSide after;
  private final Run run;

  /** Of two sides; the one before is null where nothing was. */
  public ChangeFigures(
      ComparedPosition position, ComparedSide before, ComparedSide after, Run run) {
    this.position = position;
    this.before = before;
    this.after = after;
    this.run = run;
  }

  /** The figures. */
  public ComparedChange change() {
    Double equalPower = change(ComparedSide::oneWattLevelDbSpl);
    Double largest = levelsComparable() ? change(ComparedSide::largestLevelDbSpl) : null;
    Double octaves =
        reachComparable()
            ? run.apply(SideFormulas.OCTAVES_DOWN, before.lowestUsefulHz(), after.lowestUsefulHz())
            : null;
    return ComparedChangeBuilder.builder()
        .massG(growth(ComparedSide::massG))
        .continuousPowerDb(powerChange(ComparedSide::continuousPowerW))
        .peakPowerDb(powerChange(ComparedSide::peakPowerW))
        .sensitivityAtEqualVoltageDb(change(ComparedSide::twoPointEightThreeVoltLevelDbSpl))
        .sensitivityAtEqualPowerDb(equalPower)
        .powerRatioForFactoryLevel(
            equalPower == null ? null : (Double) run.apply(SideFormulas.POWER_RATIO, equalPower))
        .largestLevelDb(largest)
        .limitsOfFactoryUnknown(factoryUnknown(largest, octaves))
        .lowerReachOctaves(octaves)
        .coneAreaCm2(growth(ComparedSide::coneAreaCm2))
        .displacementCm3(growth(ComparedSide::displacementCm3))
        .price(after.price())
        .pricePerDb(Money.perDb(after.price(), levelIsBound(before, after) ? null : largest))
        .build();
  }

  private Boolean factoryUnknown(Double largest, Double octaves) {
    if (largest == null && octaves == null) {
      return null;
    }
    boolean ofLevel = largest != null && levelIsBound(before, after);
    boolean ofReach = octaves != null && reachIsBound();
    return ofLevel || ofReach;
  }

  /**
   * A level held by fewer limits is too high if anything. So a change is worth saying when the
   * replacement is held by all that hold the factory part, and perhaps more.
   */
  private boolean levelsComparable() {
    return before != null
        && before.largestLevelDbSpl() != null
        && known(after).containsAll(known(before));
  }

  /** Whether limits are known of the replacement only, so that the gain is a bound and has no price. */
  public static boolean levelIsBound(ComparedSide before, ComparedSide after) {
    return before != null && !known(after).equals(known(before));
  }

  private boolean reachComparable() {
    if (before == null) {
      return false;
    }
    ReachLimit basis = SideFigures.reachBasis(position, position.before());
    return basis != null
        && basis == SideFigures.reachBasis(position, position.after())
        && (position.replacement().displacementKnown() || !position.factory().displacementKnown());
  }

  private boolean reachIsBound() {
    return position.replacement().displacementKnown() && !position.factory().displacementKnown();
  }

  /** The limits that are known of a side. */
  public static Set<LevelLimit> known(ComparedSide side) {
    Set<LevelLimit> known = EnumSet.noneOf(LevelLimit.class);
    if (side.thermalLevelDbSpl() != null) {
      known.add(LevelLimit.THERMAL);
    }
    if (side.displacementLevelDbSpl() != null) {
      known.add(LevelLimit.DISPLACEMENT);
    }
    if (side.amplifierLevelDbSpl() != null) {
      known.add(LevelLimit.AMPLIFIER);
    }
    return known;
  }

  /** What is more than before, where nothing was all of it. */
  private Double growth(Function<ComparedSide, Double> quantity) {
    return before == null ? quantity.apply(after) : change(quantity);
  }

  private Double change(Function<ComparedSide, Double> quantity) {
    return ifBoth(SideFormulas.CHANGE, quantity);
  }

  private Double powerChange(Function<ComparedSide, Double> power) {
    return ifBoth(SideFormulas.POWER_CHANGE, power);
  }

  /** A formula of after and before, or null when one is not known. */
  private Double ifBoth(Formula.Of2 formula, Function<ComparedSide, Double> quantity) {
    Double from = before == null ? null : quantity.apply(before);
    Double to = quantity.apply(after);
    return from == null || to == null ? null : (Double) run.apply(formula, to, from);
  }
}
