package org.footwell.electrical.amplifier;

import static org.footwell.calculation.Source.DEFINITION;
import static org.footwell.electrical.amplifier.RatingsFinding.BRIDGED_POWER_HIGHER;
import static org.footwell.electrical.amplifier.RatingsFinding.BRIDGED_POWER_LOWER;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.electrical.amplifier.AmplifierRatingsResult.Bridge;
import org.footwell.electrical.amplifier.RatingsFit.Point;
import org.footwell.parts.Amplifier;
import org.footwell.parts.Ratings;
import org.footwell.physics.Decibels;

/**
 * Two channels bridged: what the single channels promise, and what is published for the pair.
 *
 * @param expected from the single channels, each on half the load
 * @param published the source behind the bridged ratings, or null when they are too few for one
 * @param comparisons one for each bridged rating
 */
record BridgedPair(RatedAmplifier expected, RatedAmplifier published, List<Bridge> comparisons)
    implements SineSource {

  /** Published over expected power, dB. */
  private static final Formula.Of2 DIFFERENCE =
      Formula.of("difference_db", "10·lg(P/Pe)", "dB", DEFINITION)
          .with("P", "Pe", (p, expected) -> Decibels.ofPower(p / expected));

  /** Where the bridged ratings stand. */
  static final String AT = "/amplifier/bridged_ratings";

  /** Published powers closer than this agree: 12 %, common practice, no source. */
  private static final double AGREE_DB = 0.5;

  /** Bridged ratings may be missing; says where they disagree. */
  static BridgedPair of(Amplifier amplifier, Run run) {
    RatedAmplifier expected =
        RatedAmplifier.of(amplifier.ratings(), true, amplifier.supplyRegulated());
    if (amplifier.bridgedRatings() == null) {
      return new BridgedPair(expected, null, List.of());
    }
    Ratings ratings = amplifier.bridgedRatings().beside(amplifier.ratings());
    List<Point> points = RatedAmplifier.connected(ratings, true);
    RatedAmplifier published = null;
    if (RatingsFit.spread(points)) {
      StatedRatings stated = StatedRatings.of(ratings, true, amplifier.supplyRegulated(), AT, run);
      stated.remarkCharacter();
      published = stated.amplifier();
    }
    if (ratings.basis() != amplifier.ratings().basis() && ratings.basis() != Ratings.Basis.CLEAN) {
      run.find(AmplifierFinding.BASIS_NOT_CLEAN)
          .at(AT + "/basis")
          .value(ratings.basis().timesClean());
    }
    List<Bridge> comparisons = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Delivery delivery = expected.into(points.get(i).loadOhm(), ratings.supplyV());
      comparisons.add(compare(points.get(i), delivery, i, run));
    }
    return new BridgedPair(expected, published, comparisons);
  }

  private static Bridge compare(Point point, Delivery expected, int index, Run run) {
    double difference = run.apply(DIFFERENCE, point.powerW(), expected.powerW());
    boolean higher = Decibels.ofPower(point.powerW() / expected.highW()) > AGREE_DB;
    boolean lower = Decibels.ofPower(point.powerW() / expected.lowW()) < -AGREE_DB;
    if (higher || lower) {
      run.find(higher ? BRIDGED_POWER_HIGHER : BRIDGED_POWER_LOWER)
          .at(AT + "/points/" + index + "/power_w")
          .value(difference)
          .limit(higher ? AGREE_DB : -AGREE_DB)
          .with("by", Math.abs(difference))
          .with("published", point.powerW())
          .with("expected", expected.powerW())
          .with("load", point.loadOhm())
          .with("half", point.loadOhm() / 2);
    }
    return new Bridge(
        point.loadOhm(),
        point.powerW(),
        expected.powerW(),
        expected.lowW(),
        expected.highW(),
        difference);
  }

  /** The ratings that speak for a bridge: its own, or else those of the single channels. */
  RatedAmplifier known() {
    return published == null ? expected : published;
  }

  /** The lowest load anything is published for, two channels in a bridge counted as one, ohm. */
  double lowestOhm() {
    double lowest = expected.fit().lowest().loadOhm();
    for (Bridge bridge : comparisons) {
      lowest = Math.min(lowest, bridge.loadOhm());
    }
    return lowest;
  }

  /**
   * By the bridged ratings where they have a source of their own. A single one sets the level of
   * what the single channels promise; the promise stays within the bounds.
   */
  @Override
  public Delivery into(double loadOhm, double supplyV) {
    Delivery delivery = known().into(loadOhm, supplyV);
    if (published != null || comparisons.isEmpty()) {
      return delivery;
    }
    double db = comparisons.stream().mapToDouble(Bridge::differenceDb).average().orElseThrow();
    Delivery moved = delivery.times(Decibels.toPower(db));
    return new Delivery(
        moved.powerW(),
        Math.min(moved.lowW(), delivery.lowW()),
        Math.max(moved.highW(), delivery.highW()));
  }
}
