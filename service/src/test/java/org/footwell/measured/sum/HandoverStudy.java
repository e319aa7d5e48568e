package org.footwell.measured.sum;

import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleFunction;
import org.footwell.calculation.Refused;
import org.footwell.measured.response.Gate;
import org.footwell.measured.response.MadeUpResponse;
import org.footwell.measured.sum.LoudspeakerSumResult.Sum;
import org.footwell.physics.Decibels;

/**
 * Degrades made-up responses of two channels until their sum is judged wrongly, and writes the
 * tables of a page. Seeded: the same tables every time.
 */
final class HandoverStudy {

  private static final int TRIALS = 20;
  private static final double CROSSOVER_HZ = 1500;

  /** The upper channel comes a quarter of a period late: half its power is lost at the crossover. */
  private static final int LATE_SAMPLES = 8;

  private static final double MS_A_SAMPLE = 1000 / MadeUpResponse.RATE_HZ;

  /** Remarks that say not to rely on the setting. */
  private static final Set<String> DOUBTS =
      Set.of("sum-near-noise", "delay-at-end-of-range", "delay-ambiguous", "loss-remains");

  /** What goes wrong with the recordings. */
  static final class Trouble {
    double noiseDb = Double.NEGATIVE_INFINITY;
    double reflectionDb = Double.NEGATIVE_INFINITY;
    double reflectedMs = 1;
    double clockSamples;
    double upperDb;
    Gate gate;
  }

  /** Shares of all trials; error of the delay in ms and the loss that following it leaves in dB. */
  record Trials(double polarity, double delayMs, double lossDb, double told, double refused) {
    String row() {
      return refused == 1
          ? "- | - | - | - | 100 |\n"
          : String.format(
              Locale.ROOT,
              "%.3f | %.0f | %.2f | %.0f | %.0f |%n",
              delayMs,
              100 * polarity,
              lossDb,
              100 * told,
              100 * refused);
    }
  }

  private HandoverStudy() {}

