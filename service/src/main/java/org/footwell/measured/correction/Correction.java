package org.footwell.measured.correction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.calculation.Arithmetic;
import org.footwell.measured.response.PositionPowers;
import org.footwell.physics.OctaveFractions;
import org.footwell.signal.Biquad;
import org.footwell.signal.Cascade;
import org.footwell.signal.CirclePoint;
import org.footwell.signal.PlayingBand;
import org.footwell.signal.Response;
import org.footwell.signal.SectionKind;

/** One channel: what was heard, what is wanted, and the filters between. */
final class Correction {

  /** Points to the octave. */
  static final int PER_OCTAVE = 24;

  /** Nearer to the noise nothing is boosted, dB; common practice. */
  static final double NEAR_NOISE_DB = 10;

  /** Points to the octave where the highest gain is looked for. */
  private static final int FINE = 48;

  private final double movingDipDb;
  private final double rateHz;
  private final double[] frequencies;
  private final double[] levels;
  private final double[] spread;
  private final double[] target;
  private final boolean[] boost;
  private final double offset;
  private final List<PeakFilter> filters;
  private final double[] sum;

  /**
   * Fits the filters of a channel.
   *
   * @param range the points corrected
   * @param heard what the positions heard, at all points
   * @param target the wanted curve as given, at all points
   * @param movingDipDb a dip with a larger spread between positions moves with the head
   * @param rateHz of the processor
   */
  Correction(
      double[] points,
      PlayingBand range,
      PositionPowers heard,
      double[] target,
      double movingDipDb,
      FilterScope scope,
      double rateHz,
      Arithmetic arithmetic) {
    this.movingDipDb = movingDipDb;
    this.rateHz = rateHz;
    int first = range.first();
    int last = range.last();
    frequencies = Arrays.copyOfRange(points, first, last + 1);
    levels = Arrays.copyOfRange(heard.mean().levelsDb(), first, last + 1);
    spread = heard.mean().spreadOfFormDb(first, last);
    boost = new boolean[frequencies.length];
    for (int i = 0; i < boost.length; i++) {
      boost[i] = spread[i] <= movingDipDb && heard.aboveNoiseDb(first + i) >= NEAR_NOISE_DB;
    }
    double[] wantedShape = Arrays.copyOfRange(target, first, last + 1);
    offset = offset(wantedShape);
    this.target = Arrays.stream(wantedShape).map(db -> db + offset).toArray();
    double[] gains = new double[frequencies.length];
    Arrays.setAll(gains, i -> this.target[i] - levels[i]);
    Wanted wanted = new Wanted(frequencies, gains, boost, scope, rateHz);
    filters = FilterFit.of(wanted, arithmetic);
    sum = wanted.sum(filters);
  }

  /** The x-th point: base ten, 1000 Hz lies between two. */
  static double pointHz(int x) {
    return OctaveFractions.midBandHz(x, PER_OCTAVE);
  }

  /** Median of level less curve where boosts are allowed, or anywhere if they nowhere are. */
  private double offset(double[] shape) {
    double[] allowed =
        IntStream.range(0, shape.length)
            .filter(i -> boost[i])
            .mapToDouble(i -> levels[i] - shape[i])
            .sorted()
            .toArray();
    double[] some =
        allowed.length > 0
            ? allowed
            : IntStream.range(0, shape.length)
                .mapToDouble(i -> levels[i] - shape[i])
                .sorted()
                .toArray();
    return (some[(some.length - 1) / 2] + some[some.length / 2]) / 2;
  }

  /** RMS error from one frequency to another, Hz; NaN if no point lies between. */
  private double error(double from, double to, boolean corrected) {
    double squares = 0;
    int count = 0;
    for (int i = 0; i < frequencies.length; i++) {
      if (frequencies[i] >= from && frequencies[i] < to) {
        double off = levels[i] - target[i] + (corrected ? sum[i] : 0);
        squares += off * off;
        count++;
      }
    }
    return Math.sqrt(squares / count);
  }

