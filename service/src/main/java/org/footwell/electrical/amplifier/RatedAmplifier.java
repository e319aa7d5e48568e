package org.footwell.electrical.amplifier;

import static org.footwell.electrical.amplifier.RatingsFit.Look.INCONSISTENT;
import static org.footwell.electrical.amplifier.RatingsFit.Look.POWER_LIMITED;

import java.util.List;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.electrical.amplifier.RatingsFit.Point;
import org.footwell.parts.Ratings;
import org.footwell.parts.Ratings.Basis;
import org.footwell.physics.Electricity;

/**
 * An amplifier known by its ratings alone, as its load sees it.
 *
 * @param fit source behind the clean powers
 * @param basis what kind of power was stated
 * @param statedSupplyV supply at which the powers hold, V
 * @param regulated whether they hold at any supply
 * @param singleSupplyBridge whether no clean peak can pass the supply
 */
public record RatedAmplifier(
    RatingsFit fit,
    Basis basis,
    double statedSupplyV,
    boolean regulated,
    boolean singleSupplyBridge)
    implements SineSource {

  /**
   * Clean power in W of a rating P whose kind is k times the clean power, for n times its load: two
   * channels bridged give n = 2, half a bridged pair n = 1/2.
   */
  static final Formula.Of3 CLEAN_POWER =
      Formula.of("clean_rating_w", "n·P/k", "W", Source.COMMON_PRACTICE)
          .with("n", "P", "k", (n, p, k) -> n * p / k);

  /** How far from load S to load T, in logarithms, a load R between them is: 0 to 1. */
  private static final Formula.Of3 SHARE =
      Formula.of("share_of_way", "lg(R/S)/lg(T/S)", "", Source.COMMON_PRACTICE)
          .with("R", "S", "T", (r, s, t) -> Math.log(r / s) / Math.log(t / s));

  /** Power in W a share of the way from P to Q: a straight line in logarithms. */
  private static final Formula.Of3 INTERPOLATED =
      Formula.of("power_w", "P·(Q/P)^s", "W", Source.COMMON_PRACTICE)
          .with("P", "Q", "s", (p, q, s) -> p * Math.pow(q / p, s));

  /** Largest sine power in W from a bridge on U volts into R ohms: its peak is the supply. */
  static final Formula.Of2 BRIDGE_LIMIT =
      Formula.of("bridge_limit_w", "U²/(2·R)", "W", RatingsFit.OHM)
          .with("U", "R", (u, r) -> u * u / (2 * r));

  /** Loads of this ratio or closer are one and the same. */
  private static final double SAME_LOAD = 1 + 1e-9;

  /** The amplifier as connected. */
  public static RatedAmplifier of(Ratings ratings, boolean bridged, boolean regulated) {
    return new RatedAmplifier(
        RatingsFit.of(connected(ratings, bridged)),
        ratings.basis(),
        ratings.supplyV(),
        regulated,
        ratings.singleSupplyBridge());
  }

  /** Clean powers and loads as if they had been stated for the connection that is used. */
  static List<Point> connected(Ratings ratings, boolean bridged) {
    double n = channels(ratings, bridged);
    double k = ratings.basis().timesClean();
    return ratings.points().stream()
        .map(p -> new Point(n * p.loadOhm(), CLEAN_POWER.at(n, p.powerW(), k)))
        .toList();
  }

  /** How many times the rated arrangement is used: each half of a bridge sees half the load. */
  static double channels(Ratings ratings, boolean bridged) {
    return bridged == ratings.bridged() ? 1 : bridged ? 2 : 0.5;
  }

  @Override
  public Delivery into(double loadOhm, double supplyV) {
    Delivery stated = statedInto(loadOhm);
    double ratio = regulated ? 1 : supplyV / statedSupplyV;
    Delivery delivery =
        new Delivery(
                stated.powerW(),
                stated.lowW() * basis.timesClean() / basis.timesCleanMost(),
                stated.highW() * basis.timesClean() / basis.timesCleanLeast())
            .times(ratio * ratio);
    return singleSupplyBridge ? delivery.atMost(BRIDGE_LIMIT.at(supplyV, loadOhm)) : delivery;
  }

  /** Whether a load lies below a lowest one by more than rounding. */
  static boolean below(double loadOhm, double lowestOhm) {
    return loadOhm * SAME_LOAD < lowestOhm;
  }

  /** Whether a load lies below the lowest or above the highest rated one. */
  boolean outside(double loadOhm) {
    return below(loadOhm, fit.lowest().loadOhm()) || loadOhm > fit.highest().loadOhm() * SAME_LOAD;
  }

  /** Whether the fitted source, not the ratings next to it, gives the power into this load. */
  boolean modelled(double loadOhm) {
    boolean outside = outside(loadOhm);
    return fit.hasSource()
        && fit.character() != POWER_LIMITED
        && (outside || fit.character() != INCONSISTENT);
  }

  private Delivery statedInto(double loadOhm) {
    if (!outside(loadOhm)) {
      return modelled(loadOhm) ? Delivery.exactly(model(loadOhm)) : interpolated(loadOhm);
    }
    boolean below = loadOhm < fit.lowest().loadOhm();
    Point nearest = below ? fit.lowest() : fit.highest();
    // What surely holds: into less load the same current, into more load the same voltage.
    double held =
        below
            ? Electricity.POWER_OF_CURRENT.at(nearest.currentA(), loadOhm)
            : Electricity.POWER.at(nearest.voltageV(), loadOhm);
    return modelled(loadOhm)
        ? Delivery.between(model(loadOhm), model(loadOhm), held)
        : Delivery.between(held, held, nearest.powerW());
  }

  private double model(double loadOhm) {
    return Electricity.POWER.at(fit.voltageV(loadOhm), loadOhm);
  }

  /** Between the rated loads next to this one; voltage and current stay between theirs. */
  private Delivery interpolated(double loadOhm) {
    Point one = neighbour(loadOhm, true);
    Point other = neighbour(loadOhm, false);
    if (other.loadOhm() <= one.loadOhm() * SAME_LOAD) {
      return Delivery.exactly(one.powerW());
    }
    double lowV =
        Math.max(
            Math.min(one.voltageV(), other.voltageV()),
            Math.min(one.currentA(), other.currentA()) * loadOhm);
    double highV =
        Math.min(
            Math.max(one.voltageV(), other.voltageV()),
            Math.max(one.currentA(), other.currentA()) * loadOhm);
    return Delivery.between(
        INTERPOLATED.at(
            one.powerW(), other.powerW(), SHARE.at(loadOhm, one.loadOhm(), other.loadOhm())),
        Electricity.POWER.at(lowV, loadOhm),
        Electricity.POWER.at(highV, loadOhm));
  }

  /** The rated load next below or above, with the mean of its powers. */
  private Point neighbour(double loadOhm, boolean below) {
    List<Point> beyond =
        fit.distinct().stream()
            .filter(
                p ->
                    below ? p.loadOhm() <= loadOhm * SAME_LOAD : p.loadOhm() * SAME_LOAD >= loadOhm)
            .toList();
    return beyond.get(below ? beyond.size() - 1 : 0);
  }
}
