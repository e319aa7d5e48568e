package org.footwell.electrical.amplifier;

import static org.footwell.electrical.amplifier.RatingsFit.Look.POWER_LIMITED;

import org.footwell.calculation.Run;
import org.footwell.electrical.amplifier.SineSource.Delivery;
import org.footwell.parts.Ratings;
import org.footwell.parts.Ratings.Basis;
import org.footwell.parts.Ratings.Point;
import org.footwell.physics.Decibels;
import org.footwell.physics.Electricity;

/**
 * An amplifier described by published ratings, as connected.
 *
 * @param bridged whether two channels are connected as a bridge
 * @param at JSON Pointer to the ratings
 */
record StatedRatings(Ratings ratings, boolean bridged, RatedAmplifier amplifier, String at, Run run)
    implements StatedAmplifier {

  /** Bounds closer than this are given, but not worth a word; common practice, no source. */
  private static final double WORTH_A_WORD_DB = 0.2;

  /** Says which of them are no clean powers. */
  static StatedRatings of(Ratings ratings, boolean bridged, boolean regulated, String at, Run run) {
    for (int i = 0; ratings.singleSupplyBridge() && i < ratings.points().size(); i++) {
      holdAgainstSupply(ratings, i, at + "/points/" + i + "/power_w", run);
    }
    RatedAmplifier amplifier = RatedAmplifier.of(ratings, bridged, regulated);
    return new StatedRatings(ratings, bridged, amplifier, at, run);
  }

  /** Without a step-up converter the supply bounds every rating: sine, clipped sine, square. */
  private static void holdAgainstSupply(Ratings ratings, int index, String at, Run run) {
    Point point = ratings.points().get(index);
    double sine = run.apply(RatedAmplifier.BRIDGE_LIMIT, ratings.supplyV(), point.loadOhm());
    double clipped = Basis.THD_10.timesCleanMost() * sine;
    double power = point.powerW();
    if (ratings.basis() != Basis.SQUARE_WAVE && power > RatingRules.ROUNDED * clipped) {
      run.find(AmplifierFinding.RATING_ONLY_SQUARE_WAVE).at(at).value(power).limit(sine);
    } else if (ratings.basis() == Basis.CLEAN && power > RatingRules.ROUNDED * sine) {
      run.find(AmplifierFinding.RATING_NOT_CLEAN).at(at).value(power).limit(sine);
    }
  }

  @Override
  public Delivery into(double loadOhm) {
    return amplifier.into(loadOhm, ratings.supplyV());
  }

  @Override
  public void explain(double loadOhm, String atLoad) {
    explainRatings();
    if (amplifier.modelled(loadOhm)) {
      RatingsFit fit = fit();
      fit.explain(run);
      run.apply(RatingsFit.LOADED, fit.openCircuitV(), fit.modelLoad(loadOhm), fit.sagOhm());
    }
    remarkReading();
    remarkCharacter();
    remarkOutside(loadOhm, atLoad);
  }

  RatingsFit fit() {
    return amplifier.fit();
  }

  /** Whether one source behind a resistance is worth naming. */
  private boolean hasSource() {
    return fit().hasSource() && fit().character() != POWER_LIMITED;
  }

  /** V RMS, or null where there is no source worth naming. */
  Double openCircuitV() {
    return hasSource() ? fit().openCircuitV() : null;
  }

  /** Ohm, or null where there is no source worth naming. */
  Double sagOhm() {
    return hasSource() ? fit().sagOhm() : null;
  }

  /** Whether more ratings than a source has unknowns leave something to compare with it. */
  boolean hasResidual() {
    return fit().hasSource() && fit().points().size() > 2;
  }

  /** Notes the clean voltage of each rating. */
  void explainRatings() {
    double n = RatedAmplifier.channels(ratings, bridged);
    for (Point point : ratings.points()) {
      double clean =
          run.apply(RatedAmplifier.CLEAN_POWER, n, point.powerW(), ratings.basis().timesClean());
      run.apply(Electricity.VOLTAGE, clean, n * point.loadOhm());
    }
  }

  /** Notes how the source was found, where it is worth naming. */
  void explainSource() {
    if (hasSource()) {
      fit().explain(run);
    }
  }

  /** Says how the ratings had to be read. */
  void remarkReading() {
    Basis basis = ratings.basis();
    if (basis != Basis.CLEAN) {
      run.find(AmplifierFinding.BASIS_NOT_CLEAN).at(at + "/basis").value(basis.timesClean());
    }
    if (ratings.bridged() && !bridged) {
      run.find(AmplifierFinding.BRIDGED_RATINGS_HALVED).at(at + "/bridged");
    }
  }

  /** Says what the ratings look like. */
  void remarkCharacter() {
    switch (fit().character()) {
      case ORDINARY -> {}
      case REGULATED -> run.find(AmplifierFinding.RATINGS_REGULATED).at(at + "/points");
      case POWER_LIMITED -> run.find(AmplifierFinding.RATINGS_POWER_LIMITED).at(at + "/points");
      case INCONSISTENT -> inconsistent();
    }
  }

  private void inconsistent() {
    if (fit().sagNegative()) {
      run.find(AmplifierFinding.SAG_NEGATIVE).at(at + "/points").value(fit().sagOhm()).limit(0);
    } else {
      run.find(AmplifierFinding.RATINGS_INCONSISTENT).at(at + "/points");
    }
  }

  /** Says when a load lies beyond the rated ones, and how well its power is known. */
  void remarkOutside(double loadOhm, String atLoad) {
    Delivery delivery = into(loadOhm);
    boolean wide = Decibels.ofPower(delivery.highW() / delivery.lowW()) > WORTH_A_WORD_DB;
    if (amplifier.outside(loadOhm) && wide) {
      boolean below = loadOhm < fit().lowest().loadOhm();
      run.find(AmplifierFinding.OUTSIDE_RATED_LOADS)
          .at(atLoad)
          .value(loadOhm)
          .limit((below ? fit().lowest() : fit().highest()).loadOhm())
          .with("low", delivery.lowW())
          .with("high", delivery.highW());
    }
  }
}
