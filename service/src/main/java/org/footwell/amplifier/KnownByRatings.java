package org.footwell.amplifier;

import org.footwell.amplifier.Amplifier.Delivery;
import org.footwell.amplifier.RailMatch.Known;
import org.footwell.amplifier.Ratings.Basis;
import org.footwell.amplifier.Ratings.Point;
import org.footwell.calculation.Run;
import org.footwell.calculation.Texts;
import org.footwell.physics.Decibels;
import org.footwell.physics.Electricity;

/** What the published ratings of an amplifier say about it. */
final class KnownByRatings {

  /** Bounds closer than this are given, but not worth a word; common practice, no source. */
  private static final double WORTH_A_WORD_DB = 0.2;

  private static final String POINTS = "/ratings/points";

  /** Published powers are rounded: this much above the impossible is let pass. */
  private static final double ROUNDED = 1.01;

  private KnownByRatings() {}

  static Known of(RailMatchRequest q, Run run) {
    refuseImpossible(q, run);
    RatedAmplifier amplifier = RatedAmplifier.of(q.ratings(), q.bridged(), q.supplyRegulated());
    RatingsFit fit = amplifier.fit();
    if (fit.sagGrosslyNegative()) {
      run.refuse(AmplifierFault.SAG_GROSSLY_NEGATIVE)
          .at(POINTS)
          .given(Texts.forPeople(fit.sagOhm()) + " ohm of sag")
          .allowed("at most about twice the power into half the load");
      throw run.refused();
    }
    Delivery delivery = amplifier.into(q.loadOhm(), q.ratings().supplyV());
    explain(amplifier, q, run);
    remark(amplifier, delivery, q, run);
    boolean source = fit.hasSource() && fit.character() != RatingsFit.Look.POWER_LIMITED;
    boolean residual = fit.hasSource() && fit.points().size() > 2;
    return new Known(
        amplifier,
        q.ratings().supplyV(),
        delivery,
        null,
        source ? fit.openCircuitV() : null,
        source ? fit.sagOhm() : null,
        fit.character(),
        residual ? fit.rmsResidualDb() : null,
        residual ? fit.largestResidualDb() : null);
  }

  private static void refuseImpossible(RailMatchRequest q, Run run) {
    Ratings ratings = q.ratings();
    boolean single = ratings.singleSupplyBridge();
    if (single && ratings.bridged()) {
      run.refuse(AmplifierFault.BRIDGE_OF_BRIDGES)
          .at("/ratings/bridged")
          .given(true)
          .allowed("false");
    }
    if (single && q.bridged()) {
      run.refuse(AmplifierFault.BRIDGE_OF_BRIDGES).at("/bridged").given(true).allowed("false");
    }
    if (!RatingsFit.spread(RatedAmplifier.connected(ratings, q.bridged()))) {
      run.refuse(AmplifierFault.LOADS_WITHOUT_SPREAD)
          .at(POINTS)
          .allowed("loads of which the largest is at least a tenth above the smallest");
    }
    for (int i = 0; single && i < ratings.points().size(); i++) {
      checkAgainstSupply(ratings, i, run);
    }
    run.requireNoFaults();
  }

  /** Without a step-up converter the supply bounds every rating: sine, clipped sine, square. */
  private static void checkAgainstSupply(Ratings ratings, int index, Run run) {
    Point point = ratings.points().get(index);
    double sine = run.apply(RatedAmplifier.BRIDGE_LIMIT, ratings.supplyV(), point.loadOhm());
    double square = Basis.SQUARE_WAVE.timesClean() * sine;
    double clipped = Basis.THD_10.timesCleanMost() * sine;
    double power = point.powerW();
    String at = POINTS + "/" + index + "/power_w";
    if (power > ROUNDED * square) {
      run.refuse(AmplifierFault.RATING_IMPOSSIBLE)
          .at(at)
          .given(power)
          .allowed("at most " + Texts.forPeople(square) + " W, a square wave of the full supply");
    } else if (ratings.basis() != Basis.SQUARE_WAVE && power > ROUNDED * clipped) {
      run.find(AmplifierFinding.RATING_ONLY_SQUARE_WAVE).at(at).value(power).limit(sine);
    } else if (ratings.basis() == Basis.CLEAN && power > ROUNDED * sine) {
      run.find(AmplifierFinding.RATING_NOT_CLEAN).at(at).value(power).limit(sine);
    }
  }

  private static void explain(RatedAmplifier amplifier, RailMatchRequest q, Run run) {
    RatingsFit fit = amplifier.fit();
    double n = RatedAmplifier.channels(q.ratings(), q.bridged());
    for (Point point : q.ratings().points()) {
      double clean =
          run.apply(
              RatedAmplifier.CLEAN_POWER, n, point.powerW(), q.ratings().basis().timesClean());
      run.apply(Electricity.VOLTAGE, clean, n * point.loadOhm());
    }
    if (amplifier.modelled(q.loadOhm())) {
      fit.explain(run);
      run.apply(RatingsFit.LOADED, fit.openCircuitV(), fit.modelLoad(q.loadOhm()), fit.sagOhm());
    }
  }

  private static void remark(
      RatedAmplifier amplifier, Delivery delivery, RailMatchRequest q, Run run) {
    RatingsFit fit = amplifier.fit();
    Basis basis = q.ratings().basis();
    if (basis != Basis.CLEAN) {
      run.find(AmplifierFinding.BASIS_NOT_CLEAN).at("/ratings/basis").value(basis.timesClean());
    }
    if (q.ratings().bridged() && !q.bridged()) {
      run.find(AmplifierFinding.BRIDGED_RATINGS_HALVED).at("/ratings/bridged");
    }
    switch (fit.character()) {
      case ORDINARY -> {}
      case REGULATED -> run.find(AmplifierFinding.RATINGS_REGULATED).at(POINTS);
      case POWER_LIMITED -> run.find(AmplifierFinding.RATINGS_POWER_LIMITED).at(POINTS);
      case INCONSISTENT -> inconsistent(fit, run);
    }
    if (amplifier.outside(q.loadOhm())
        && Decibels.ofPower(delivery.highW() / delivery.lowW()) > WORTH_A_WORD_DB) {
      boolean below = q.loadOhm() < fit.lowest().loadOhm();
      run.find(AmplifierFinding.OUTSIDE_RATED_LOADS)
          .at("/load_ohm")
          .value(q.loadOhm())
          .limit((below ? fit.lowest() : fit.highest()).loadOhm())
          .with("low", delivery.lowW())
          .with("high", delivery.highW());
    }
  }

  private static void inconsistent(RatingsFit fit, Run run) {
    if (fit.sagNegative()) {
      run.find(AmplifierFinding.SAG_NEGATIVE).at(POINTS).value(fit.sagOhm()).limit(0);
    } else {
      run.find(AmplifierFinding.RATINGS_INCONSISTENT).at(POINTS);
    }
  }
}
