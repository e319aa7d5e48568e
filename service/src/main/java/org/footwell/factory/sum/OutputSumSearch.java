package org.footwell.factory.sum;

import java.util.Arrays;
import java.util.List;
import org.footwell.calculation.Arithmetic;
import org.footwell.factory.sum.SignalSumResult.Evenness;
import org.footwell.physics.Phasor;
import org.footwell.signal.Response;

/** Sums of any of the outputs, turned over or not, with their delays or without. */
final class OutputSumSearch {

  /** A deeper hole is a hole: its depth says nothing more. */
  static final double DEEPEST_DB = 60;

  /** Sums that are as even as this within the best are as good; common practice, no source. */
  private static final double AS_GOOD_DB = 0.5;

  /**
   * What a change counts: a connection is made or given up less easily than the delays or a polarity
   * are set, and an inverted output is put right before another is inverted too.
   */
  private static final int CONNECTION = 6;

  private static final int SETTING = 4;
  private static final int PUT_RIGHT = 3;

  private static final int PER_OCTAVE = 48;

  /** Delays closer than this are the same, ms. */
  private static final double SAME_MS = 0.02;

  private final List<KnownOutput> outputs;
  private final double[] grid;
  private final double toleranceDb;
  private final Phasor[][] given;
  private final Phasor[][] undelayed;

  /**
   * One way to connect.
   *
   * @param used bits of the outputs that are connected
   * @param turned bits of those whose polarity is turned against what was given
   * @param undone whether delays are undone
   */
  record Way(int used, int turned, boolean undone) {
    boolean uses(int output) {
      return (used >> output & 1) == 1;
    }

    boolean turns(int output) {
      return (turned >> output & 1) == 1;
    }
  }

