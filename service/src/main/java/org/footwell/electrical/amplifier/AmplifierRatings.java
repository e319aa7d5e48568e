package org.footwell.electrical.amplifier;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.electrical.amplifier.AmplifierRatingsResult.Growth;
import org.footwell.electrical.amplifier.AmplifierRatingsResult.Prediction;
import org.footwell.electrical.amplifier.AmplifierRatingsResult.Rated;
import org.footwell.electrical.amplifier.RatingsFit.Point;
import org.footwell.electrical.amplifier.SineSource.Delivery;
import org.footwell.parts.Amplifier;
import org.footwell.parts.Ratings;
import org.footwell.parts.Safety;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.physics.Electricity;

/** What published ratings say: the source behind them, other loads and supplies, consistency. */
public final class AmplifierRatings
    implements Calculation<AmplifierRatingsRequest, AmplifierRatingsResult>,
        AskOfPlan<AmplifierRatingsRequest> {

  private static final Card<AmplifierRatingsRequest, AmplifierRatingsResult> CARD =
      Card.of("amplifier-ratings", AmplifierRatingsRequest.class, AmplifierRatingsResult.class)
          .title("Amplifier by its ratings")
          .purpose(
              "What open-circuit voltage and sag lie behind the published powers of an amplifier,"
                  + " what it gives clean into other loads and at other supply voltages, single"
                  + " and bridged, and whether the published powers agree with one another.")
          .example(
              """
              {"amplifier": {
                 "ratings": {"supply_v": 14.4, "basis": "clean",
                             "points": [{"load_ohm": 4, "power_w": 100},
                                        {"load_ohm": 2, "power_w": 160}]},
                 "bridged_ratings": {"points": [{"load_ohm": 4, "power_w": 320}]}},
               "loads_ohm": [2, 4, 8],
               "supplies_v": [12, 14.4]}
              """)
          .sources(
              RatingsFit.OHM,
              RatingsFit.THEVENIN,
              RatingsFit.LEAST_SQUARES,
              DEFINITION,
              Source.COMMON_PRACTICE)
          .limits(
              "Power is that of a steady sine into a resistance, with the channels driven that the"
                  + " ratings were stated for.",
              "Ratings tell nothing of current limits and protection; beyond the rated loads the"
                  + " power is known within bounds only.",
              "Without regulation, voltages are taken to follow the vehicle supply in proportion;"
                  + " an amplifier may switch off at a supply that is too low or too high.")
          .findings(
              RatingsFinding.BELOW_LOWEST_RATED,
              RatingsFinding.POWER_DOES_NOT_DOUBLE,
              RatingsFinding.BRIDGED_POWER_HIGHER,
              RatingsFinding.BRIDGED_POWER_LOWER,
              RatingsFinding.SUPPLY_OF_OTHER_VEHICLES,
              AmplifierFinding.RATING_NOT_CLEAN,
              AmplifierFinding.RATING_ONLY_SQUARE_WAVE,
              AmplifierFinding.RATINGS_REGULATED,
              AmplifierFinding.RATINGS_POWER_LIMITED,
              AmplifierFinding.RATINGS_INCONSISTENT,
              AmplifierFinding.SAG_NEGATIVE,
              AmplifierFinding.OUTSIDE_RATED_LOADS,
              AmplifierFinding.BASIS_NOT_CLEAN,
              AmplifierFinding.BRIDGED_RATINGS_HALVED)
          .refusals(
              AmplifierFault.BRIDGE_OF_BRIDGES,
              AmplifierFault.LOADS_WITHOUT_SPREAD,
              AmplifierFault.SAG_GROSSLY_NEGATIVE,
              AmplifierFault.RATING_IMPOSSIBLE)
          .cautions(Safety.HEAT, Safety.HEARING)
          .build();

  @Override
  public Card<AmplifierRatingsRequest, AmplifierRatingsResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.OUTPUTS);
  }

  @Override
  public AmplifierRatingsRequest ask(PlanReader plan) {
    int amplifier = plan.about().index();
    int outputs = plan.about().inner();
    Amplifier asked = plan.amplifier(amplifier, outputs);
    plan.poses(asked.ratings(), plan.about().pointer() + "/ratings");
    List<Double> loads =
        plan.index().channelsOf(amplifier).stream()
            .filter(channel -> plan.index().outputsOf(channel) == outputs)
            .map(channel -> plan.figures().loadOhm(channel))
            .distinct()
            .sorted()
            .toList();
    plan.called("/loads_ohm", "/channels");
    Double supply = plan.operatingV(plan.about().index(), "/supplies_v");
    return new AmplifierRatingsRequest(
        asked, loads.isEmpty() ? null : loads, supply == null ? null : List.of(supply));
  }

  @Override
  public AmplifierRatingsResult compute(AmplifierRatingsRequest q, Run run) {
    Amplifier amplifier = q.amplifier();
    Ratings ratings = amplifier.ratings();
    StatedRatings stated =
        StatedRatings.of(
            ratings, ratings.bridged(), amplifier.supplyRegulated(), "/amplifier/ratings", run);
    BridgedPair bridge = BridgedPair.of(amplifier, run);
    stated.explainRatings();
    stated.explainSource();
    stated.remarkReading();
    stated.remarkCharacter();
    if (ratings.bridged()) {
      run.find(AmplifierFinding.BRIDGED_RATINGS_HALVED).at("/amplifier/ratings/bridged");
    }
    for (int i = 0; i < q.loadsOhm().size(); i++) {
      double load = q.loadsOhm().get(i);
      String at = "/loads_ohm/" + i;
      stated.remarkOutside(load, at);
      remarkBelow(load, stated.fit().lowest().loadOhm(), LoadWords.PER_CHANNEL, at, run);
      if (!ratings.singleSupplyBridge()) {
        remarkBelow(load, bridge.lowestOhm(), LoadWords.BRIDGED, at, run);
      }
    }
    RatingsFit fit = stated.fit();
    List<Growth> growth = growth(fit, run);
    remarkGrowth(growth, stated, run);
    return AmplifierRatingsResultBuilder.builder()
        .openCircuitV(stated.openCircuitV())
        .sagOhm(stated.sagOhm())
        .character(fit.character())
        .residualRmsDb(stated.hasResidual() ? fit.rmsResidualDb() : null)
        .residualLargestDb(stated.hasResidual() ? fit.largestResidualDb() : null)
        .rated(fit.points().stream().map(point -> rated(point, fit)).toList())
        .growth(growth)
        .predictions(predictions(q, bridge, run))
        .bridge(amplifier.bridgedRatings() == null ? null : bridge.comparisons())
        .build();
  }

  private static void remarkBelow(double load, double lowest, LoadWords mode, String at, Run run) {
    if (RatedAmplifier.below(load, lowest)) {
      run.find(RatingsFinding.BELOW_LOWEST_RATED)
          .at(at)
          .value(load)
          .limit(lowest)
          .with("mode", mode);
    }
  }

  private static Rated rated(Point point, RatingsFit fit) {
    boolean source = fit.hasSource();
    return new Rated(
        point.loadOhm(),
        point.powerW(),
        source
            ? (Double) Electricity.POWER.at(fit.voltageV(point.loadOhm()), point.loadOhm())
            : null,
        source ? (Double) fit.residualDb(point) : null);
  }

  /** From each rated load to the next below it, the highest first. */
  private static List<Growth> growth(RatingsFit fit, Run run) {
    List<Point> points = fit.distinct();
    List<Growth> growth = new ArrayList<>();
    for (int i = points.size() - 1; i > 0; i--) {
      Point from = points.get(i);
      Point to = points.get(i - 1);
      growth.add(
          new Growth(
              from.loadOhm(),
              to.loadOhm(),
              to.powerW() / from.powerW(),
              run.apply(
                  RatingsFit.PER_HALVING,
                  from.powerW(),
                  to.powerW(),
                  from.loadOhm(),
                  to.loadOhm())));
    }
    return growth;
  }

  private static void remarkGrowth(List<Growth> growth, StatedRatings stated, Run run) {
    if (stated.fit().character() != RatingsFit.Look.ORDINARY) {
      return;
    }
    Growth least =
        growth.stream().min(Comparator.comparingDouble(Growth::powerRatioPerHalving)).orElseThrow();
    run.find(RatingsFinding.POWER_DOES_NOT_DOUBLE)
        .at("/amplifier/ratings/points")
        .value(least.powerRatioPerHalving())
        .limit(2)
        .with("from", least.fromLoadOhm())
        .with("to", least.toLoadOhm())
        .with("sag", stated.sagOhm());
  }

  private static List<Prediction> predictions(
      AmplifierRatingsRequest q, BridgedPair bridge, Run run) {
    Ratings ratings = q.amplifier().ratings();
    List<Double> supplies = q.suppliesV() == null ? List.of(ratings.supplyV()) : q.suppliesV();
    for (int i = 0; i < supplies.size(); i++) {
      remarkSupply(supplies.get(i), ratings.supplyV(), "/supplies_v/" + i, run);
    }
    RatedAmplifier single = RatedAmplifier.of(ratings, false, q.amplifier().supplyRegulated());
    List<Prediction> predictions = new ArrayList<>();
    for (double load : q.loadsOhm()) {
      for (double supply : supplies) {
        predictions.add(
            prediction(load, supply, false, single.into(load, supply), single.outside(load)));
        if (!ratings.singleSupplyBridge()) {
          boolean outside = bridge.known().outside(load);
          predictions.add(prediction(load, supply, true, bridge.into(load, supply), outside));
        }
      }
    }
    return predictions;
  }

  private static Prediction prediction(
      double load, double supply, boolean bridged, Delivery delivery, boolean outside) {
    return new Prediction(
        load, supply, bridged, delivery.powerW(), delivery.lowW(), delivery.highW(), outside);
  }

  /** An amplifier for 12 V vehicles on a 24 V one, or the other way round. */
  private static void remarkSupply(double supply, double stated, String at, Run run) {
    if (supply > RailMatch.HIGHEST_12_V_SYSTEM != stated > RailMatch.HIGHEST_12_V_SYSTEM) {
      run.find(RatingsFinding.SUPPLY_OF_OTHER_VEHICLES).at(at).value(supply).limit(stated);
    }
  }
}
