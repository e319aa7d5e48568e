package org.footwell.factory.rolloff;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleFunction;
import org.footwell.calculation.Refused;
import org.footwell.physics.Decibels;
import org.footwell.physics.ThirdOctaves;
import org.footwell.recording.Recording;

/**
 * Degrades made-up captures of noise step by step until the roll-off is judged wrongly, and writes
 * the tables of a page. Seeded: the same tables every time.
 */
final class RolloffStudy {

  private static final int TRIALS = 8;

  /** The source holds its bass back by a shelf of the first order about here, Hz. */
  private static final double SHELF_HZ = 60;

  /** RMS of the lowest step, full scale 1; each step is 6 dB louder. */
  private static final double LOWEST_RMS = 0.02;

  private static final int[] STEPS = {10, 20, 30};

  /** Remarks that say not to rely on the figures. */
  private static final Set<String> DOUBTS =
      Set.of("capture-too-short-for-bass", "bass-falls-from-the-start", "midrange-does-not-rise");

  /** What goes wrong with the captures. */
  static final class Trouble {
    double seconds = 60;

    /** What is left of the bass far below the shelf at the third step, as a factor. */
    double left = 0.5;

    double rumbleDb = Double.NEGATIVE_INFINITY;
    double humDb = Double.NEGATIVE_INFINITY;
    double fullScale = 1;

    Trouble holdingNothingBack() {
      left = 1;
      return this;
    }
  }

  /** What the trials gave: shares of all of them, and the loss of the third step in dB. */
  record Trials(
      double right, double refused, double told, double least, double most, double truth) {

    String row() {
      String read = refused == 1 ? "-" : tenths(least) + " to " + tenths(most);
      return String.format(
          Locale.ROOT, "%s | %.0f | %.0f | %.0f", read, 100 * right, 100 * told, 100 * refused);
    }
  }

  private RolloffStudy() {}

  /** To one decimal, without a minus before nothing. */
  private static String tenths(double db) {
    return String.format(Locale.ROOT, "%.1f", Math.round(10 * db) / 10.0 + 0.0);
  }

  static Trials run(Trouble trouble) {
    int right = 0;
    int refused = 0;
    int told = 0;
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    Integer onset = trouble.left < 1 ? (Integer) STEPS[2] : null;
    for (int trial = 0; trial < TRIALS; trial++) {
      NoiseTable table = new NoiseTable();
      Random random = new Random(trial);
      for (int s = 0; s < STEPS.length; s++) {
        Recording recording = Recording.of(NoiseTable.RATE_HZ, capture(s, trouble, random));
        table.capture(STEPS[s], recording);
      }
      try {
        var answer = table.answer();
        Integer found = answer.result().onsetStep();
        right += onset == null ? (found == null ? 1 : 0) : (onset.equals(found) ? 1 : 0);
        told += answer.findings().stream().anyMatch(one -> DOUBTS.contains(one.code())) ? 1 : 0;
        double read = answer.result().steps().get(2).lossDb();
        least = Math.min(least, read);
        most = Math.max(most, read);
      } catch (Refused impossible) {
        refused++;
      }
    }
    double all = TRIALS;
    return new Trials(right / all, refused / all, told / all, least, most, truth(trouble.left));
  }

  private static float[] capture(int step, Trouble trouble, Random random) {
    float[] wave = new float[(int) (trouble.seconds * NoiseTable.RATE_HZ)];
    double rms = LOWEST_RMS * Math.pow(2, step);
    double rumble = LOWEST_RMS * Decibels.toAmplitude(trouble.rumbleDb);
    double hum = LOWEST_RMS * Decibels.toAmplitude(trouble.humDb) * Math.sqrt(2);
    double pole = Math.exp(-2 * Math.PI * SHELF_HZ / NoiseTable.RATE_HZ);
    double start = 2 * Math.PI * random.nextDouble();
    double slow = 0;
    double below = 0;
    for (int n = 0; n < wave.length; n++) {
      double white = random.nextGaussian();
      slow = pole * slow + (1 - pole) * white;
      below = pole * below + (1 - pole) * random.nextGaussian();
      double source = rms * (step == 2 ? white - (1 - trouble.left) * slow : white);
      double mains = hum * Math.sin(2 * Math.PI * 50 * n / NoiseTable.RATE_HZ + start);
      double all = source + rumble * below + mains;
      wave[n] = (float) Math.max(-trouble.fullScale, Math.min(trouble.fullScale, all));
    }
    return wave;
  }

  /** Loss of the third step by the response of the digital shelf, averaged over every band, dB. */
  static double truth(double left) {
    List<Double> bands = ThirdOctaves.between(25, 2000).boxed().toList();
    List<Double> bass = new ArrayList<>();
    double middle = 0;
    int count = 0;
    for (double band : bands) {
      double power = power(band, left);
      if (band < 0.99 * 500) {
        bass.add(-Decibels.ofPower(power));
      } else {
        middle += power;
        count++;
      }
    }
    double most = Double.NEGATIVE_INFINITY;
    for (int b = 0; b + Losses.TOGETHER <= bass.size(); b++) {
      most = Math.max(most, Losses.mean(bass, b));
    }
    return most + Decibels.ofPower(middle / count);
  }

