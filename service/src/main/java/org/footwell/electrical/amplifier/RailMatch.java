package org.footwell.electrical.amplifier;

import static org.footwell.calculation.Source.DEFINITION;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.electrical.amplifier.RailMatchResult.AtSupply;
import org.footwell.electrical.amplifier.SineSource.Delivery;
import org.footwell.parts.Driver;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Safety;
import org.footwell.parts.plan.AskOfPlan;
import org.footwell.parts.plan.PlanPlace;
import org.footwell.parts.plan.PlanReader;
import org.footwell.physics.Decibels;
import org.footwell.physics.Electricity;

/** What an amplifier really delivers, clean, into a load, and whether that suits the driver. */
public final class RailMatch
    implements Calculation<RailMatchRequest, RailMatchResult>, AskOfPlan<RailMatchRequest> {

  /** Clean power over continuous power, dB. */
  private static final Formula.Of2 HEADROOM =
      Formula.of("headroom_db", "10·lg(P/Pc)", "dB", DEFINITION)
          .with("P", "Pc", (p, continuous) -> Decibels.ofPower(p / continuous));

  /** Supply voltages of a 12 V vehicle, from a tired battery to a busy alternator. */
  private static final double[] SUPPLIES_V = {11.0, 11.5, 12.0, 12.6, 13.2, 13.8, 14.4};

  /** No 12 V vehicle goes higher; amplifiers stated above it are for 24 V. */
  static final double HIGHEST_12_V_SYSTEM = 18;

  /** An amplifier from half to twice the continuous power suits a driver: common practice. */
  private static final double HEADROOM_EITHER_WAY_DB = 3;

  private static final Formula.Of2 AT_SUPPLY =
      Formula.of("clean_power_w", "the same source with its supply at U", "W", DEFINITION)
          .with("P", "U", (power, supply) -> power);

  private static final Card<RailMatchRequest, RailMatchResult> CARD =
      Card.of("rail-match", RailMatchRequest.class, RailMatchResult.class)
          .title("Amplifier on a load")
          .purpose(
              "What can this amplifier really deliver, clean, into that load, from its rails or its"
                  + " published ratings, and does that suit the driver: too weak, fitting, or able"
                  + " to destroy it.")
          .example(
              """
              {"load_ohm": 3.2,
               "amplifier": {
                 "ratings": {"supply_v": 14.4, "basis": "clean",
                             "points": [{"load_ohm": 4, "power_w": 100},
                                        {"load_ohm": 2, "power_w": 160}]},
                 "minimum_ohm": 2},
               "driver": {"continuous_power_w": 120, "rated_ohm": 4}}
              """)
          .sources(
              RatingsFit.OHM,
              RatingsFit.THEVENIN,
              RatingsFit.LEAST_SQUARES,
              DEFINITION,
              Source.COMMON_PRACTICE)
          .limits(
              "Power is that of a steady sine into a resistance; music draws less from the supply"
                  + " and sags it less, a reactive load draws more current at the same voltage.",
              "Sag is a resistance that does not depend on time: short bursts give more than the"
                  + " figures here, long notes on a warm amplifier less.",
              "From ratings alone nothing is known of a current limit or of protection; outside the"
                  + " rated loads bounds are given.",
              "Unregulated rails are taken to follow the vehicle supply in proportion, down to the"
                  + " lowest voltage shown; an amplifier may switch off before.")
          .findings(AmplifierFinding.values())
          .refusals(AmplifierFault.values())
          .cautions(Safety.HEAT, Safety.HEARING)
          .build();

  @Override
  public Card<RailMatchRequest, RailMatchResult> card() {
    return CARD;
  }

  @Override
  public List<PlanPlace> places() {
    return List.of(PlanPlace.CHANNEL);
  }

  @Override
  public RailMatchRequest ask(PlanReader plan) {
    int channel = plan.about().index();
    String network =
        plan.about().pointer()
            + (plan.plan().channels().get(channel).network() == null ? "/branches" : "/network");
    plan.called("/load_ohm", network);
    return RailMatchRequestBuilder.builder()
        .loadOhm(plan.figures().loadOhm(channel))
        .amplifier(plan.amplifier(channel))
        .bridged(plan.bridged(channel, "/bridged"))
        .driver(together(channel, plan))
        .supplyV(plan.operatingV(plan.index().amplifierOf(channel), "/supply_v"))
        .build();
  }

  /** All drivers of a channel as one, or null where one does not state what it bears. */
  private static Driver together(int channel, PlanReader plan) {
    Double bearable = plan.figures().bearableW(channel);
    if (bearable == null) {
      return null;
    }
    return plan.made(
        DriverBuilder.builder()
            .continuousPowerW(bearable)
            .ratedOhm(plan.figures().networkOhm(channel))
            .build(),
        plan.index().partAt(plan.index().driversOf(channel).get(0)) + "/driver");
  }

  @Override
  public RailMatchResult compute(RailMatchRequest q, Run run) {
    Known known = Known.of(q, run);

    Delivery delivery = delivery(known, q, run);
    double voltage = run.apply(Electricity.VOLTAGE, delivery.powerW(), q.loadOhm());
    double peak = run.apply(Electricity.PEAK_VOLTAGE, voltage);
    double peakCurrent = run.apply(Electricity.CURRENT, peak, q.loadOhm());
    LoadCheck.of(q, peakCurrent, run);
    Double headroom = null;
    Double limiterRms = null;
    if (q.driver() != null) {
      headroom =
          delivery.powerW() == 0
              ? null
              : (Double) run.apply(HEADROOM, delivery.powerW(), q.driver().continuousPowerW());
      limiterRms =
          run.apply(Electricity.VOLTAGE, q.driver().continuousPowerW(), q.driver().ratedOhm());
      judge(known, q, delivery, headroom, limiterRms, run);
    }
    return RailMatchResultBuilder.builder()
        .cleanPowerW(delivery.powerW())
        .cleanPowerLowW(delivery.lowW())
        .cleanPowerHighW(delivery.highW())
        .voltageV(voltage)
        .peakVoltageV(peak)
        .peakCurrentA(peakCurrent)
        .limitedBy(known.limitedBy())
        .halfLoadOhm(q.bridged() ? q.loadOhm() / 2 : null)
        .openCircuitV(known.openCircuitV())
        .sagOhm(known.sagOhm())
        .character(known.character())
        .residualRmsDb(known.residualRmsDb())
        .residualLargestDb(known.residualLargestDb())
        .headroomDb(headroom)
        .limiterRmsV(limiterRms)
        .limiterPeakV(peak)
        .atSupply(atSupplies(known, q))
        .build();
  }

  /** What is delivered at the supply asked for, or at the stated one. */
  private static Delivery delivery(Known known, RailMatchRequest q, Run run) {
    if (q.supplyV() == null) {
      return known.delivery();
    }
    Delivery delivery = known.amplifier().into(q.loadOhm(), q.supplyV());
    run.apply(AT_SUPPLY, delivery.powerW(), q.supplyV());
    return delivery;
  }

  /** Too weak by the power to count on; destructive by the largest it may have at any supply. */
  private static void judge(
      Known known,
      RailMatchRequest q,
      Delivery delivery,
      Double headroom,
      double limiterRms,
      Run run) {
    if (headroom != null && headroom < -HEADROOM_EITHER_WAY_DB) {
      run.find(AmplifierFinding.AMPLIFIER_TOO_WEAK)
          .at("/driver/continuous_power_w")
          .value(headroom)
          .limit(-HEADROOM_EITHER_WAY_DB)
          .with("power", delivery.powerW())
          .with("continuous", q.driver().continuousPowerW());
    }
    double highestSupply = Math.max(known.supplyV(), supplies(known).max().orElseThrow());
    double most = known.amplifier().into(q.loadOhm(), highestSupply).highW();
    double mostHeadroom = HEADROOM.at(most, q.driver().continuousPowerW());
    if (mostHeadroom > HEADROOM_EITHER_WAY_DB) {
      run.find(AmplifierFinding.AMPLIFIER_CAN_DESTROY_DRIVER)
          .at("/driver/continuous_power_w")
          .value(mostHeadroom)
          .limit(HEADROOM_EITHER_WAY_DB)
          .with("power", most)
          .with("supply", highestSupply)
          .with("continuous", q.driver().continuousPowerW())
          .with("limiter", limiterRms);
    }
  }

  private static DoubleStream supplies(Known known) {
    double batteries = known.supplyV() > HIGHEST_12_V_SYSTEM ? 2 : 1;
    return Arrays.stream(SUPPLIES_V).map(supply -> batteries * supply);
  }

  private static List<AtSupply> atSupplies(Known known, RailMatchRequest q) {
    return supplies(known).mapToObj(supply -> atSupply(known, q, supply)).toList();
  }

  private static AtSupply atSupply(Known known, RailMatchRequest q, double supply) {
    double power = known.amplifier().into(q.loadOhm(), supply).powerW();
    Double headroom =
        q.driver() == null || power == 0
            ? null
            : (Double) HEADROOM.at(power, q.driver().continuousPowerW());
    return new AtSupply(supply, power, Electricity.VOLTAGE.at(power, q.loadOhm()), headroom);
  }
}
