package org.footwell.factory.sum;

import java.util.Locale;
import java.util.Random;
import java.util.function.DoubleFunction;
import org.footwell.calculation.Refused;
import org.footwell.physics.Phasor;

/**
 * Degrades made-up measurements of two factory outputs until their sum is judged wrongly, and writes
 * the tables of a page. Seeded: the same tables every time.
 */
final class SumStudy {

  private static final int TRIALS = 20;
  private static final double CROSSOVER_HZ = 2500;

  /** A whole period late and turned over: the outputs cancel at the crossover. */
  private static final double LATE_MS = 0.4;

  /** What goes wrong with the measurements. */
  static final class Trouble {
    double pointsPerOctave = 24;
    double noiseDb = Double.POSITIVE_INFINITY;
    double clockMs;
    double levelDb;
  }

  /** Shares of all trials, and the error of the delay found in ms. */
  record Trials(
      double hole, double polarity, double flat, double allPass, double delayMs, double refused) {
    String row() {
      return String.format(
          Locale.ROOT,
          "%.0f | %.0f | %.0f | %.3f | %.0f | %.0f |%n",
          100 * hole,
          100 * polarity,
          100 * flat,
          delayMs,
          100 * allPass,
          100 * refused);
    }
  }

  private SumStudy() {}

  static Trials run(Trouble trouble) {
    int hole = 0;
    int polarity = 0;
    int flat = 0;
    int allPass = 0;
    int refused = 0;
    double delay = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      try {
        SignalSumResult result = measured(trouble, new Random(trial)).result();
        hole += holeAtCrossover(result) ? 1 : 0;
        var woofer = result.outputs().get(0);
        var tweeter = result.outputs().get(1);
        polarity += woofer.turnPolarity() != tweeter.turnPolarity() ? 1 : 0;
        flat += result.best().flatEnough() ? 1 : 0;
        allPass += woofer.allPassHz() != null || tweeter.allPassHz() != null ? 1 : 0;
        double later = tweeter.laterMs() - woofer.laterMs();
        delay = Math.max(delay, Math.abs(later - LATE_MS));
      } catch (Refused impossible) {
        refused++;
      }
    }
    double all = TRIALS;
    return new Trials(hole / all, polarity / all, flat / all, allPass / all, delay, refused / all);
  }

  private static boolean holeAtCrossover(SignalSumResult result) {
    return result.holes().stream()
        .anyMatch(one -> Math.abs(one.worstHz() / CROSSOVER_HZ - 1) < 0.1 && one.levelDb() < -10);
  }

  private static SumBench measured(Trouble trouble, Random random) {
    SumBench made = SumBench.pair(CROSSOVER_HZ);
    SumBench bench = new SumBench();
    bench.with(SumBench.output("woofer")).with(SumBench.output("tweeter"));
    double noise = Math.pow(10, -trouble.noiseDb / 20) / Math.sqrt(2);
    for (double f = 20; f < 20_000; f *= Math.pow(2, 1 / trouble.pointsPerOctave)) {
      for (int o = 0; o < 2; o++) {
        Phasor h = KnownOutputs.filters(made.outputs.get(o), made.request()).at(f);
        double late = o == 0 ? 0 : LATE_MS + trouble.clockMs;
        double size = o == 0 ? 1 : -Math.pow(10, trouble.levelDb / 20);
        h = OutputResponse.delayed(h.times(size), f, late);
        double re = h.re() + noise * random.nextGaussian();
        double im = h.im() + noise * random.nextGaussian();
        bench.point(
            o == 0 ? "woofer" : "tweeter",
            f,
            Math.max(-100, 20 * Math.log10(Math.hypot(re, im))),
            Math.toDegrees(Math.atan2(im, re)));
      }
    }
    return bench;
  }

  static Trouble noise(double db) {
    Trouble trouble = new Trouble();
    trouble.noiseDb = db;
    return trouble;
  }

  static Trouble points(double perOctave) {
    Trouble trouble = new Trouble();
    trouble.pointsPerOctave = perOctave;
    return trouble;
  }

  static Trouble clock(double ms) {
    Trouble trouble = new Trouble();
    trouble.clockMs = ms;
    return trouble;
  }

  static Trouble level(double db) {
    Trouble trouble = new Trouble();
    trouble.levelDb = db;
    return trouble;
  }

  private static String table(
      String what, String format, double[] values, DoubleFunction<Trouble> of) {
    StringBuilder out =
        new StringBuilder("| ")
            .append(what)
            .append(
                " | hole found, % | polarity to turn found, % | best sum flat, % | delay off by up to,"
                    + " ms | all-pass wrongly told, % | refused, % |\n|---|---|---|---|---|---|---|\n");
    for (double value : values) {
      out.append(String.format(Locale.ROOT, "| " + format + " | ", value))
          .append(run(of.apply(value)).row());
    }
    return out.toString();
  }

  static String page() {
    return String.format(
        Locale.ROOT,
        """
        # Where signal-sum fails

        Written by `SumStudy` from made-up measurements of two outputs: a Linkwitz-Riley pair of the fourth
        order at 2500 Hz whose tweeter is turned over and %.1f ms late, a whole period there, so that the two
        cancel. Points of level and phase from 20 Hz to 20 kHz, 24 to the octave unless said otherwise, %d
        seeded trials a row. *Hole found*: within a tenth of 2500 Hz and at least 10 dB deep. *Polarity*: one
        of the two is to be turned. *Flat*: within 3 dB of the median once the advice is followed.

        ## Noise

        Complex and white over the points, below the pass band.

        %s
        ## Coarse points

        %s
        ## Wrong time reference

        The tweeter was measured as if it came so much later than it does. The delay told is off by as much:
        nothing in the measurements says so.

        %s
        ## Wrong level reference

        The tweeter was measured as so much louder than it is.

        %s""",
        LATE_MS,
        TRIALS,
        table(
            "noise, dB",
            "%.0f",
            new double[] {-60, -50, -40, -35, -30, -25, -20, -15, -10},
            db -> noise(-db)),
        table("points an octave", "%.0f", new double[] {24, 12, 8, 6, 4, 3, 2}, SumStudy::points),
        table(
            "later, ms",
            "%.2f",
            new double[] {0, 0.02, 0.05, 0.08, 0.1, 0.15, 0.2},
            SumStudy::clock),
        table("louder, dB", "%.0f", new double[] {0, 1, 2, 3, 6, 9}, SumStudy::level));
  }

  public static void main(String[] arguments) {
    System.out.print(page());
  }
}
