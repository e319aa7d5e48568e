package org.footwell.electrical.amplifier;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.physics.Decibels;
import org.footwell.physics.Electricity;

/**
 * Open-circuit voltage and sag that explain clean powers into several loads.
 *
 * <p>1/U = 1/Uoc + (Rs/Uoc)/R is a straight line over 1/R. It is laid by least squares with weights
 * U², so that equal relative errors of the voltages count equally; through two points it is exact.
 */
public final class RatingsFit {

  static final Source OHM = Source.of("Ohm's and Joule's laws");
  static final Source THEVENIN = Source.of("Thévenin's theorem: a source behind a resistance");
  static final Source LEAST_SQUARES = Source.of("Weighted linear least squares");

  /** Voltage in V that a source of Uoc volts behind Rs ohms gives across R ohms, R + Rs above 0. */
  static final Formula.Of3 LOADED =
      Formula.of("loaded_v", "Uoc·R/(R + Rs)", "V", THEVENIN)
          .with("Uoc", "R", "Rs", (uoc, r, rs) -> uoc * r / (r + rs));

  private static final Formula.Of2 SLOPE =
      Formula.of(
              "reciprocal_slope_ohm_per_v",
              "cov(1/R, 1/U)/var(1/R), weights U²",
              "ohm/V",
              LEAST_SQUARES)
          .with("cov", "var", (covariance, variance) -> covariance / variance);
  private static final Formula.Of3 INTERCEPT =
      Formula.of("reciprocal_intercept_per_v", "mean(1/U) − b·mean(1/R)", "1/V", LEAST_SQUARES)
          .with("mean_1_U", "b", "mean_1_R", (y, b, x) -> y - b * x);
  private static final Formula.Of1 OPEN_CIRCUIT =
      Formula.of("open_circuit_v", "1/a", "V", DEFINITION).with("a", a -> 1 / a);
  private static final Formula.Of2 SAG =
      Formula.of("sag_ohm", "b/a", "ohm", DEFINITION).with("b", "a", (b, a) -> b / a);

  /** How many times the power grows per halving of the load, from R1 to R2 below it. */
  static final Formula.Of4 PER_HALVING =
      Formula.of("power_ratio_per_halving", "(P2/P1)^(lg 2/lg(R1/R2))", "", DEFINITION)
          .with(
              "P1",
              "P2",
              "R1",
              "R2",
              (p1, p2, r1, r2) -> Math.pow(p2 / p1, Math.log(2) / Math.log(r1 / r2)));

  // Limits of the characters: common practice, no source.
  private static final double REGULATED_SAG = 0.01;
  private static final double GROSSLY_NEGATIVE_SAG = -0.10;
  private static final double LARGE_RESIDUAL_DB = 0.5;

  /** Loads closer than this say nothing about how power grows. */
  private static final double DISTINCT_LOADS = 1.25;

  /** Loads must spread at least this much for sag to follow from them. */
  private static final double SMALLEST_SPREAD = 1.1;

  /** Power growing less per halving of the load is limited by something else than sag. */
  private static final double POWER_LIMITED_GROWTH = 1.1;

  private static final double ROUNDING = 1e-9;

  private final List<Point> points;
  private double meanConductance;
  private double meanReciprocal;
  private double variance;
  private double covariance;
  private final double slope;
  private final double intercept;
  private final Look character;

  /**
   * One clean power into one load.
   *
   * @param loadOhm above 0
   * @param powerW above 0
   */
  public record Point(double loadOhm, double powerW) {
    double voltageV() {
      return Electricity.VOLTAGE.at(powerW, loadOhm);
    }

    double currentA() {
      return voltageV() / loadOhm;
    }
  }

  /** What a set of ratings looks like. */
  public enum Look {
    /** A source behind a resistance explains them. */
    ORDINARY,
    /** Power doubles into half the load: no sag to speak of. */
    REGULATED,
    /** Power hardly grows, or falls, into lower loads: something else than sag limits. */
    POWER_LIMITED,
    /** No source behind a resistance explains them. */
    INCONSISTENT
  }

  private RatingsFit(List<Point> points) {
    this.points = points.stream().sorted(Comparator.comparingDouble(Point::loadOhm)).toList();
    sum();
    this.slope = SLOPE.at(covariance, variance);
    this.intercept = INTERCEPT.at(meanReciprocal, slope, meanConductance);
    this.character = judge();
  }

  /** Fits powers into loads that {@linkplain #spread spread}. */
  public static RatingsFit of(List<Point> points) {
    return new RatingsFit(points);
  }

  /** Whether the loads differ enough, by a tenth, for sag to follow. */
  public static boolean spread(List<Point> points) {
    double least = points.stream().mapToDouble(Point::loadOhm).min().orElseThrow();
    double most = points.stream().mapToDouble(Point::loadOhm).max().orElseThrow();
    return most >= SMALLEST_SPREAD * least;
  }

