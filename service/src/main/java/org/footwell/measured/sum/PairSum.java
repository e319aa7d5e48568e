package org.footwell.measured.sum;

import java.util.List;
import java.util.stream.IntStream;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.measured.sum.LoudspeakerSumResult.Sum;
import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;
import org.footwell.signal.Response;

/** How two channels add around their crossover, over the microphone positions. */
final class PairSum {

  /** Loss of two equal sines apart by φ degrees, against both in phase; 0 or less. */
  static final Formula.Of1 LOSS =
      Formula.of(
              "sum_loss_db",
              "20·lg|cos(φ/2)|, no less than −100",
              "dB",
              Source.of("Sum of two sines of one frequency"))
          .with("φ", PairSum::loss);

  /** Deeper is a hole, dB. */
  static final double DEEPEST_DB = -100;

  private static final int PER_OCTAVE = 24;

  private final List<PairOfResponses> positions;
  private final double[] frequencies;

  PairSum(List<PairOfResponses> positions, double[] frequencies) {
    this.positions = positions;
    this.frequencies = frequencies;
  }

  private static double loss(double degrees) {
    double cosine = Math.abs(Math.cos(Math.toRadians(degrees) / 2));
    return Math.max(DEEPEST_DB, Decibels.ofAmplitude(cosine));
  }

  /** Points of a band so many octaves to either side, Hz: odd in number, the crossover in the middle. */
  static double[] frequencies(double crossoverHz, double octaves) {
    int half = Math.max(2, (int) Math.round(octaves * PER_OCTAVE));
    return IntStream.rangeClosed(-half, half)
        .mapToDouble(i -> crossoverHz * Math.pow(2, octaves * i / half))
        .toArray();
  }

  double highestHz() {
    return frequencies[frequencies.length - 1];
  }

  /** The channels with the upper so much later, and with its polarity or the other. */
  Sum trial(double delayMs, int polarity) {
    return new Sum(delayMs, polarity, lossDb(positions, delayMs, polarity));
  }

  /** Power of the sum against that of both in phase, over band and positions, dB. */
  double lossDb(List<PairOfResponses> some, double delayMs, int polarity) {
    double sum = 0;
    double inPhase = 0;
    for (int i = 0; i < frequencies.length; i++) {
      double turn = -2 * Math.PI * frequencies[i] * delayMs / 1000;
      for (PairOfResponses one : some) {
        sum += one.weight() * one.sumPower(i, polarity, turn);
        inPhase += one.weight() * one.inPhasePower(i);
      }
    }
    double ratio = Math.max(sum / inPhase, Decibels.toPower(DEEPEST_DB));
    return Math.min(0, Decibels.ofPower(ratio));
  }

  /** Phase of the upper less that of the lower at a point, over some positions, degrees. */
  static double phaseDeg(List<PairOfResponses> some, int i) {
    return cross(some, i).phaseDeg();
  }

  private static Phasor cross(List<PairOfResponses> some, int i) {
    Phasor sum = new Phasor(0, 0);
    for (PairOfResponses one : some) {
      sum = sum.plus(one.cross(i).times(one.weight()));
    }
    return sum;
  }

  /** Levels and phase at a point, as they are and as they would be. */
  LoudspeakerSumResult.Point point(int i, Sum best) {
    double f = frequencies[i];
    double turn = -2 * Math.PI * f * best.delayMs() / 1000;
    double weights = 0;
    double[] powers = new double[5];
    for (PairOfResponses one : positions) {
      double w = one.weight();
      weights += w;
      powers[0] += w * one.lowerPower(i);
      powers[1] += w * one.upperPower(i);
      powers[2] += w * one.sumPower(i, 1, 0);
      powers[3] += w * one.sumPower(i, best.polarity(), turn);
      powers[4] += w * one.inPhasePower(i);
    }
    double[] levels = new double[powers.length];
    for (int k = 0; k < levels.length; k++) {
      levels[k] = Response.levelDb(Math.max(0, powers[k] / weights));
    }
    return new LoudspeakerSumResult.Point(
        f, levels[0], levels[1], phaseDeg(positions, i), levels[2], levels[3], levels[4]);
  }
}
