package org.footwell.factory.clip;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleFunction;
import org.footwell.calculation.Refused;

/**
 * Degrades made-up captures step by step until the clip point fails, and writes the tables of a page.
 * Seeded: the same tables every time.
 */
final class ClipStudy {

  private static final int TRIALS = 8;

  /** The output holds here, as a share of full scale. */
  private static final double HELD = 0.5;

  /** Amplitudes by volume step; the third is the first beyond 1 %. */
  private static final double[] AMPLITUDES = {0.45, 0.495, 0.53, 0.6};

  private static final int CLEAN_STEP = 2;

  /** Remarks that say not to rely on the figure. */
  private static final Set<String> DOUBTS = Set.of("noise-hides-distortion", "tone-not-steady");

  /** What goes wrong with a capture. */
  static final class Trouble {
    double toneHz = ToneBench.TONE_HZ;
    double noiseDb = 80;
    double humDb = Double.POSITIVE_INFINITY;
    double humHz = 50;
    double seconds = 0.5;
    Double statedHz;
    double driftPercent;
  }

  /** What the trials gave: shares of all of them, and distortion of the third step in percent. */
  record Trials(
      double right, double refused, double told, double least, double most, double truth) {

    /** Within a fifth of the truth in all trials. */
    boolean good() {
      return refused == 0 && least >= 0.8 * truth && most <= 1.2 * truth;
    }

    String row() {
      String read = refused == 1 ? "-" : String.format(Locale.ROOT, "%.2f to %.2f", least, most);
      return String.format(
          Locale.ROOT, "%s | %.0f | %.0f | %.0f |%n", read, 100 * right, 100 * told, 100 * refused);
    }
  }

  private ClipStudy() {}

