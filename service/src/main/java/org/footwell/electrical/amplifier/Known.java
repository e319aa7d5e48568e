package org.footwell.electrical.amplifier;

import org.footwell.calculation.Run;
import org.footwell.electrical.amplifier.Amplifier.Delivery;
import org.footwell.electrical.amplifier.RailMatchResult.LimitedBy;

/** The amplifier, however described, with what follows from the description alone. */
record Known(
    Amplifier amplifier,
    double supplyV,
    Delivery delivery,
    LimitedBy limitedBy,
    Double openCircuitV,
    Double sagOhm,
    RatingsFit.Look character,
    Double residualRmsDb,
    Double residualLargestDb) {

  static Known of(RailMatchRequest q, Run run) {
    return q.rails() != null ? byRails(q, run) : byRatings(q, run);
  }

  private static Known byRails(RailMatchRequest q, Run run) {
    StatedRails stated = StatedRails.of(q.rails(), q.bridged(), q.supplyRegulated(), "/rails", run);
    if (q.supplyV() != null) {
      stated.judge(q.supplyV());
    }
    StatedRails.Clean clean = stated.clean(q.loadOhm());
    return new Known(
        stated.stage(),
        q.rails().supplyV(),
        Delivery.exactly(clean.powerW()),
        clean.currentFirst() ? LimitedBy.CURRENT : LimitedBy.VOLTAGE,
        stated.openCircuitV(),
        stated.stage().sagOhm(),
        null,
        null,
        null);
  }

  private static Known byRatings(RailMatchRequest q, Run run) {
    StatedRatings.refuseBridging(q.ratings(), q.bridged(), run);
    StatedRatings stated =
        StatedRatings.of(q.ratings(), q.bridged(), q.supplyRegulated(), "/ratings", run);
    stated.explain(q.loadOhm(), "/load_ohm");
    boolean residual = stated.hasResidual();
    return new Known(
        stated.amplifier(),
        q.ratings().supplyV(),
        stated.into(q.loadOhm()),
        null,
        stated.openCircuitV(),
        stated.sagOhm(),
        stated.fit().character(),
        residual ? stated.fit().rmsResidualDb() : null,
        residual ? stated.fit().largestResidualDb() : null);
  }
}