  OutputSumSearch(List<KnownOutput> outputs, double fromHz, double toHz, double toleranceDb) {
    this.outputs = outputs;
    this.toleranceDb = toleranceDb;
    int steps = Math.max(8, (int) Math.ceil(PER_OCTAVE * Math.log(toHz / fromHz) / Math.log(2)));
    grid = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      grid[i] = i == steps ? toHz : fromHz * Math.pow(toHz / fromHz, (double) i / steps);
    }
    given = new Phasor[outputs.size()][grid.length];
    undelayed = new Phasor[outputs.size()][grid.length];
    for (int o = 0; o < outputs.size(); o++) {
      for (int i = 0; i < grid.length; i++) {
        given[o][i] = outputs.get(o).at(grid[i]);
        undelayed[o][i] = OutputResponse.delayed(given[o][i], grid[i], -outputs.get(o).delayMs());
      }
    }
  }

  double[] grid() {
    return grid;
  }

  /** What is connected now. */
  Way now() {
    int used = 0;
    for (int o = 0; o < outputs.size(); o++) {
      used |= outputs.get(o).connected() ? 1 << o : 0;
    }
    return new Way(used, 0, false);
  }

  /** Levels on the grid, dB. */
  double[] levels(Way way) {
    Phasor[][] from = way.undone() ? undelayed : given;
    double[] levels = new double[grid.length];
    for (int i = 0; i < grid.length; i++) {
      double re = 0;
      double im = 0;
      for (int o = 0; o < outputs.size(); o++) {
        if (way.uses(o)) {
          double sign = way.turns(o) ? -1 : 1;
          re += sign * from[o][i].re();
          im += sign * from[o][i].im();
        }
      }
      levels[i] = Response.levelDb(re * re + im * im);
    }
    return levels;
  }

  /** Level in dB at any frequency. */
  double levelDb(Way way, double f) {
    Phasor sum = new Phasor(0, 0);
    for (int o = 0; o < outputs.size(); o++) {
      if (way.uses(o)) {
        Phasor one = outputs.get(o).at(f);
        double earlier = way.undone() ? outputs.get(o).delayMs() : 0;
        sum = sum.plus(OutputResponse.delayed(one, f, -earlier).times(way.turns(o) ? -1 : 1));
      }
    }
    return Response.levelDb(sum.re() * sum.re() + sum.im() * sum.im());
  }

  /** Level in dB if all that is used added in phase. */
  double inPhaseDb(Way way, double f) {
    double sum = 0;
    for (int o = 0; o < outputs.size(); o++) {
      sum += way.uses(o) ? outputs.get(o).at(f).modulus() : 0;
    }
    return Response.levelDb(sum * sum);
  }

  Evenness evenness(Way way) {
    double[] levels = levels(way);
    double median = median(levels);
    int high = 0;
    int low = 0;
    for (int i = 1; i < levels.length; i++) {
      high = levels[i] > levels[high] ? i : high;
      low = levels[i] < levels[low] ? i : low;
    }
    double highest = levels[high] - median;
    double lowest = Math.max(levels[low] - median, -DEEPEST_DB);
    return SignalSumResultEvennessBuilder.builder()
        .fromHz(grid[0])
        .toHz(grid[grid.length - 1])
        .medianDb(median)
        .highestDb(highest)
        .highestHz(grid[high])
        .lowestDb(lowest)
        .lowestHz(grid[low])
        .spreadDb(highest - lowest)
        .flatEnough(highest <= toleranceDb && lowest >= -toleranceDb)
        .build();
  }

  static double median(double[] levels) {
    double[] sorted = levels.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private static double spread(double[] levels) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (double level : levels) {
      least = Math.min(least, level);
      most = Math.max(most, level);
    }
    return Math.min(most - least, 2 * DEEPEST_DB);
  }

  /** The flattest way, with the fewest changes among those as good; what is now, if it will do. */
  Way best(Arithmetic arithmetic) {
    Way now = now();
    if (evenness(now).flatEnough()) {
      return now;
    }
    Way best = now;
    double least = spread(levels(now));
    // Two rounds: how even it can get, then the fewest changes for that.
    for (int round = 0; round < 2; round++) {
      double enough = round == 0 ? Double.NaN : least + AS_GOOD_DB;
      int fewest = Integer.MAX_VALUE;
      for (int used = 1; used < 1 << outputs.size(); used++) {
        arithmetic.checkDeadline();
        for (int turned = 0; turned <= used; turned++) {
          // Turning all over changes nothing: one of them stays.
          if ((turned & ~used) != 0 || turned == used) {
            continue;
          }
          for (int undone = 0; undone < (delaysDiffer(used) ? 2 : 1); undone++) {
            Way way = new Way(used, turned, undone == 1);
            double spread = spread(levels(way));
            if (round == 0) {
              least = Math.min(least, spread);
            } else if (spread <= enough && changes(way, now) < fewest) {
              fewest = changes(way, now);
              best = way;
            }
          }
        }
      }
    }
    return best;
  }

  private int changes(Way way, Way now) {
    int sum = CONNECTION * Integer.bitCount(way.used() ^ now.used()) + (way.undone() ? SETTING : 0);
    for (int o = 0; o < outputs.size(); o++) {
      if (way.turns(o)) {
        sum += outputs.get(o).factor() < 0 ? PUT_RIGHT : SETTING;
      }
    }
    return sum;
  }

  private boolean delaysDiffer(int used) {
    Way way = new Way(used, 0, false);
    return latestMs(way) - earliestMs(way) > SAME_MS;
  }

  double earliestMs(Way way) {
    double earliest = Double.POSITIVE_INFINITY;
    for (int o = 0; o < outputs.size(); o++) {
      earliest = way.uses(o) ? Math.min(earliest, outputs.get(o).delayMs()) : earliest;
    }
    return earliest;
  }

  double latestMs(Way way) {
    double latest = Double.NEGATIVE_INFINITY;
    for (int o = 0; o < outputs.size(); o++) {
      latest = way.uses(o) ? Math.max(latest, outputs.get(o).delayMs()) : latest;
    }
    return latest;
  }
}
