package org.footwell.factory.rolloff;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.List;
import java.util.stream.IntStream;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.physics.Decibels;

/** How far bands fall behind the reference range, against the reference step. */
final class Losses {

  /** So many neighbouring bands are averaged before anything is judged. */
  static final int TOGETHER = 3;

  static final Source NOISE =
      Source.of(
          "Relative standard deviation 1/√(B·T) of the power of Gaussian noise in a band B over a"
              + " time T; J. S. Bendat and A. G. Piersol, Random Data; from memory, not checked"
              + " against a copy");

  /** Loss from a band's level L over that of the reference range M, at the reference step and here. */
  static final Formula.Of4 LOSS =
      Formula.of("loss_db", "(L0 − M0) − (L − M)", "dB", DEFINITION)
          .with("L0", "M0", "L", "M", (l0, m0, l, m) -> (l0 - m0) - (l - m));

  /** 95 % of the difference of two band levels in dB; B in Hz, T in s. */
  static final Formula.Of2 CHANCE =
      Formula.of("uncertainty_db", "2·√2·(10/ln 10)/√(B·T)", "dB", NOISE)
          .with("B", "T", (b, t) -> 2 * Math.sqrt(2) * 10 / Math.log(10) / Math.sqrt(b * t));

  private final BandTable table;
  private final int reference;
  private final ReferenceRange range;
  private final double thresholdDb;

  /** Of a table against one of its steps; what is behind by less than the threshold keeps up. */
  Losses(BandTable table, int reference, ReferenceRange range, double thresholdDb) {
    this.table = table;
    this.reference = reference;
    this.range = range;
    this.thresholdDb = thresholdDb;
  }

  int bassBands() {
    return range.bassBands();
  }

  int referenceIndex() {
    return reference;
  }

  /** Level of the reference range at a step: the mean power of its bands, dB. */
  double middleDb(int step) {
    return Decibels.ofPower(
        IntStream.rangeClosed(range.first(), range.last())
            .mapToDouble(b -> Decibels.toPower(table.level(step, b)))
            .average()
            .orElseThrow());
  }

  /** Losses of the bass bands at a step, dB. */
  List<Double> at(int step) {
    double middle = middleDb(step);
    double before = middleDb(reference);
    return IntStream.range(0, bassBands())
        .mapToObj(
            b -> (Double) LOSS.at(table.level(reference, b), before, table.level(step, b), middle))
        .toList();
  }

  /** Notes the loss of one band for the workings. */
  void note(int step, int band, Arithmetic arithmetic) {
    arithmetic.apply(
        LOSS,
        table.level(reference, band),
        middleDb(reference),
        table.level(step, band),
        middleDb(step));
  }

  /** Where the mean of neighbouring bands is largest: the place of the first of them. */
  static int worst(List<Double> losses) {
    int worst = 0;
    for (int b = 1; b + TOGETHER <= losses.size(); b++) {
      worst = mean(losses, b) > mean(losses, worst) ? b : worst;
    }
    return worst;
  }

  static double mean(List<Double> losses, int from) {
    return losses.subList(from, from + TOGETHER).stream()
        .mapToDouble(Double::doubleValue)
        .average()
        .orElseThrow();
  }

  /** Frequency below which the loss reaches the threshold, between bands on a log axis, Hz. */
  double belowHz(List<Double> losses) {
    int band = worst(losses) + TOGETHER / 2;
    while (band < losses.size() && losses.get(band) >= thresholdDb) {
      band++;
    }
    double above = table.bandsHz().get(band);
    if (band == 0) {
      return above;
    }
    double loss = band == losses.size() ? 0 : losses.get(band);
    double before = losses.get(band - 1);
    double below = table.bandsHz().get(band - 1);
    if (before <= thresholdDb) {
      return above;
    }
    double part = (before - thresholdDb) / (before - loss);
    return below * Math.pow(above / below, part);
  }

  /** What chance may do to the loss of so many of the lowest bands together, dB; 0 for a table. */
  double chanceDb(int bands) {
    if (table.durationS() == 0) {
      return 0;
    }
    double width =
        table.bandsHz().stream().limit(bands).mapToDouble(f -> BandTable.RELATIVE_WIDTH * f).sum();
    return CHANCE.at(width, table.durationS());
  }

  /** How long captures must be for chance to do no more than the threshold, s. */
  double neededS(int bands) {
    return table.durationS() * Math.pow(chanceDb(bands) / thresholdDb, 2);
  }
}