  private static double power(double band, double left) {
    int parts = 64;
    double low = band * Math.pow(10, -0.05);
    double width = band * BandTable.RELATIVE_WIDTH / parts;
    double pole = Math.exp(-2 * Math.PI * SHELF_HZ / NoiseTable.RATE_HZ);
    double sum = 0;
    for (int i = 0; i < parts; i++) {
      double w = 2 * Math.PI * (low + (i + 0.5) * width) / NoiseTable.RATE_HZ;
      double re = 1 - pole * Math.cos(w);
      double im = pole * Math.sin(w);
      double share = (1 - left) * (1 - pole) / (re * re + im * im);
      sum += Math.pow(1 - share * re, 2) + Math.pow(share * im, 2);
    }
    return sum / parts;
  }

  static Trouble seconds(double seconds) {
    Trouble trouble = new Trouble();
    trouble.seconds = seconds;
    return trouble;
  }

  static Trouble left(double db) {
    Trouble trouble = new Trouble();
    trouble.left = Decibels.toAmplitude(-db);
    return trouble;
  }

  static Trouble rumble(double db) {
    Trouble trouble = new Trouble();
    trouble.rumbleDb = db;
    return trouble;
  }

  static Trouble hum(double db) {
    Trouble trouble = new Trouble();
    trouble.humDb = db;
    return trouble;
  }

  /** The loudest step is held at so many times its RMS. */
  static Trouble held(double timesRms) {
    Trouble trouble = new Trouble();
    trouble.fullScale = timesRms * LOWEST_RMS * 4;
    return trouble;
  }

  private static String table(
      String what, String format, double[] values, DoubleFunction<Trouble> of) {
    StringBuilder out =
        new StringBuilder("| ")
            .append(what)
            .append(
                " | loss read, dB | right step, % | remarked on, % | refused, % | nothing held back:"
                    + " loss read, dB | right, % | remarked on, % | refused, % |\n"
                    + "|---|---|---|---|---|---|---|---|---|\n");
    for (double value : values) {
      out.append(String.format(Locale.ROOT, "| " + format + " | ", value))
          .append(run(of.apply(value)).row())
          .append(" | ")
          .append(run(of.apply(value).holdingNothingBack()).row())
          .append(" |\n");
    }
    return out.toString();
  }

  private static String losses() {
    StringBuilder out =
        new StringBuilder(
            """
            | held back far below, dB | loss in truth, dB | loss read, dB | right step, % | remarked on, % | refused, % |
            |---|---|---|---|---|---|
            """);
    for (double db : new double[] {12, 6, 3, 2, 1.5, 1, 0.5}) {
      Trials trials = run(left(db));
      out.append(String.format(Locale.ROOT, "| %.1f | %.1f | ", db, trials.truth()))
          .append(trials.row())
          .append(" |\n");
    }
    return out.toString();
  }

  static String page() {
    return String.format(
        Locale.ROOT,
        """
        # Where bass-rolloff fails

        Written by `RolloffStudy` from made-up captures whose answer is known: white noise at three volume
        steps, 6 dB apart, for a minute unless said otherwise, at 8 kHz, from the reference step on; at the
        third the source holds its bass back by a shelf of the first order at %.0f Hz that leaves half of it far
        below. The loss of that step is %.1f dB in truth, by the response of the shelf over every band. %d
        seeded trials a row; the loss read is that of the third step, least to most. The right half has a source
        that holds nothing back: a step named there is a false one.

        ## Small losses

        %s
        ## Short captures

        %s
        ## Rumble of the recorder or of a running engine

        Noise below %.0f Hz that is the same at every step: its power far below that against the noise of the
        lowest step. Bass that is the recorder's own at low steps looks like bass that falls behind later.

        %s
        ## Hum

        One line of 50 Hz, RMS against that of the noise of the lowest step up to 4 kHz.

        %s
        ## Recorder overdriven by the loudest step

        All that is beyond so many times the RMS of the loudest step is cut off.

        %s""",
        SHELF_HZ,
        truth(0.5),
        TRIALS,
        losses(),
        table(
            "length, s",
            "%.1f",
            new double[] {60, 30, 15, 8, 4, 2, 0.5, 0.3},
            RolloffStudy::seconds),
        SHELF_HZ,
        table("rumble, dB", "%.0f", new double[] {-20, -10, -6, -3, 0, 6}, RolloffStudy::rumble),
        table("hum, dB", "%.0f", new double[] {-40, -30, -25, -20, -10}, RolloffStudy::hum),
        table("times RMS", "%.1f", new double[] {4, 3, 2, 1.5, 1, 0.5}, RolloffStudy::held));
  }

  public static void main(String[] arguments) {
    System.out.print(page());
  }
}