  private void sum() {
    double weights = 0;
    for (Point point : points) {
      double weight = point.voltageV() * point.voltageV();
      weights += weight;
      meanConductance += weight / point.loadOhm();
      meanReciprocal += weight / point.voltageV();
    }
    meanConductance /= weights;
    meanReciprocal /= weights;
    for (Point point : points) {
      double share = point.voltageV() * point.voltageV() / weights;
      double x = 1 / point.loadOhm() - meanConductance;
      variance += share * x * x;
      covariance += share * x * (1 / point.voltageV() - meanReciprocal);
    }
  }

  private Look judge() {
    Point least = lowest();
    Point next =
        points.stream()
            .filter(point -> point.loadOhm() >= DISTINCT_LOADS * least.loadOhm())
            .findFirst()
            .orElse(highest());
    if (!hasSource() || least.currentA() < next.currentA() * (1 - ROUNDING)) {
      return Look.INCONSISTENT;
    }
    double growth = PER_HALVING.at(next.powerW(), least.powerW(), next.loadOhm(), least.loadOhm());
    if (growth < POWER_LIMITED_GROWTH) {
      return Look.POWER_LIMITED;
    }
    if (largestResidualDb() > LARGE_RESIDUAL_DB || sagNegative()) {
      return Look.INCONSISTENT;
    }
    return sagOhm() < REGULATED_SAG * least.loadOhm() ? Look.REGULATED : Look.ORDINARY;
  }

  /** By rising load. */
  public List<Point> points() {
    return points;
  }

  /** By rising load, each load once with the mean of its powers. */
  List<Point> distinct() {
    return points.stream()
        .collect(
            Collectors.groupingBy(
                Point::loadOhm, TreeMap::new, Collectors.averagingDouble(Point::powerW)))
        .entrySet()
        .stream()
        .map(entry -> new Point(entry.getKey(), entry.getValue()))
        .toList();
  }

  public Point lowest() {
    return points.get(0);
  }

  public Point highest() {
    return points.get(points.size() - 1);
  }

  public Look character() {
    return character;
  }

  /** Whether any source fits at all: not so when current falls into lower loads. */
  public boolean hasSource() {
    return intercept > ROUNDING * meanReciprocal;
  }

  /** V RMS; meaningless without a {@linkplain #hasSource source}. */
  public double openCircuitV() {
    return OPEN_CIRCUIT.at(intercept);
  }

  /** Ohm; meaningless without a {@linkplain #hasSource source}. */
  public double sagOhm() {
    return SAG.at(slope, intercept);
  }

  /** Whether sag is negative beyond what rounded ratings explain. */
  boolean sagNegative() {
    return hasSource() && sagOhm() < -REGULATED_SAG * lowest().loadOhm();
  }

  /** Whether sag is so negative that the ratings cannot belong together. */
  public boolean sagGrosslyNegative() {
    return hasSource() && sagOhm() < GROSSLY_NEGATIVE_SAG * lowest().loadOhm();
  }

  /** V RMS of the fitted source across a load. */
  public double voltageV(double loadOhm) {
    return LOADED.at(openCircuitV(), modelLoad(loadOhm), sagOhm());
  }

  /**
   * The load the fitted source is asked for. With negative sag it stays within the rated ones:
   * beyond them the line would have voltage rise into lower loads without end.
   */
  double modelLoad(double loadOhm) {
    return sagOhm() < 0
        ? Math.min(highest().loadOhm(), Math.max(lowest().loadOhm(), loadOhm))
        : loadOhm;
  }

  /** Root mean square of the ratings' voltages against the line, dB. */
  public double rmsResidualDb() {
    return Math.sqrt(
        points.stream().mapToDouble(p -> residualDb(p) * residualDb(p)).average().orElse(0));
  }

  /** Largest difference of a rating's voltage from the line, dB. */
  public double largestResidualDb() {
    return points.stream().mapToDouble(p -> Math.abs(residualDb(p))).max().orElse(0);
  }

  /** How far the voltage of a rating is above the line, dB; meaningless without a source. */
  double residualDb(Point point) {
    return Decibels.ofAmplitude(point.voltageV() * (intercept + slope / point.loadOhm()));
  }

  /** Notes how the source was found. */
  void explain(Arithmetic arithmetic) {
    double b = arithmetic.apply(SLOPE, covariance, variance);
    double a = arithmetic.apply(INTERCEPT, meanReciprocal, b, meanConductance);
    arithmetic.apply(OPEN_CIRCUIT, a);
    arithmetic.apply(SAG, b, a);
  }
}
