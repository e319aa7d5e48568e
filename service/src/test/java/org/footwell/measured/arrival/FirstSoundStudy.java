package org.footwell.measured.arrival;

import java.util.List;
import java.util.Locale;
import org.footwell.measured.arrival.DegradationStudy.Place;
import org.footwell.measured.arrival.MadeUpRoom.Speaker;

/** How often something before the direct sound, or after it, is taken for it, and what is said. */
final class FirstSoundStudy {

  private static final int TRIALS = 100;
  private static final double[] DISTANCES_MS = {0.1, 0.2, 0.5, 1, 2, 5, 10};

  private FirstSoundStudy() {}

  /** A section of the page, in Markdown; the reflections are those of the page before it. */
  static String section(DegradationStudy page) {
    return """
        ## What is taken for the first sound

        The first peak of the envelope that is not more than 8 dB below the strongest. What rings before a
        sound whose band is limited here without moving it in time stays below that: %d seeded trials a row,
        share of arrivals earlier than the answer by more than the stated uncertainty, %%.

        %s
        The same of recordings that were cut off at a frequency without moving anything in time before they came
        here, %d trials a row. A fall steeper than any crossover is left out where it can be told, which takes a
        window of many periods: with doors and woofers it cannot, and the delay of a filter that is none makes
        them early.

        %s
        Share of %d trials a figure in which `reflection-stronger` is told, and after the stroke of those
        whose stated uncertainty does not cover the error, %%: below a period of the band, and from 9 dB on, a
        reflection is taken for the first sound and nothing says so.

        %s"""
        .formatted(TRIALS, early(), page.trials, cutOff(page), page.trials, told(page));
  }

  private static String early() {
    StringBuilder out =
        new StringBuilder(
            """
            | loudspeaker | room | 60 dB over the noise | 40 dB | 30 dB |
            |---|---|---|---|---|
            """);
    DegradationStudy study = new DegradationStudy(TRIALS);
    for (Speaker speaker : Speaker.values()) {
      for (Place place : Place.BY_REFLECTIONS) {
        out.append("| " + DegradationStudy.name(speaker) + " | " + DegradationStudy.name(place));
        for (Trials trials : study.inNoises(speaker, place, List.of(60.0, 40.0, 30.0))) {
          out.append(String.format(Locale.ROOT, " | %.0f", 100 * trials.early()));
        }
        out.append(" |\n");
      }
    }
    return out.toString();
  }

  private static String cutOff(DegradationStudy page) {
    StringBuilder out =
        new StringBuilder(
            """
            | loudspeaker | cut off at, Hz | room | 60 dB over the noise | 40 dB | 30 dB |
            |---|---|---|---|---|---|
            """);
    for (Speaker speaker : List.of(Speaker.TWEETER, Speaker.FULL_RANGE, Speaker.DOOR)) {
      double cutOffHz = speaker == Speaker.DOOR ? 1000 : 10_000;
      for (Place place : Place.BY_REFLECTIONS) {
        out.append(
            String.format(
                Locale.ROOT,
                "| %s | %.0f | %s",
                DegradationStudy.name(speaker),
                cutOffHz,
                DegradationStudy.name(place)));
        for (Trials trials : cutOff(page, speaker, place, cutOffHz)) {
          out.append(String.format(Locale.ROOT, " | %.0f", 100 * trials.early()));
        }
        out.append(" |\n");
      }
    }
    return out.toString();
  }

  /** At 60, 40 and 30 dB over the noise. */
  static List<Trials> cutOff(
      DegradationStudy study, Speaker speaker, Place place, double cutOffHz) {
    return study.inNoises(
        speaker,
        room -> {
          place.furnish(room);
          room.cutOffHz = cutOffHz;
        },
        List.of(60.0, 40.0, 30.0));
  }

  private static String told(DegradationStudy page) {
    StringBuilder out = new StringBuilder("| loudspeaker | level, dB |");
    for (double ms : DISTANCES_MS) {
      out.append(String.format(Locale.ROOT, " %.1f ms |", ms));
    }
    out.append("\n|---|---|" + "---|".repeat(DISTANCES_MS.length) + "\n");
    for (Speaker speaker : new Speaker[] {Speaker.TWEETER, Speaker.DOOR, Speaker.FULL_RANGE}) {
      for (int level : new int[] {-3, 3, 6, 9}) {
        out.append(
            String.format(Locale.ROOT, "| %s | %d |", DegradationStudy.name(speaker), level));
        for (double ms : DISTANCES_MS) {
          Trials trials = page.reflected(speaker, level, ms);
          double outside = 100 * (1 - trials.covered());
          double told = 100 * trials.reflectionStronger();
          out.append(String.format(Locale.ROOT, " %.0f / %.0f |", told, outside));
        }
        out.append('\n');
      }
    }
    return out.toString();
  }
}
