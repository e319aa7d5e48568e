package org.footwell.factory.rolloff;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.footwell.calculation.Arithmetic;
import org.footwell.factory.rolloff.BassRolloffRequest.BandAtStep;
import org.footwell.factory.rolloff.BassRolloffRequest.NoiseCapture;
import org.footwell.physics.ThirdOctaves;

/** Reads the levels of a request, given or recorded. */
final class BandTableReader {

  private BandTableReader() {}

  static BandTable read(BassRolloffRequest q, Arithmetic arithmetic) {
    return q.levels() != null ? ofLevels(q) : ofCaptures(q, arithmetic);
  }

  /** Where what was measured stands in the request. */
  static String list(BassRolloffRequest q) {
    return q.levels() != null ? "/levels" : "/captures";
  }

  /** The volume steps that were measured, rising. */
  static List<Integer> steps(BassRolloffRequest q) {
    Stream<Integer> measured =
        q.levels() != null
            ? q.levels().stream().map(BandAtStep::volumeStep)
            : q.captures().stream().map(NoiseCapture::volumeStep);
    return measured.distinct().sorted().toList();
  }

  /** The bands that were measured in Hz, exact and rising. */
  static List<Double> bandsHz(BassRolloffRequest q) {
    return q.levels() == null
        ? capturedBandsHz(q)
        : q.levels().stream()
            .map(one -> ThirdOctaves.exactHz(one.frequencyHz()))
            .distinct()
            .sorted()
            .toList();
  }

  /** The bands that captures are asked for. */
  static List<Double> capturedBandsHz(BassRolloffRequest q) {
    return ThirdOctaves.between(q.lowestHz(), q.referenceToHz()).boxed().toList();
  }

  private static BandTable ofLevels(BassRolloffRequest q) {
    Map<Integer, Map<Double, Double>> rows = new TreeMap<>();
    Map<Integer, Integer> places = new TreeMap<>();
    for (int i = 0; i < q.levels().size(); i++) {
      BandAtStep one = q.levels().get(i);
      places.putIfAbsent(one.volumeStep(), i);
      rows.computeIfAbsent(one.volumeStep(), step -> new TreeMap<>())
          .put(ThirdOctaves.exactHz(one.frequencyHz()), one.levelDb());
    }
    return new BandTable(
        steps(q),
        bandsHz(q),
        rows.values().stream().map(row -> List.copyOf(row.values())).toList(),
        List.copyOf(places.values()),
        0);
  }

  private static BandTable ofCaptures(BassRolloffRequest q, Arithmetic arithmetic) {
    List<Double> bands = capturedBandsHz(q);
    Map<Integer, Integer> places = new TreeMap<>();
    for (int i = 0; i < q.captures().size(); i++) {
      places.put(q.captures().get(i).volumeStep(), i);
    }
    double[] asked = bands.stream().mapToDouble(Double::doubleValue).toArray();
    List<List<Double>> levels = new ArrayList<>();
    for (int place : places.values()) {
      arithmetic.checkDeadline();
      levels.add(BandTable.levels(q.captures().get(place).recording(), asked));
    }
    return new BandTable(
        steps(q),
        bands,
        levels,
        List.copyOf(places.values()),
        q.captures().stream()
            .mapToDouble(capture -> BandTable.seconds(capture.recording()))
            .min()
            .orElseThrow());
  }
}
