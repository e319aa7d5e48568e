package org.footwell.measured.balance;

import java.util.ArrayList;
import java.util.List;
import org.footwell.measured.response.LeftAndRight;

/** Left against right. */
final class Pairs {

  private final List<BandLevels> all;
  private final double[] trims;
  private final BalanceRemarks remarks;

  Pairs(List<BandLevels> all, double[] trims, BalanceRemarks remarks) {
    this.all = all;
    this.trims = trims;
    this.remarks = remarks;
  }

  List<LevelAndBalanceResult.Pair> all(List<LeftAndRight> pairs) {
    List<LevelAndBalanceResult.Pair> results = new ArrayList<>();
    for (int i = 0; i < pairs.size(); i++) {
      LevelAndBalanceResult.Pair result = of(pairs.get(i));
      remarks.onPair(i, result);
      results.add(result);
    }
    return results;
  }

  private LevelAndBalanceResult.Pair of(LeftAndRight pair) {
    int l = index(pair.left());
    int r = index(pair.right());
    BandLevels left = all.get(l);
    BandLevels right = all.get(r);
    int from = Math.max(left.band().first(), right.band().first());
    int to = Math.min(left.band().last(), right.band().last());
    if (from > to) {
      return new LevelAndBalanceResult.Pair(pair.left(), pair.right(), null, null, null, null);
    }
    double trims = this.trims[l] - this.trims[r];
    double sum = 0;
    int worst = from;
    double largest = 0;
    for (int i = from; i <= to; i++) {
      double difference = left.levelDb(i) - right.levelDb(i);
      sum += difference;
      if (Math.abs(difference + trims) > Math.abs(largest)) {
        worst = i;
        largest = difference + trims;
      }
    }
    double mean = sum / (to - from + 1);
    return new LevelAndBalanceResult.Pair(
        pair.left(), pair.right(), mean, mean + trims, largest, left.frequencies()[worst]);
  }

  private int index(String id) {
    for (int c = 0; c < all.size(); c++) {
      if (all.get(c).id().equals(id)) {
        return c;
      }
    }
    throw new IllegalStateException(id);
  }
}
