package org.footwell.factory.rolloff;

import static org.footwell.factory.rolloff.RolloffFault.BANDS_ABOVE_HALF_RATE;
import static org.footwell.factory.rolloff.RolloffFault.BAND_LEVEL_MISSING;
import static org.footwell.factory.rolloff.RolloffFault.CAPTURE_SHORTER_THAN_BAND;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Phrase;
import org.footwell.factory.rolloff.BassRolloffRequest.BandAtStep;
import org.footwell.factory.rolloff.BassRolloffRequest.NoiseCapture;
import org.footwell.physics.ThirdOctaves;
import org.footwell.recording.Recording;
import org.footwell.recording.RecordingRules;

/** Reads the levels of a request, given or recorded, and refuses those that make no table. */
final class BandTableReader {

  /** With less, a band's level is mostly chance. */
  private static final double LEAST_WIDTH_BY_TIME = 2;

  private BandTableReader() {}

  static BandTable read(BassRolloffRequest q, Run run) {
    return q.levels() != null ? ofLevels(q.levels(), run) : ofCaptures(q, run);
  }

  private static BandTable ofLevels(List<BandAtStep> given, Run run) {
    Map<Integer, Map<Double, Double>> rows = new TreeMap<>();
    Map<Integer, Integer> places = new TreeMap<>();
    Set<Double> bands = new TreeSet<>();
    for (int i = 0; i < given.size(); i++) {
      BandAtStep one = given.get(i);
      double exact = ThirdOctaves.exactHz(one.frequencyHz());
      bands.add(exact);
      places.putIfAbsent(one.volumeStep(), i);
      Map<Double, Double> row = rows.computeIfAbsent(one.volumeStep(), s -> new TreeMap<>());
      if (row.put(exact, one.levelDb()) != null) {
        run.refuse(CoreFault.DUPLICATE)
            .at("/levels/" + i)
            .given(
                Phrase.of(StepWords.BAND_AT_STEP)
                    .with("frequency", one.frequencyHz())
                    .with("step", one.volumeStep()));
      }
    }
    rows.forEach(
        (step, row) ->
            bands.stream()
                .filter(band -> !row.containsKey(band))
                .forEach(
                    band ->
                        run.refuse(BAND_LEVEL_MISSING)
                            .at("/levels")
                            .given(
                                Phrase.of(StepWords.BAND_AT_STEP)
                                    .with("frequency", (double) Math.round(band))
                                    .with("step", step))));
    run.requireNoFaults();
    return new BandTable(
        List.copyOf(rows.keySet()),
        List.copyOf(bands),
        rows.values().stream().map(row -> List.copyOf(row.values())).toList(),
        List.copyOf(places.values()),
        0);
  }

  private static BandTable ofCaptures(BassRolloffRequest q, Run run) {
    double[] bands = ThirdOctaves.between(q.lowestHz(), q.referenceToHz()).toArray();
    RecordingRules rules = new RecordingRules(run);
    Map<Integer, Integer> places = new TreeMap<>();
    double shortest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < q.captures().size(); i++) {
      NoiseCapture capture = q.captures().get(i);
      places.put(capture.volumeStep(), i);
      String at = "/captures/" + i + "/recording";
      if (rules.check(capture.recording(), at) && bands.length > 0) {
        shortest = Math.min(shortest, usable(capture.recording(), bands, at, run));
      }
    }
    run.requireNoFaults();
    List<List<Double>> levels = new ArrayList<>();
    for (int place : places.values()) {
      run.checkDeadline();
      levels.add(BandTable.levels(q.captures().get(place).recording(), bands));
    }
    return new BandTable(
        List.copyOf(places.keySet()),
        Arrays.stream(bands).boxed().toList(),
        levels,
        List.copyOf(places.values()),
        shortest);
  }

  /** Length in s of a capture; refuses one that cannot hold the bands. */
  private static double usable(Recording recording, double[] bands, String at, Run run) {
    double rate = recording.rateHz();
    double upper = BandTable.upperEdgeHz(bands[bands.length - 1]);
    if (upper >= rate / 2) {
      run.refuse(BANDS_ABOVE_HALF_RATE)
          .at(at)
          .given(rate + " Hz")
          .allowed(Allowed.only(2 * upper + " Hz"));
    }
    double seconds = recording.samples().size() / rate;
    double needed = LEAST_WIDTH_BY_TIME / (BandTable.RELATIVE_WIDTH * bands[0]);
    if (seconds < needed) {
      run.refuse(CAPTURE_SHORTER_THAN_BAND)
          .at(at)
          .given(seconds + " s")
          .allowed(Allowed.atLeast(needed, "s"));
    }
    return seconds;
  }
}
