package org.footwell.measured.arrival;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.footwell.measured.arrival.MadeUpRoom.Speaker;
import org.footwell.measured.response.LeftAndRight;

/** How often it can be told whether two woofers among modes play with each other. */
final class PairStudy {

  /** Trials of the row where a wrong word must be rarer than one in so many, and of the others. */
  private static final int MANY = 1000;

  private static final int SOME = 100;

  private static Trials among;

  private PairStudy() {}

  /** What is made worse. */
  static final class Trouble {
    double peakToNoiseDb = 60;

    /** Length of the cabin as stated over that in truth. */
    double statedOverTrue = 1;

    /** How far the right loudspeaker is from where it should be along the cabin, m. */
    double asideM;
  }

  /** What many trials gave. */
  record Trials(int told, int wrong) {}

  static Trials run(int trials, Consumer<Trouble> worse) {
    Trouble trouble = new Trouble();
    worse.accept(trouble);
    List<ArrivalTimesResult.Pair> pairs =
        IntStream.range(0, trials)
            .parallel()
            .mapToObj(trial -> session(trial, polarity(trial), trouble).result().pairs().get(0))
            .toList();
    int told = 0;
    int wrong = 0;
    for (int trial = 0; trial < trials; trial++) {
      boolean sure = pairs.get(trial).likeness() >= 0.8;
      told += sure ? 1 : 0;
      wrong += sure && pairs.get(trial).polarity() != polarity(trial) ? 1 : 0;
    }
    return new Trials(told, wrong);
  }

  /** The many without trouble; kept, since a test asserts on them too. */
  static Trials amongModes() {
    if (among == null) {
      among = run(MANY, trouble -> {});
    }
    return among;
  }

  private static int polarity(int trial) {
    return trial % 2 == 0 ? 1 : -1;
  }

  /** Two woofers of one kind on both sides of a modal cabin, the right one with this polarity. */
  static Session session(int seed, int polarity, Trouble trouble) {
    MadeUpRoom left = new MadeUpRoom(Speaker.WOOFER, seed).ofAnyWoofer();
    MadeUpRoom right = new MadeUpRoom(Speaker.WOOFER, seed + 1_000_000L);
    Random random = left.random;
    left.cabin = ModalCabin.any(random);
    right.cabin = left.cabin.otherSide(random, trouble.asideM);
    right.sections = left.sections;
    right.arrivalS = left.arrivalS;
    right.polarity = polarity;
    left.peakToNoiseDb = trouble.peakToNoiseDb;
    right.peakToNoiseDb = trouble.peakToNoiseDb;
    Session session = Session.plain().channel("b");
    session.pairs.add(new LeftAndRight("a", "b"));
    session.draft.cabinLengthM(trouble.statedOverTrue * left.cabin.lengthM());
    return session.take("a", "m", left.response()).take("b", "m", right.response());
  }

  /** A section of the page, in Markdown. */
  static String section() {
    return """
        ## Left against right among modes

        Two woofers of any kind in a modal cabin, one to the left and one to the right, alike and to 5 cm
        equally far from the front, 60 dB over the noise unless said otherwise; half of the right ones are
        inverted. *Told* from a likeness of 0.8 on; what is not told is `pair-unsure`.

        | trouble | seeded trials | told, %% | told and wrong, trials |
        |---|---|---|---|
        %s

        """
        .formatted(rows());
  }

  private static String rows() {
    StringBuilder out = new StringBuilder();
    out.append(row("none", MANY, amongModes()));
    for (double noise : new double[] {40, 30, 20}) {
      out.append(row("%.0f dB over the noise", noise, trouble -> trouble.peakToNoiseDb = noise));
    }
    for (double stated : new double[] {0.7, 0.85, 1.2}) {
      out.append(
          row(
              "length stated %.2f of what it is",
              stated, trouble -> trouble.statedOverTrue = stated));
    }
    for (double aside : new double[] {0.2, 0.5, 1}) {
      out.append(row("one %.1f m nearer to the front or rear", aside, t -> t.asideM = aside));
    }
    return out.toString().stripTrailing();
  }

  private static String row(String name, double value, Consumer<Trouble> worse) {
    return row(String.format(Locale.ROOT, name, value), SOME, run(SOME, worse));
  }

  private static String row(String name, int count, Trials trials) {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %.1f | %d |%n",
        name,
        count,
        100.0 * trials.told() / count,
        trials.wrong());
  }
}
