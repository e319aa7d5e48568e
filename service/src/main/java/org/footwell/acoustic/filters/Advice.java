package org.footwell.acoustic.filters;

import static org.footwell.acoustic.filters.FiltersFinding.DELAY_SUMS_BETTER;
import static org.footwell.acoustic.filters.FiltersFinding.POLARITY_SUMS_BETTER;

import java.util.List;
import org.footwell.acoustic.filters.CrossoverFiltersResult.Handover;
import org.footwell.acoustic.filters.SummedWays.Change;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;

/**
 * One piece of advice on a handover at most: the delay where it is worth one, else the polarity. It
 * changes all ways on one side of the crossing together, so that no other handover is touched, and
 * is given only if it makes the sum of all ways flatter.
 */
final class Advice {

  /** Less is no reason to change a polarity, dB; common practice. */
  private static final double POLARITY_GAIN_DB = 0.5;

  /** Less is no reason to set a delay, dB; the same. */
  private static final double DELAY_GAIN_DB = 1;

  /** Less, against either polarity without delay, is no reason to change both, dB; the same. */
  private static final double BOTH_GAIN_DB = 2;

  private final SummedWays sum;
  private final Sums sums;
  private final Run run;

  Advice(SummedWays sum, Sums sums, Run run) {
    this.sum = sum;
    this.sums = sums;
    this.run = run;
  }

  void on(Handover h, DesignedWay lower, DesignedWay upper) {
    int above = above(h, lower, upper);
    int below = (1 << sum.ways().size()) - 1 - above;
    if (isWorthADelay(h)) {
      boolean delayed = h.bestDelayMs() > 0;
      Change change =
          new Change(delayed ? above : below, h.bestPolarity(), Math.abs(h.bestDelayMs()));
      if (flattensTheSum(change, h)) {
        delay(h, change, delayed ? upper : lower);
        return;
      }
    }
    if (h.spreadDb() - h.invertedSpreadDb() > POLARITY_GAIN_DB) {
      boolean fewerBelow = Integer.bitCount(below) < Integer.bitCount(above);
      Change change = Change.inverting(fewerBelow ? below : above);
      if (flattensTheSum(change, h)) {
        polarity(h, change, fewerBelow ? lower : upper);
      }
    }
  }

  private static boolean isWorthADelay(Handover h) {
    double overGiven = h.spreadDb() - h.bestSpreadDb();
    double overInverted = h.invertedSpreadDb() - h.bestSpreadDb();
    return h.bestPolarity() > 0
        ? overGiven >= DELAY_GAIN_DB && overInverted >= POLARITY_GAIN_DB
        : overGiven >= BOTH_GAIN_DB && overInverted >= BOTH_GAIN_DB;
  }

  /** The ways above a crossing, as bits. */
  private int above(Handover h, DesignedWay lower, DesignedWay upper) {
    int bits = 0;
    for (DesignedWay way : sum.ways()) {
      boolean isAbove = way.index() == upper.index() || way.middleHz() > h.crossingHz();
      bits |= isAbove && way.index() != lower.index() ? way.bit() : 0;
    }
    return bits;
  }

  /** Flatter around the crossing or in the whole band that is judged, and less flat in neither. */
  private boolean flattensTheSum(Change change, Handover h) {
    double[] around = LevelRange.grid(h.bandFromHz(), h.bandToHz(), sum.narrow());
    double whole = sums.range(Change.NONE).spreadDb() - sums.range(change).spreadDb();
    double near = range(Change.NONE, around).spreadDb() - range(change, around).spreadDb();
    return Math.min(whole, near) >= -HandoverSearch.SAME_DB
        && Math.max(whole, near) > HandoverSearch.SAME_DB;
  }

  private LevelRange range(Change change, double[] grid) {
    return LevelRange.of(f -> sum.levelDb(f, change, 0), grid, run);
  }

  private void polarity(Handover h, Change change, DesignedWay at) {
    run.find(POLARITY_SUMS_BETTER)
        .at(at.pointer() + "/polarity")
        .value(h.spreadDb())
        .limit(h.invertedSpreadDb())
        .with("frequency", h.crossingHz())
        .own("lower", h.lower())
        .own("upper", h.upper())
        .own("ways", names(change));
  }

  private void delay(Handover h, Change change, DesignedWay at) {
    run.find(DELAY_SUMS_BETTER)
        .at(at.pointer() + "/delay_ms")
        .value(h.spreadDb())
        .limit(h.bestSpreadDb())
        .own("ways", names(change))
        .with("delay", change.delayMs())
        .with(
            "inverted",
            change.polarity() < 0 ? Phrase.of(FilterWords.WITH_POLARITY) : Phrase.nothing())
        .with("frequency", h.crossingHz())
        .own("lower", h.lower())
        .own("upper", h.upper());
  }

  private List<String> names(Change change) {
    return sum.ways().stream()
        .filter(way -> (change.ways() & way.bit()) != 0)
        .map(DesignedWay::id)
        .toList();
  }
}