  static Trials run(Trouble trouble) {
    int polarity = 0;
    int told = 0;
    int refused = 0;
    double delay = 0;
    double loss = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      try {
        var answer = measured(trouble, new Random(trial)).answer();
        Sum best = answer.result().best();
        polarity += best.polarity() == 1 ? 1 : 0;
        double off = best.delayMs() + LATE_SAMPLES * MS_A_SAMPLE;
        delay = Math.max(delay, Math.abs(off));
        loss = Math.max(loss, -lossDb(off, best.polarity()));
        told += answer.findings().stream().anyMatch(one -> DOUBTS.contains(one.code())) ? 1 : 0;
      } catch (Refused impossible) {
        refused++;
      }
    }
    double all = TRIALS;
    return new Trials(polarity / all, delay, loss, told / all, refused / all);
  }

  /** Loss of the pair itself, whose ways are in phase at every frequency, from 750 to 3000 Hz. */
  static double lossDb(double lateMs, int polarity) {
    double sum = 0;
    double inPhase = 0;
    for (int i = -24; i <= 24; i++) {
      double x = Math.pow(2, i / 24.0);
      double low = 1 / (1 + Math.pow(x, 4));
      double high = polarity * (1 - low);
      double turn = 2 * Math.PI * CROSSOVER_HZ * x * lateMs / 1000;
      sum += low * low + high * high + 2 * low * high * Math.cos(turn);
      inPhase += 1;
    }
    return Decibels.ofPower(sum / inPhase);
  }

  private static SumSession measured(Trouble trouble, Random random) {
    double upper = 0.5 * Decibels.toAmplitude(trouble.upperDb);
    int late = LATE_SAMPLES + (int) trouble.clockSamples;
    MadeUpResponse low = SumSession.linkwitzRiley(false, 4, CROSSOVER_HZ, 2000, 0.5);
    MadeUpResponse high = SumSession.linkwitzRiley(true, 4, CROSSOVER_HZ, 2000 + late, upper);
    double size = Decibels.toAmplitude(trouble.reflectionDb) * (random.nextBoolean() ? 1 : -1);
    int later = (int) Math.round(trouble.reflectedMs / MS_A_SAMPLE);
    double noise = 0.5 * Decibels.toAmplitude(trouble.noiseDb);
    SumSession session = new SumSession();
    session.draft.crossoverHz(CROSSOVER_HZ).gate(trouble.gate);
    return session.position(
        low.noisy(noise, random.nextLong()),
        high.reflected(size, later).noisy(noise, random.nextLong()));
  }

  static Trouble noise(double db) {
    Trouble trouble = new Trouble();
    trouble.noiseDb = db;
    return trouble;
  }

  static Trouble reflection(double db, double ms) {
    Trouble trouble = new Trouble();
    trouble.reflectionDb = db;
    trouble.reflectedMs = ms;
    return trouble;
  }

  static Trouble clock(double samples) {
    Trouble trouble = new Trouble();
    trouble.clockSamples = samples;
    return trouble;
  }

  /** The upper channel so much louder, both 40 dB above the noise as peaks of a click. */
  static Trouble louder(double db) {
    Trouble trouble = noise(-40);
    trouble.upperDb = db;
    return trouble;
  }

  static Trouble gate(double afterMs) {
    Trouble trouble = new Trouble();
    trouble.gate = new Gate(1.0, afterMs);
    return trouble;
  }

  private static String table(
      String what, String format, double[] values, DoubleFunction<Trouble> of) {
    StringBuilder out = new StringBuilder("| ").append(what).append(HEAD);
    for (double value : values) {
      out.append(String.format(Locale.ROOT, "| " + format + " | ", value))
          .append(run(of.apply(value)).row());
    }
    return out.toString();
  }

  private static final String HEAD =
      " | delay off by up to, ms | polarity right, % | loss left by following it, up to dB |"
          + " remarked on, % | refused, % |\n|---|---|---|---|---|---|\n";

  private static String reflections() {
    StringBuilder out = new StringBuilder("| reflection, dB, ms later").append(HEAD);
    for (double db : new double[] {-12, -6, -3, 0}) {
      for (double ms : new double[] {0.2, 0.5, 1, 3, 10}) {
        out.append(String.format(Locale.ROOT, "| %.0f, %.1f | ", db, ms))
            .append(run(reflection(db, ms)).row());
      }
    }
    return out.toString();
  }

  static String page() {
    return String.format(
        Locale.ROOT,
        """
        # Where loudspeaker-sum fails

        Written by `HandoverStudy` from made-up responses whose answer is known: a Linkwitz-Riley pair of
        the fourth order at %.0f Hz whose upper channel comes %.4f ms late, a quarter of a period, one
        microphone position, %d seeded trials a row. As set the pair loses %.2f dB from 750 to 3000 Hz; with
        the lower channel delayed by as much, nothing. *Loss left* is that of the pair itself with the setting
        told. *Remarked on*: `sum-near-noise`, `delay-ambiguous`, `delay-at-end-of-range` or `loss-remains`.

        ## Noise

        White, RMS against the click that went through the filters.

        %s
        ## A reflection in the upper channel

        Of either sign, within the gate: what the microphone hears is what adds there, so
        the delay told is right for that place and not for the loudspeakers themselves.

        %s
        ## Recordings that do not start together

        The upper channel was recorded so many samples too late. The delay told is off by as much: nothing in
        the recordings says so.

        %s
        ## Levels apart

        The upper channel louder than the lower, with noise at -40 dB.

        %s
        ## Short gates

        %s""",
        CROSSOVER_HZ,
        LATE_SAMPLES * MS_A_SAMPLE,
        TRIALS,
        -lossDb(LATE_SAMPLES * MS_A_SAMPLE, 1),
        table(
            "noise, dB",
            "%.0f",
            new double[] {-80, -60, -50, -40, -35, -30, -25, -20},
            HandoverStudy::noise),
        reflections(),
        table("samples", "%.0f", new double[] {0, 1, 2, 4, 8, 16}, HandoverStudy::clock),
        table("louder, dB", "%.0f", new double[] {0, 6, 12, 18, 24}, HandoverStudy::louder),
        table(
            "gate open after the strongest sample, ms",
            "%.1f",
            new double[] {20, 5, 3, 2, 1.5, 1, 0.5},
            HandoverStudy::gate));
  }

  public static void main(String[] arguments) {
    System.out.print(page());
  }
}
