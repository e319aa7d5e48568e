package org.footwell.measured.arrival;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.footwell.measured.arrival.MadeUpRoom.Reflection;
import org.footwell.measured.arrival.MadeUpRoom.Speaker;
import org.footwell.measured.arrival.Trials.Outcome;

/**
 * Degrades made-up responses step by step until arrivals fail, and writes the tables of the method
 * page. Seeded: the same tables every time.
 */
final class DegradationStudy {

  /** Trials a row where a wrong word on polarity must be rarer than one in so many. */
  private static final int AMONG_MODES = 1000;

  private static final Map<List<Object>, Trials> AMONG = new HashMap<>();

  /** Peak over noise, dB. */
  private static final List<Double> LEVELS_DB =
      IntStream.rangeClosed(0, 20).mapToObj(step -> 60 - 2.5 * step).toList();

  final int trials;
  private final Map<List<Object>, Map<Double, Trials>> atLevels = new HashMap<>();
  private final Map<List<Object>, Trials> reflected = new HashMap<>();

  DegradationStudy(int trials) {
    this.trials = trials;
  }

  /** Trials side by side, each with its own seed, so the order they end in does not matter. */
  Trials run(Speaker speaker, Consumer<MadeUpRoom> degrade) {
    return trials(
            speaker, degrade, room -> Collections.singletonList(Outcome.of(room, room.response())))
        .get(0);
  }

  /** Every trial gives one outcome for each kind; result: one entry a kind. */
  private List<Trials> trials(
      Speaker speaker, Consumer<MadeUpRoom> degrade, Function<MadeUpRoom, List<Outcome>> heard) {
    List<List<Outcome>> all =
        IntStream.range(0, trials)
            .parallel()
            .mapToObj(
                trial -> {
                  MadeUpRoom room = new MadeUpRoom(speaker, trial);
                  room.polarity = trial % 2 == 0 ? 1 : -1;
                  degrade.accept(room);
                  return heard.apply(room);
                })
            .toList();
    return IntStream.range(0, all.get(0).size())
        .mapToObj(kind -> Trials.of(all.stream().map(outcomes -> outcomes.get(kind)).toList()))
        .toList();
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
        for (double noise : new double[] {60, 40, 30, 25, 20}) {
          Trials trials = atLevels(speaker, place).get(noise);
          out.append(
              String.format(
                  Locale.ROOT,
                  "| %s | %s | %.0f | %s | %s |%n",
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
    return inNoises(speaker, place, List.of(noise)).get(0);
  }

  /** The same rooms with the same noise at several levels, dB: each room is made once. */
  List<Trials> inNoises(Speaker speaker, Place place, List<Double> levels) {
    return inNoises(speaker, place::furnish, levels);
  }

  List<Trials> inNoises(Speaker speaker, Consumer<MadeUpRoom> degrade, List<Double> levels) {
    return trials(
        speaker,
        degrade,
        room ->
            room.responses(levels).stream().map(response -> Outcome.of(room, response)).toList());
  }

  /** All levels that the tables need. */
  private Map<Double, Trials> atLevels(Speaker speaker, Place place) {
    return atLevels.computeIfAbsent(
        List.of(speaker, place),
        key -> {
          List<Trials> all = inNoises(speaker, place, LEVELS_DB);
          Map<Double, Trials> byLevel = new HashMap<>();
          for (int i = 0; i < all.size(); i++) {
            byLevel.put(LEVELS_DB.get(i), all.get(i));
          }
          return byLevel;
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
        Map<Double, Trials> all = atLevels(speaker, place);
        double clean = all.get(60.0).medianMs();
        String sample = "over 60 dB";
        String uncertainty = "over 60 dB";
        boolean sampleHolds = true;
        boolean uncertaintyHolds = true;
        for (double noise : LEVELS_DB) {
          Trials trials = all.get(noise);
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
    return reflected.computeIfAbsent(
        List.of(speaker, db, ms),
        key ->
            run(
                speaker,
                room -> {
                  room.peakToNoiseDb = 60;
                  double sign = room.random.nextBoolean() ? 1 : -1;
                  room.reflections.add(new Reflection(sign * Math.pow(10, db / 20), ms / 1000));
                }));
  }

  /** What a loudspeaker that plays where a cabin has its modes can be told by, in Markdown. */
  private static String modes() {
    StringBuilder out =
        new StringBuilder(
            """
            | loudspeaker | room | error, ms: median | middle 80 of 100 | within uncertainty, % | sure of its polarity, % | sure and wrong, trials |
            |---|---|---|---|---|---|---|
            """);
    for (Speaker speaker : new Speaker[] {Speaker.WOOFER, Speaker.SUBWOOFER}) {
      for (Place place : new Place[] {Place.FREE_FIELD, Place.CABIN, Place.MODAL_CABIN}) {
        Trials some = amongModes(speaker, place);
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

  /** As many trials as the page shows; kept, since a test asserts on them too. */
  static Trials amongModes(Speaker speaker, Place place) {
    return AMONG.computeIfAbsent(
        List.of(speaker, place), key -> new DegradationStudy(AMONG_MODES).among(speaker, place));
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
        %s## One reflection

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
            modes(),
            PairStudy.section(),
            reflections(),
            FirstSoundStudy.section(this),
            SweepStudy.section());
  }

  public static void main(String[] arguments) {
    System.out.print(new DegradationStudy(Integer.parseInt(arguments[0])).page());
  }
}