  static Trials run(Trouble trouble) {
    double truth = truth();
    int right = 0;
    int refused = 0;
    int told = 0;
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      ToneBench bench = new ToneBench();
      bench.draft.toneHz(trouble.statedHz);
      Random random = new Random(trial);
      for (int i = 0; i < AMPLITUDES.length; i++) {
        bench.step(i + 1, wave(AMPLITUDES[i], trouble, random));
      }
      try {
        var answer = bench.answer();
        Integer clean = answer.result().cleanStep();
        right += clean != null && clean == CLEAN_STEP ? 1 : 0;
        told += answer.findings().stream().anyMatch(one -> DOUBTS.contains(one.code())) ? 1 : 0;
        double read = answer.result().steps().get(CLEAN_STEP).distortionPercent();
        least = Math.min(least, read);
        most = Math.max(most, read);
      } catch (Refused impossible) {
        refused++;
      }
    }
    double all = TRIALS;
    return new Trials(right / all, refused / all, told / all, least, most, truth);
  }

  /** Distortion of the third step up to 2 kHz by the Fourier series, percent. */
  static double truth() {
    double a = Math.asin(HELD / AMPLITUDES[CLEAN_STEP]);
    double one = 2 / Math.PI * (a + Math.sin(a) * Math.cos(a));
    double squares = 0;
    for (int n = 3; n * ToneBench.TONE_HZ <= 2000; n += 2) {
      double line =
          2
              / Math.PI
              * (Math.sin((n - 1) * a) / (n - 1)
                  - Math.sin((n + 1) * a) / (n + 1)
                  + 2 * Math.sin(a) * Math.cos(n * a) / n);
      squares += line * line;
    }
    return 100 * Math.sqrt(squares) / one;
  }

  private static float[] wave(double amplitude, Trouble trouble, Random random) {
    float[] wave = new float[(int) (trouble.seconds * ToneBench.RATE_HZ)];
    double noise = Math.sqrt(0.5) * HELD * Math.pow(10, -trouble.noiseDb / 20);
    double hum = HELD * Math.pow(10, -trouble.humDb / 20);
    double start = 2 * Math.PI * random.nextDouble();
    double humStart = 2 * Math.PI * random.nextDouble();
    double phase = start;
    for (int n = 0; n < wave.length; n++) {
      double drift = 1 + trouble.driftPercent / 100 * n / wave.length;
      double time = n / ToneBench.RATE_HZ;
      double mains = 2 * Math.PI * trouble.humHz * time + humStart;
      double held = Math.max(-HELD, Math.min(HELD, amplitude * Math.sin(phase)));
      double buzz = Math.sin(mains) + 0.5 * Math.sin(3 * mains) + 0.25 * Math.sin(5 * mains);
      wave[n] = (float) (held + hum * buzz + noise * random.nextGaussian());
      phase += 2 * Math.PI * trouble.toneHz * drift / ToneBench.RATE_HZ;
    }
    return wave;
  }

  static Trouble noise(double db) {
    Trouble trouble = new Trouble();
    trouble.noiseDb = db;
    return trouble;
  }

  static Trouble hum(double db, double hz) {
    Trouble trouble = new Trouble();
    trouble.humDb = db;
    trouble.humHz = hz;
    return trouble;
  }

  static Trouble periods(double count) {
    Trouble trouble = new Trouble();
    trouble.seconds = count / ToneBench.TONE_HZ;
    return trouble;
  }

  static Trouble stated(double percentOff) {
    Trouble trouble = new Trouble();
    trouble.statedHz = ToneBench.TONE_HZ * (1 + percentOff / 100);
    return trouble;
  }

  static Trouble drift(double percent) {
    Trouble trouble = new Trouble();
    trouble.driftPercent = percent;
    return trouble;
  }

  /** A degradation of the tables. */
  private record Row(String name, Trouble trouble) {}

  private static String table(String what, List<Row> rows) {
    StringBuilder out =
        new StringBuilder("| ")
            .append(what)
            .append(" | distortion read, % | right step, % | remarked on, % | refused, % |\n")
            .append("|---|---|---|---|---|\n");
    for (Row row : rows) {
      out.append("| ").append(row.name()).append(" | ").append(run(row.trouble()).row());
    }
    return out.toString();
  }

  private static List<Row> rows(String format, double[] values, DoubleFunction<Trouble> trouble) {
    List<Row> rows = new ArrayList<>();
    for (double value : values) {
      rows.add(new Row(String.format(Locale.ROOT, format, value), trouble.apply(value)));
    }
    return rows;
  }

  static String page() {
    return String.format(
        Locale.ROOT,
        """
        # Where clip-point fails

        Written by `ClipStudy` from made-up captures whose answer is known: a sine of %.1f Hz held at half of
        full scale, four volume steps with amplitudes of 0.9, 0.99, 1.06 and 1.2 times that, 0.5 s at 48 kHz
        with white noise 80 dB below unless said otherwise, band to 2 kHz, %d seeded trials a row. The second
        step is the highest clean one; the third has %.2f %% by the Fourier series. *Distortion read* is that
        of the third step, least to most.

        ## Noise

        White, up to 24 kHz: ratio of the held sine to it.

        %s
        ## Hum

        Of three lines (1, 3 and 5 times its frequency, each half the one before); level of the first
        against the held peak. The second table is the worst case: the third line of the hum lies on the
        second harmonic of the tone. Then nothing tells one from the other: choose another tone.

        %s
        ## Short captures

        %s
        ## A frequency stated wrong, a tone that drifts

        %s
        %s""",
        ToneBench.TONE_HZ,
        TRIALS,
        truth(),
        table(
            "ratio, dB",
            rows("%.0f", new double[] {60, 50, 40, 35, 30, 25, 20, 15, 10, 5}, ClipStudy::noise)),
        table(
                "hum of 50 Hz, dB",
                rows("%.0f", new double[] {-60, -50, -40, -30, -20, -10}, db -> hum(-db, 50)))
            + "\n"
            + table(
                "hum on the second harmonic, dB",
                rows(
                    "%.0f",
                    new double[] {-60, -50, -40, -35, -30, -20},
                    db -> hum(-db, ToneBench.TONE_HZ * 2 / 3))),
        table(
            "periods",
            rows("%.1f", new double[] {48, 24, 18, 15, 13, 12.2, 11.5}, ClipStudy::periods)),
        table(
            "stated frequency off by, %",
            rows("%.1f", new double[] {0, 2, 4, 4.9, 6, 10}, ClipStudy::stated)),
        table(
            "drift within a capture, %",
            rows("%.1f", new double[] {0.1, 0.3, 1, 3, 10}, ClipStudy::drift)));
  }

  public static void main(String[] arguments) {
    System.out.print(page());
  }
}
