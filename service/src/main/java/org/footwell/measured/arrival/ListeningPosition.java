package org.footwell.measured.arrival;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.measured.arrival.ArrivalTimesRequest.RecordedChannel;
import org.footwell.measured.response.MicrophonePosition;

/**
 * One channel at the listening position: what the microphone positions heard, by their weights.
 *
 * @param arrivalMs weighted mean
 * @param uncertaintyMs weighted mean: errors of one loudspeaker go the same way everywhere
 * @param spreadMs largest minus smallest
 * @param polarity the one that weighs more
 * @param confidence of the polarity; what disagrees takes away from it
 * @param agree whether the polarity is the same everywhere
 */
record ListeningPosition(
    double arrivalMs,
    double uncertaintyMs,
    double spreadMs,
    int polarity,
    double confidence,
    boolean agree) {

  private static final Formula.Of2 MEAN =
      Formula.of("arrival_ms", "Σ(w·t)/Σw", "ms", Source.DEFINITION)
          .with("Σ(w·t)", "Σw", (sum, weights) -> sum / weights);

  static ListeningPosition of(
      RecordedChannel channel, ArrivalTimesRequest q, List<Heard> all, Arithmetic arithmetic) {
    double weights = 0;
    double time = 0;
    double uncertainty = 0;
    double polarity = 0;
    double earliest = Double.POSITIVE_INFINITY;
    double latest = Double.NEGATIVE_INFINITY;
    List<Integer> polarities = new ArrayList<>();
    for (MicrophonePosition microphone : q.microphones()) {
      Heard heard = heard(channel, microphone, all);
      Arrival arrival = heard.arrival();
      double weight = microphone.weight();
      weights += weight;
      time += weight * heard.arrivalMs();
      uncertainty += weight * heard.uncertaintyMs();
      polarity += weight * arrival.polarity() * arrival.confidence();
      earliest = Math.min(earliest, heard.arrivalMs());
      latest = Math.max(latest, heard.arrivalMs());
      polarities.add(arrival.polarity());
    }
    return new ListeningPosition(
        arithmetic.apply(MEAN, time, weights),
        uncertainty / weights,
        latest - earliest,
        polarity < 0 ? -1 : 1,
        Math.abs(polarity) / weights,
        polarities.stream().distinct().count() == 1);
  }

  private static Heard heard(
      RecordedChannel channel, MicrophonePosition microphone, List<Heard> all) {
    return all.stream()
        .filter(
            heard ->
                heard.take().channel().equals(channel.id())
                    && heard.take().microphone().equals(microphone.id()))
        .findFirst()
        .orElseThrow();
  }

  /**
   * One recording with what was found in it, relative to its time reference.
   *
   * @param arrivalMs after the reference, ms
   * @param envelopeMs the same of the envelope, ms
   */
  record Heard(
      ArrivalTimesRequest.Take take,
      Arrival arrival,
      double arrivalMs,
      double uncertaintyMs,
      double envelopeMs) {

    Heard withoutPolarity() {
      return new Heard(take, arrival.withoutPolarity(), arrivalMs, uncertaintyMs, envelopeMs);
    }
  }
}
