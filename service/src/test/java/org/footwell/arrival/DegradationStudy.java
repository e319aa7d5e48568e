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
      double excessPhase,
      double signalToNoiseDb,
      double lost) {

    String row() {
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
      double error = arrival.timeS() - room.arrivalS;
      errors.add(1000 * error);
      levels.add(arrival.signalToNoiseDb());
      covered += Math.abs(error) <= arrival.uncertaintyS() ? 1 : 0;
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
        excess / found,
        at(levels, 0.5),
        lost / (double) trials);
  }

  private static double at(List<Double> sorted, double share) {
    return sorted.isEmpty()
        ? Double.NaN
        : sorted.get((int) Math.round(share * (sorted.size() - 1)));
  }

  /** All tables in Markdown. */
  String tables() {
    StringBuilder out = new StringBuilder();
    out.append(
        """
        | loudspeaker | room | peak over noise, dB | SNR in band, dB | error, ms: median | middle 80 of 100 | within uncertainty, % | polarity right, % | sure of it, % | right when sure, % | by excess phase, % | not found, % |
        |---|---|---|---|---|---|---|---|---|---|---|---|
        """);
    for (Speaker speaker : Speaker.values()) {
      for (Place place : Place.values()) {
        for (int noise : new int[] {60, 40, 30, 25, 20, 15}) {
          Trials trials =
              run(
                  speaker,
                  room -> {
                    place.furnish(room);
                    room.peakToNoiseDb = noise;
                  });
          out.append(
              String.format(
                  Locale.ROOT,
                  "| %s | %s | %d | %.0f | %s |%n",
                  name(speaker),
                  name(place),
                  noise,
                  trials.signalToNoiseDb(),
                  trials.row()));
        }
      }
    }
    return out.toString();
  }

  /** How far the median error moves from that without a reflection, by level and distance. */
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
          Trials trials =
              run(
                  speaker,
                  room -> {
                    room.peakToNoiseDb = 60;
                    double sign = room.random.nextBoolean() ? 1 : -1;
                    room.reflections.add(
                        new Reflection(sign * Math.pow(10, level / 20.0), ms / 1000));
                  });
          double worst =
              Math.max(Math.abs(trials.tenthMs() - plain), Math.abs(trials.ninetiethMs() - plain));
          out.append(String.format(Locale.ROOT, " %.2f |", worst));
        }
        out.append('\n');
      }
    }
    return out.toString();
  }

  private static String name(Enum<?> constant) {
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
    };

    abstract void furnish(MadeUpRoom room);
  }

  public static void main(String[] arguments) {
    DegradationStudy study = new DegradationStudy(Integer.parseInt(arguments[0]));
    System.out.println(study.tables());
    System.out.println(study.reflections());
  }
}
