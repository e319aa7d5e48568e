package org.footwell.arrival;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.footwell.arrival.ArrivalTimesResult.Method;
import org.footwell.arrival.MadeUpRoom.Reflection;
import org.footwell.arrival.MadeUpRoom.Speaker;

/**
 * Degrades made-up responses step by step until arrivals fail, and writes the tables of the method
 * page. Seeded: the same tables every time.
 */
final class DegradationStudy {

  /** Trials a row where a wrong word on polarity must be rarer than one in so many. */
  private static final int AMONG_MODES = 1000;

  private final int trials;

  DegradationStudy(int trials) {
    this.trials = trials;
  }

  /** What many trials of one kind gave; times in ms, sorted. */
  record Trials(
      double medianMs,
      double tenthMs,
      double ninetiethMs,
      double covered,
      double rightPolarity,
      double surePolarity,
      double sureAndRight,
      int sureAndWrong,
      double excessPhase,
      double signalToNoiseDb,
      double lost,
      double early,
      double reflectionStronger) {

    String row() {
      if (Double.isNaN(medianMs)) {
        return "- | - | - | - | - | - | - | 100";
      }
      return String.format(
          Locale.ROOT,
          "%.3f | %.3f to %.3f | %.0f | %.0f | %.0f | %.0f | %.0f | %.0f",
          medianMs,
          tenthMs,
          ninetiethMs,
          100 * covered,
          100 * rightPolarity,
          100 * surePolarity,
          100 * sureAndRight,
          100 * excessPhase,
          100 * lost);
    }

    /** Whether nine of ten are found, and of these eight of ten lie this near to a time. */
    boolean holds(double aroundMs, double withinMs) {
      return lost <= 0.1
          && Math.abs(tenthMs - aroundMs) <= withinMs
          && Math.abs(ninetiethMs - aroundMs) <= withinMs;
    }

    /** Whether nine of ten are found and lie within the uncertainty they state. */
    boolean honest() {
      return lost <= 0.1 && covered >= 0.9;
    }
  }

  Trials run(Speaker speaker, Consumer<MadeUpRoom> degrade) {
    List<Double> errors = new ArrayList<>();
    List<Double> levels = new ArrayList<>();
    int lost = 0;
    int covered = 0;
    int right = 0;
    int sure = 0;
    int sureAndRight = 0;
    int excess = 0;
    int early = 0;
    int stronger = 0;
    ArrivalFinder finder = new ArrivalFinder(MadeUpRoom.RATE_HZ);
    for (int trial = 0; trial < trials; trial++) {
      MadeUpRoom room = new MadeUpRoom(speaker, trial);
      room.polarity = trial % 2 == 0 ? 1 : -1;
      degrade.accept(room);
      float[] response = room.response();
      double[] doubles = new double[response.length];
      for (int n = 0; n < doubles.length; n++) {
        doubles[n] = response[n];
      }
      Arrival arrival = finder.find(doubles, null, new Equalised.Filters(null, null, null));
      if (arrival == null) {
        lost++;
        continue;
      }
      double error = arrival.timeS() - room.directS();
      errors.add(1000 * error);
      levels.add(arrival.signalToNoiseDb());
      covered += Math.abs(error) <= arrival.uncertaintyS() ? 1 : 0;
      early += error < -arrival.uncertaintyS() ? 1 : 0;
      stronger += arrival.reflectionDb() != null && arrival.reflectionDb() > 0 ? 1 : 0;
      boolean correct = arrival.polarity() == room.polarity;
      right += correct ? 1 : 0;
      boolean confident = arrival.confidence() >= 0.5;
      sure += confident ? 1 : 0;
      sureAndRight += confident && correct ? 1 : 0;
      excess += arrival.method() == Method.EXCESS_PHASE ? 1 : 0;
    }
    errors.sort(null);
    levels.sort(null);
    double found = Math.max(1, errors.size());
    return new Trials(
        at(errors, 0.5),
        at(errors, 0.1),
        at(errors, 0.9),
        covered / found,
        right / found,
        sure / found,
        sure == 0 ? 1 : sureAndRight / (double) sure,
        sure - sureAndRight,
        excess / found,
        at(levels, 0.5),
        lost / (double) trials,
        early / found,
        stronger / found);
  }

  private static double at(List<Double> sorted, double share) {
    return sorted.isEmpty()
        ? Double.NaN
        : sorted.get((int) Math.round(share * (sorted.size() - 1)));
  }

