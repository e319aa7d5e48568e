package org.footwell.measured.arrival;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.footwell.measured.arrival.DegradationStudy.Place;
import org.footwell.measured.arrival.MadeUpRoom.Speaker;
import org.footwell.signal.ExponentialSweep;
import org.footwell.signal.Spectrum;
import org.footwell.signal.SweepDeconvolution;

/** How often a sweep of another length or kind than stated is found, by one recording alone. */
final class SweepStudy {

  private static final int TRIALS = 10;
  private static final double RATE = MadeUpRoom.RATE_HZ;
  private static final ExponentialSweep STATED = new ExponentialSweep(20, 20_000, 0.5);
  private static final double[] LONGER_MS = {0, 0.2, 0.5, 1, 2, 4};

  private final int samples = STATED.samples(RATE) + 24_000;
  private final SweepDeconvolution deconvolution =
      new SweepDeconvolution(STATED, RATE, samples, () -> {});

  /** A section of the page, in Markdown. */
  static String section() {
    return """
        ## A sweep of another length or kind

        20 to 20,000 Hz in half a second, one recording alone 60 dB over the noise, %d seeded trials a
        figure: in how many of 100 the length is found to be another (more than twice its uncertainty off),
        by how much longer it was than stated; 0 ms are false alarms. *Error* is the largest but one tenth
        of all trials. *Linear*: in how many a linear sweep is told by the sound before its start.

        %s"""
        .formatted(TRIALS, new SweepStudy().table());
  }

  private String table() {
    StringBuilder out = new StringBuilder("| loudspeaker | room | error, ms | stated, ms |");
    for (double ms : LONGER_MS) {
      out.append(String.format(Locale.ROOT, " %.1f ms |", ms));
    }
    out.append(" linear |\n|---|---|---|---|" + "---|".repeat(LONGER_MS.length + 1) + "\n");
    for (Speaker speaker : Speaker.values()) {
      for (Place place : Place.BY_REFLECTIONS) {
        row(speaker, place, out);
      }
    }
    return out.toString();
  }

  private void row(Speaker speaker, Place place, StringBuilder out) {
    List<Double> errors = new ArrayList<>();
    List<Double> stated = new ArrayList<>();
    StringBuilder found = new StringBuilder();
    for (double ms : LONGER_MS) {
      double longer = ms / 1000;
      double[] played = new ExponentialSweep(20, 20_000, STATED.durationS() + longer).signal(RATE);
      int others = 0;
      for (int trial = 0; trial < TRIALS; trial++) {
        double[] response = deconvolution.response(recorded(speaker, place, trial, played));
        double logRatio = Math.log(STATED.toHz() / STATED.fromHz());
        SweepFocus focus = SweepFocus.of(List.of(response), logRatio, deconvolution.range(), RATE);
        if (focus != null) {
          others += focus.otherLength() ? 1 : 0;
          errors.add(1000 * Math.abs(focus.longerS() - longer));
          stated.add(1000 * focus.uncertaintyS());
        }
      }
      found.append(String.format(Locale.ROOT, " %d |", 100 * others / TRIALS));
    }
    int linear = 0;
    for (int trial = 0; trial < TRIALS; trial++) {
      double[] recording = recorded(speaker, place, trial, linear());
      linear +=
          deconvolution.beforeStartDb(recording, RATE) > SweepPlausibility.TOO_MUCH_BEFORE_DB
              ? 1
              : 0;
    }
    errors.sort(null);
    stated.sort(null);
    out.append(
        String.format(
            Locale.ROOT,
            "| %s | %s | %s | %s |%s %d |%n",
            DegradationStudy.name(speaker),
            DegradationStudy.name(place),
            at(errors, 0.9),
            at(stated, 0.5),
            found,
            100 * linear / TRIALS));
  }

  private static String at(List<Double> sorted, double share) {
    return sorted.isEmpty()
        ? "cannot tell"
        : String.format(Locale.ROOT, "%.2f", sorted.get((int) (share * (sorted.size() - 1))));
  }

  private static double[] linear() {
    double[] sweep = new double[STATED.samples(RATE)];
    for (int n = 0; n < sweep.length; n++) {
      double t = n / RATE;
      double rise = (STATED.toHz() - STATED.fromHz()) / STATED.durationS();
      sweep[n] = Math.sin(2 * Math.PI * (STATED.fromHz() * t + rise * t * t / 2));
    }
    return sweep;
  }

  private double[] recorded(Speaker speaker, Place place, int trial, double[] played) {
    MadeUpRoom room = new MadeUpRoom(speaker, trial);
    place.furnish(room);
    room.peakToNoiseDb = 60;
    float[] response = room.response();
    double[] heard = new double[response.length];
    for (int n = 0; n < heard.length; n++) {
      heard[n] = response[n];
    }
    int size = Spectrum.sizeFor(heard.length + played.length);
    double[] all = Spectrum.of(heard, size).times(Spectrum.of(played, size)).signal();
    return Arrays.copyOf(all, samples);
  }

  public static void main(String[] arguments) {
    System.out.print(section());
  }
}
