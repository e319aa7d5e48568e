package org.footwell.acoustic.alignment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Delays that minimise the weighted sum of the arrival spreads at several points.
 *
 * <p>With residual arrivals r, shifts e, and per point an upper and a lower edge U and L, minimise
 * Σ w·(U − L) with U ≥ r + e and L ≤ r + e. That is a linear program, whose optimum is often not a
 * single point; a small square of all unknowns makes it one, the closest to the least-squares answer
 * (every channel's mean arrival alike), so that the answer does not depend on the order of channels.
 * What is left is to project a point on a polyhedron.
 *
 * <p>Method: D. Goldfarb and A. Idnani, A numerically stable dual method for solving strictly convex
 * quadratic programs, Mathematical Programming 27 (1983). Every constraint compares two unknowns, so
 * the active ones form trees, and the method's projections are sums over trees.
 */
public final class LeastSpread {

  /**
   * Weight of the square against the spreads: weights sum to 1 and the largest residual is scaled to
   * 1. It costs at most SQUARE/2 times the summed squares of the unknowns, some 0.0001 of the spread.
   */
  private static final double SQUARE = 1e-6;

  /** Constraints may be missed by this much of the largest residual. */
  private static final double TOLERANCE = 1e-8;

  /** Requires unknown {@code above} to exceed unknown {@code below} by {@code by}. */
  private static final class Constraint {
    final int above;
    final int below;
    final double by;
    double multiplier;

    /** How fast the multiplier falls along the present step. */
    double fall;

    Constraint(int above, int below, double by) {
      this.above = above;
      this.below = below;
      this.by = by;
    }

    int other(int end) {
      return end == above ? below : above;
    }
  }

  private final double[] unknown;
  private final List<Constraint> all = new ArrayList<>();
  private final List<Constraint> active = new ArrayList<>();
  private final double[] direction;

  private LeastSpread(double[][] residual, double scale, double[] weight) {
    int channels = residual.length;
    int points = weight.length;
    unknown = new double[channels + 2 * points];
    direction = new double[unknown.length];
    for (int p = 0; p < points; p++) {
      int upper = channels + p;
      int lower = channels + points + p;
      unknown[upper] = -weight[p] / SQUARE;
      unknown[lower] = weight[p] / SQUARE;
      for (int c = 0; c < channels; c++) {
        all.add(new Constraint(upper, c, residual[c][p] / scale));
        all.add(new Constraint(c, lower, -residual[c][p] / scale));
      }
    }
  }

  /**
   * Delays in ms, the smallest 0.
   *
   * @param arrivalMs by channel and point
   * @param weight of the points, which sum to 1
   * @param atEveryMove is told of each move of the search, and may end it
   */
  public static double[] delaysMs(double[][] arrivalMs, double[] weight, Runnable atEveryMove) {
    int channels = arrivalMs.length;
    double[] delay = new double[channels];
    double[][] residual = new double[channels][];
    for (int c = 0; c < channels; c++) {
      double mean = mean(arrivalMs[c], weight);
      delay[c] = -mean;
      residual[c] = Arrays.stream(arrivalMs[c]).map(arrival -> arrival - mean).toArray();
    }
    double scale =
        Arrays.stream(residual).flatMapToDouble(Arrays::stream).map(Math::abs).max().orElse(0);
    if (scale > 0) {
      LeastSpread problem = new LeastSpread(residual, scale, weight);
      problem.solve(atEveryMove);
      for (int c = 0; c < channels; c++) {
        delay[c] += scale * problem.unknown[c];
      }
    }
    double least = Arrays.stream(delay).min().orElse(0);
    return Arrays.stream(delay).map(d -> d - least).toArray();
  }

  private static double mean(double[] values, double[] weight) {
    double sum = 0;
    for (int p = 0; p < weight.length; p++) {
      sum += weight[p] * values[p];
    }
    return sum;
  }

  private void solve(Runnable atEveryMove) {
    Constraint worst = mostViolated();
    // Every round raises the distance to the start, so it ends; the cap is a safeguard.
    for (int round = 0; worst != null; round++) {
      if (round > 100 * all.size()) {
        throw new IllegalStateException("no end of the search for least spread");
      }
      satisfy(worst, atEveryMove);
      worst = mostViolated();
    }
  }

  private Constraint mostViolated() {
    Constraint worst = null;
    double most = TOLERANCE;
    for (Constraint constraint : all) {
      double missing = missing(constraint);
      if (missing > most && !active.contains(constraint)) {
        most = missing;
        worst = constraint;
      }
    }
    return worst;
  }

  private double missing(Constraint constraint) {
    return constraint.by - unknown[constraint.above] + unknown[constraint.below];
  }

  /** Moves until the constraint holds, dropping active ones whose multipliers reach 0. */
  private void satisfy(Constraint wanted, Runnable atEveryMove) {
    wanted.multiplier = 0;
    while (true) {
      atEveryMove.run();
      aim(wanted);
      double rate = direction[wanted.above] - direction[wanted.below];
      double full = rate > 0 ? missing(wanted) / rate : Double.POSITIVE_INFINITY;
      Constraint blocking = null;
      double step = full;
      for (Constraint constraint : active) {
        if (constraint.fall > 1e-12 && constraint.multiplier / constraint.fall < step) {
          step = constraint.multiplier / constraint.fall;
          blocking = constraint;
        }
      }
      if (step == Double.POSITIVE_INFINITY) {
        throw new IllegalStateException("edges of spreads that exclude each other");
      }
      move(wanted, step);
      if (blocking == null) {
        active.add(wanted);
        return;
      }
      blocking.multiplier = 0;
      active.remove(blocking);
    }
  }

  private void move(Constraint wanted, double step) {
    for (int i = 0; i < unknown.length; i++) {
      unknown[i] += step * direction[i];
    }
    for (Constraint constraint : active) {
      constraint.multiplier -= step * constraint.fall;
    }
    wanted.multiplier += step;
  }

  /**
   * Sets the direction in which the wanted constraint gains while the active ones keep what they
   * have, and how fast their multipliers fall. The push of +1 at one end and −1 at the other, spread
   * evenly over each end's tree, is the direction; what it takes to spread it flows in the branches.
   */
  private void aim(Constraint wanted) {
    Arrays.fill(direction, 0);
    active.forEach(constraint -> constraint.fall = 0);
    List<Integer> tree = new ArrayList<>();
    List<Constraint> branch = new ArrayList<>();
    grow(wanted.above, tree, branch);
    if (tree.contains(wanted.below)) {
      drain(tree, branch, wanted, 0);
    } else {
      drain(tree, branch, wanted, 1.0 / tree.size());
      grow(wanted.below, tree, branch);
      drain(tree, branch, wanted, -1.0 / tree.size());
    }
  }

  /** Lists the unknowns of a tree of active constraints, each after the one its branch leads to. */
  private void grow(int root, List<Integer> tree, List<Constraint> branch) {
    tree.clear();
    branch.clear();
    tree.add(root);
    branch.add(null);
    for (int i = 0; i < tree.size(); i++) {
      int here = tree.get(i);
      for (Constraint constraint : active) {
        boolean leadsOn = constraint != branch.get(i);
        if (leadsOn && (constraint.above == here || constraint.below == here)) {
          tree.add(constraint.other(here));
          branch.add(constraint);
        }
      }
    }
  }

  /** From the leaves to the root, hands on what each unknown has beyond the even share. */
  private void drain(List<Integer> tree, List<Constraint> branch, Constraint wanted, double share) {
    double[] surplus = new double[unknown.length];
    for (int i = tree.size() - 1; i >= 0; i--) {
      int here = tree.get(i);
      direction[here] = share;
      surplus[here] += push(here, wanted) - share;
      Constraint up = branch.get(i);
      if (up != null) {
        up.fall = up.above == here ? surplus[here] : -surplus[here];
        surplus[up.other(here)] += surplus[here];
      }
    }
  }

  private static double push(int unknown, Constraint wanted) {
    return unknown == wanted.above ? 1 : unknown == wanted.below ? -1 : 0;
  }
}