  /** What arrivals are like at several levels of noise, in Markdown. */
  String table() {
    StringBuilder out =
        new StringBuilder(
            """
            | loudspeaker | room | peak over noise, dB | SNR in the band, dB | error, ms: median | middle 80 of 100 | within uncertainty, % | polarity right, % | sure of it, % | right when sure, % | by excess phase, % | not found, % |
            |---|---|---|---|---|---|---|---|---|---|---|---|
            """);
    for (Speaker speaker : Speaker.values()) {
      for (Place place : Place.BY_REFLECTIONS) {
        for (int noise : new int[] {60, 40, 30, 25, 20}) {
          Trials trials = inNoise(speaker, place, noise);
          out.append(
              String.format(
                  Locale.ROOT,
                  "| %s | %s | %d | %s | %s |%n",
                  name(speaker),
                  name(place),
                  noise,
                  whole(trials.signalToNoiseDb()),
                  trials.row()));
        }
      }
    }
    return out.toString();
  }

  private static String whole(double number) {
    return Double.isNaN(number) ? "-" : String.format(Locale.ROOT, "%.0f", number);
  }

  Trials inNoise(Speaker speaker, Place place, double noise) {
    return run(
        speaker,
        room -> {
          place.furnish(room);
          room.peakToNoiseDb = noise;
        });
  }

  /** The least signal-to-noise ratios at which arrivals still hold, in Markdown. */
  String failures() {
    StringBuilder out =
        new StringBuilder(
            """
            | loudspeaker | room | SNR in the band down to which errors stay within one sample of their median at 60 dB | SNR down to which they stay within the stated uncertainty |
            |---|---|---|---|
            """);
    for (Speaker speaker : Speaker.values()) {
      for (Place place : Place.BY_REFLECTIONS) {
        double clean = inNoise(speaker, place, 60).medianMs();
        String sample = "over 60 dB";
        String uncertainty = "over 60 dB";
        boolean sampleHolds = true;
        boolean uncertaintyHolds = true;
        for (double noise = 60; noise >= 10; noise -= 2.5) {
          Trials trials = inNoise(speaker, place, noise);
          sampleHolds &= trials.holds(clean, 1000 / MadeUpRoom.RATE_HZ);
          uncertaintyHolds &= trials.honest();
          String level = whole(trials.signalToNoiseDb()) + " dB";
          sample = sampleHolds ? level : sample;
          uncertainty = uncertaintyHolds ? level : uncertainty;
        }
        out.append(
            String.format(
                Locale.ROOT,
                "| %s | %s | %s | %s |%n",
                name(speaker),
                name(place),
                sample,
                uncertainty));
      }
    }
    return out.toString();
  }

  /** How far one reflection moves arrivals, ms, by its level and distance, in Markdown. */
  String reflections() {
    StringBuilder out = new StringBuilder("| loudspeaker | level, dB |");
    double[] distances = {0.1, 0.2, 0.5, 1, 2, 5, 10};
    for (double ms : distances) {
      out.append(String.format(Locale.ROOT, " %.1f ms |", ms));
    }
    out.append("\n|---|---|" + "---|".repeat(distances.length) + "\n");
    for (Speaker speaker : Speaker.values()) {
      double plain = run(speaker, room -> room.peakToNoiseDb = 60).medianMs();
      for (int level : new int[] {-12, -6, -3, 0, 3, 6, 9}) {
        out.append(String.format(Locale.ROOT, "| %s | %d |", name(speaker), level));
        for (double ms : distances) {
          Trials trials = reflected(speaker, level, ms);
          double worst =
              Math.max(Math.abs(trials.tenthMs() - plain), Math.abs(trials.ninetiethMs() - plain));
          out.append(String.format(Locale.ROOT, " %.2f |", worst));
        }
        out.append('\n');
      }
    }
    return out.toString();
  }

  /** One reflection of either sign, so much stronger and later, 60 dB over the noise. */
  Trials reflected(Speaker speaker, double db, double ms) {
    return run(
        speaker,
        room -> {
          room.peakToNoiseDb = 60;
          double sign = room.random.nextBoolean() ? 1 : -1;
          room.reflections.add(new Reflection(sign * Math.pow(10, db / 20), ms / 1000));
        });
  }