  ResponseCorrectionResult.ChannelCorrection channel(String id) {
    double[] highest = highest();
    int forbidden = 0;
    for (boolean allowed : boost) {
      forbidden += allowed ? 0 : 1;
    }
    return ResponseCorrectionResultChannelCorrectionBuilder.builder()
        .id(id)
        .fromHz(frequencies[0])
        .toHz(frequencies[frequencies.length - 1])
        .filterCount(filters.size())
        .errorBeforeDb(error(0, Double.MAX_VALUE, false))
        .errorAfterDb(error(0, Double.MAX_VALUE, true))
        .headroomDb(highest[0])
        .headroomHz(highest[0] == 0 ? null : (Double) highest[1])
        .targetOffsetDb(offset)
        .noBoostShare((double) forbidden / boost.length)
        .build();
  }

  /** What the filters lift at most, dB, and where, Hz: from 1 Hz to half the rate. */
  private double[] highest() {
    Cascade cascade = Cascade.of(filters.stream().map(one -> one.section(rateHz)).toList());
    double most = 0;
    double at = 0;
    int steps = (int) (FINE * Math.log(rateHz / 2) / Math.log(2));
    double[] grid =
        IntStream.range(0, steps).mapToDouble(x -> Math.pow(2, (double) x / FINE)).toArray();
    for (double f : grid) {
      double level = Response.levelDb(cascade.power(CirclePoint.of(f, rateHz)));
      // The response of a flat cascade is 0 but for rounding.
      if (level > Math.max(most, 1e-9)) {
        most = level;
        at = f;
      }
    }
    return new double[] {most, at};
  }

  List<ResponseCorrectionResult.Section> sections(String id) {
    List<ResponseCorrectionResult.Section> sections = new ArrayList<>();
    for (PeakFilter one : filters) {
      Biquad section = one.section(rateHz);
      sections.add(
          new ResponseCorrectionResult.Section(
              id,
              SectionKind.PEAK,
              one.frequencyHz(),
              one.q(),
              one.gainDb(),
              section,
              section.poleRadius()));
    }
    return sections;
  }

  List<ResponseCorrectionResult.Octave> octaves(String id) {
    List<ResponseCorrectionResult.Octave> octaves = new ArrayList<>();
    for (int n = -7; n <= 5; n++) {
      double middle = OctaveFractions.midBandHz(n, 1);
      double from = middle / Math.sqrt(OctaveFractions.RATIO);
      double to = middle * Math.sqrt(OctaveFractions.RATIO);
      double before = error(from, to, false);
      if (!Double.isNaN(before)) {
        octaves.add(new ResponseCorrectionResult.Octave(id, middle, before, error(from, to, true)));
      }
    }
    return octaves;
  }

  List<ResponseCorrectionResult.Point> points(String id) {
    List<ResponseCorrectionResult.Point> points = new ArrayList<>();
    for (int i = 0; i < frequencies.length; i++) {
      points.add(
          new ResponseCorrectionResult.Point(
              id,
              frequencies[i],
              levels[i],
              spread[i],
              target[i],
              sum[i],
              levels[i] + sum[i],
              boost[i]));
    }
    return points;
  }

  /** The deepest point of a dip that moves, or −1. */
  int movingDip() {
    int deepest = -1;
    for (int i = 0; i < frequencies.length; i++) {
      boolean dip = spread[i] > movingDipDb && depth(i) > 0;
      deepest = dip && (deepest < 0 || depth(i) > depth(deepest)) ? i : deepest;
    }
    return deepest;
  }

  /** How far a point lies below the wanted curve, dB. */
  double depth(int i) {
    return target[i] - levels[i];
  }

  double frequencyHz(int i) {
    return frequencies[i];
  }

  double spreadDb(int i) {
    return spread[i];
  }
}
