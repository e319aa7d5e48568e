package org.footwell.measured.arrival;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Predicate;
import org.footwell.calculation.Built;
import org.footwell.measured.arrival.ArrivalTimesResult.Method;

/** What many trials of one kind gave; times in ms, shares 0 to 1 of those found. */
@Built
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

  /** One arrival beside the answer. */
  record Outcome(Arrival arrival, double directS, int polarity) {

    /** Of a response of this room, its band and filters not stated; null where nothing is found. */
    static Outcome of(MadeUpRoom room, float[] response) {
      double[] doubles = new double[response.length];
      for (int n = 0; n < doubles.length; n++) {
        doubles[n] = response[n];
      }
      Arrival arrival =
          new ArrivalFinder(MadeUpRoom.RATE_HZ)
              .find(doubles, null, new Equalised.Filters(null, null, null));
      return arrival == null ? null : new Outcome(arrival, room.directS(), room.polarity);
    }

    private double errorS() {
      return arrival.timeS() - directS;
    }

    private boolean right() {
      return arrival.polarity() == polarity;
    }

    private boolean sure() {
      return arrival.confidence() >= 0.5;
    }
  }

  /** All together; null stands for one that was not found. */
  static Trials of(List<Outcome> all) {
    List<Outcome> found = all.stream().filter(Objects::nonNull).toList();
    List<Double> errors = found.stream().map(one -> 1000 * one.errorS()).sorted().toList();
    List<Double> levels =
        found.stream().map(one -> one.arrival().signalToNoiseDb()).sorted().toList();
    List<Outcome> sure = found.stream().filter(Outcome::sure).toList();
    return TrialsBuilder.builder()
        .medianMs(at(errors, 0.5))
        .tenthMs(at(errors, 0.1))
        .ninetiethMs(at(errors, 0.9))
        .covered(share(found, one -> Math.abs(one.errorS()) <= one.arrival().uncertaintyS()))
        .rightPolarity(share(found, Outcome::right))
        .surePolarity(share(found, Outcome::sure))
        .sureAndRight(sure.isEmpty() ? 1 : share(sure, Outcome::right))
        .sureAndWrong((int) sure.stream().filter(one -> !one.right()).count())
        .excessPhase(share(found, one -> one.arrival().method() == Method.EXCESS_PHASE))
        .signalToNoiseDb(at(levels, 0.5))
        .lost((all.size() - found.size()) / (double) all.size())
        .early(share(found, one -> one.errorS() < -one.arrival().uncertaintyS()))
        .reflectionStronger(
            share(
                found,
                one -> one.arrival().reflectionDb() != null && one.arrival().reflectionDb() > 0))
        .build();
  }

  private static double share(List<Outcome> all, Predicate<Outcome> which) {
    return all.stream().filter(which).count() / (double) Math.max(1, all.size());
  }

  private static double at(List<Double> sorted, double share) {
    return sorted.isEmpty()
        ? Double.NaN
        : sorted.get((int) Math.round(share * (sorted.size() - 1)));
  }

  /** Columns of a table. */
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