  /** What a loudspeaker that plays where a cabin has its modes can be told by, in Markdown. */
  static String modes(int trials) {
    DegradationStudy study = new DegradationStudy(trials);
    StringBuilder out =
        new StringBuilder(
            """
            | loudspeaker | room | error, ms: median | middle 80 of 100 | within uncertainty, % | sure of its polarity, % | sure and wrong, trials |
            |---|---|---|---|---|---|---|
            """);
    for (Speaker speaker : new Speaker[] {Speaker.WOOFER, Speaker.SUBWOOFER}) {
      for (Place place : new Place[] {Place.FREE_FIELD, Place.CABIN, Place.MODAL_CABIN}) {
        Trials some = study.among(speaker, place);
        out.append(
            String.format(
                Locale.ROOT,
                "| %s | %s | %.2f | %.2f to %.2f | %.1f | %.1f | %d |%n",
                speaker == Speaker.WOOFER ? "any woofer" : name(speaker),
                name(place),
                some.medianMs(),
                some.tenthMs(),
                some.ninetiethMs(),
                100 * some.covered(),
                100 * some.surePolarity(),
                some.sureAndWrong()));
      }
    }
    return out.toString();
  }

  /** A low loudspeaker 60 dB above the noise; woofers of any kind. */
  Trials among(Speaker speaker, Place place) {
    return run(
        speaker,
        room -> {
          if (speaker == Speaker.WOOFER) {
            room.ofAnyWoofer();
          }
          place.furnish(room);
          room.peakToNoiseDb = 60;
        });
  }

  static String name(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** What stands around. */
  enum Place {
    FREE_FIELD {
      @Override
      void furnish(MadeUpRoom room) {}
    },
    CABIN {
      @Override
      void furnish(MadeUpRoom room) {
        room.inCabin(0.5, -8);
      }
    },
    HARD_CABIN {
      @Override
      void furnish(MadeUpRoom room) {
        room.inCabin(0.9, -4);
      }
    },
    MODAL_CABIN {
      @Override
      void furnish(MadeUpRoom room) {
        room.cabin = ModalCabin.any(room.random);
      }
    };

    /** Those whose reflections copy the direct sound, at any frequency. */
    static final List<Place> BY_REFLECTIONS = List.of(FREE_FIELD, CABIN, HARD_CABIN);

    abstract void furnish(MadeUpRoom room);
  }

  /** The page with all tables. */
  String page() {
    return """
        # Where arrival-times fails

        Written by `DegradationStudy` from made-up responses whose answer is known: five loudspeakers,
        each with its crossover, delayed by fractions of a sample at 48 kHz, %d seeded trials a row, no
        band and no filters stated. *Free field* is the direct sound alone. *Cabin* has eight early
        reflections of up to half its size within 8 ms and a tail of 80 ms, 8 dB weaker in energy than
        the rest; *hard cabin* has reflections of up to 0.9 and a tail 4 dB weaker. Noise is white.
        Errors are arrival minus answer; positive is late.

        ## Noise

        %s
        ## Where noise makes it fail

        In nine of ten trials, the outer tenths left out. The distance of the median itself from the
        answer is in the table above: it is the same for loudspeakers of the same kind and cancels
        between them.

        %s
        ## Woofers among the modes of a cabin

        %d seeded trials a row, 60 dB over the noise. *Any woofer* has a driver of 40 to 90 Hz, a high-pass of
        40 to 100 Hz and a low-pass of 150 to 400 Hz, each of the second or fourth order. A *modal cabin* is a
        hard box, 1.6 to 3.4 by 1.2 to 1.6 by 0.9 to 1.4 m, as the sum of its modes up to 1.6 kHz, in which
        sound takes 0.08 to 0.4 s to die away; the loudspeaker is anywhere on a side, the microphone where a
        head would be. There modes of either sign make up the sound, so its polarity is hardly ever told and
        its arrival is uncertain by a period. Put the microphone at the cone to tell it.

        %s
        ## One reflection

        The furthest that a single reflection, of either sign and 60 dB over the noise, moves eight of
        ten arrivals, ms. Where the figure is the distance itself, the reflection was taken for the
        direct sound.

        %s
        %s
        %s"""
        .formatted(
            trials,
            table(),
            failures(),
            AMONG_MODES,
            modes(AMONG_MODES),
            reflections(),
            FirstSoundStudy.section(),
            SweepStudy.section());
  }

  public static void main(String[] arguments) {
    System.out.print(new DegradationStudy(Integer.parseInt(arguments[0])).page());
  }
}
