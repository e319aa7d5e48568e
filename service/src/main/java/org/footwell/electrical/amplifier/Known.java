package org.footwell.electrical.amplifier;

import org.footwell.calculation.Built;
import org.footwell.calculation.Run;
import org.footwell.electrical.amplifier.RailMatchResult.LimitedBy;
import org.footwell.electrical.amplifier.SineSource.Delivery;
import org.footwell.parts.Amplifier;
import org.footwell.parts.Ratings;

/** The amplifier, however described, with what follows from the description alone. */
@Built
record Known(
    SineSource amplifier,
    double supplyV,
    Delivery delivery,
    LimitedBy limitedBy,
    Double openCircuitV,
    Double sagOhm,
    RatingsFit.Look character,
    Double residualRmsDb,
    Double residualLargestDb) {

  static Known of(RailMatchRequest q, Run run) {
    return q.amplifier().rails() != null ? byRails(q, run) : byRatings(q, run);
  }

  private static Known byRails(RailMatchRequest q, Run run) {
    Amplifier amplifier = q.amplifier();
    StatedRails stated =
        StatedRails.of(
            amplifier.rails(), q.bridged(), amplifier.supplyRegulated(), "/amplifier/rails", run);
    if (q.supplyV() != null) {
      stated.judge(q.supplyV());
    }
    StatedRails.Clean clean = stated.clean(q.loadOhm());
    return KnownBuilder.builder()
        .amplifier(stated.stage())
        .supplyV(amplifier.rails().supplyV())
        .delivery(Delivery.exactly(clean.powerW()))
        .limitedBy(clean.currentFirst() ? LimitedBy.CURRENT : LimitedBy.VOLTAGE)
        .openCircuitV(stated.openCircuitV())
        .sagOhm(stated.stage().sagOhm())
        .build();
  }

  private static Known byRatings(RailMatchRequest q, Run run) {
    Ratings ratings = q.amplifier().ratings();
    StatedRatings stated =
        StatedRatings.of(
            ratings, q.bridged(), q.amplifier().supplyRegulated(), "/amplifier/ratings", run);
    stated.explain(q.loadOhm(), "/load_ohm");
    boolean residual = stated.hasResidual();
    return KnownBuilder.builder()
        .amplifier(stated.amplifier())
        .supplyV(ratings.supplyV())
        .delivery(stated.into(q.loadOhm()))
        .openCircuitV(stated.openCircuitV())
        .sagOhm(stated.sagOhm())
        .character(stated.fit().character())
        .residualRmsDb(residual ? stated.fit().rmsResidualDb() : null)
        .residualLargestDb(residual ? stated.fit().largestResidualDb() : null)
        .build();
  }
}
