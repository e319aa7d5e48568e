package org.footwell.measured.arrival;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.measured.response.MicrophonePosition;
import org.footwell.recording.Recording;

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
      String channel,
      List<MicrophonePosition> microphones,
      List<Heard> all,
      Arithmetic arithmetic) {
    double weights = 0;
    double time = 0;
    double uncertainty = 0;
    double polarity = 0;
    double earliest = Double.POSITIVE_INFINITY;
    double latest = Double.NEGATIVE_INFINITY;
    List<Integer> polarities = new ArrayList<>();
    for (MicrophonePosition microphone : microphones) {
      Heard heard = heard(channel, microphone.id(), all);
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

  /** What was heard of a channel at a microphone position. */
  static Heard heard(String channel, String microphone, List<Heard> all) {
    return all.stream()
        .filter(one -> one.channel().equals(channel) && one.microphone().equals(microphone))
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
      String channel,
      String microphone,
      Recording recording,
      Arrival arrival,
      double arrivalMs,
      double uncertaintyMs,
      double envelopeMs) {

    Heard withoutPolarity() {
      return new Heard(
          channel,
          microphone,
          recording,
          arrival.withoutPolarity(),
          arrivalMs,
          uncertaintyMs,
          envelopeMs);
    }
  }
}
