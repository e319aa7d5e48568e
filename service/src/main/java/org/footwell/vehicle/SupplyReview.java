package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.electrical.supply.FeedLine;
import org.footwell.parts.plan.AmplifierFeed;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.parts.plan.VehicleSupply;
import org.footwell.physics.Decibels;
import org.footwell.vehicle.PlanReviewResult.CableLine;
import org.footwell.vehicle.PlanReviewResult.SupplyLine;
import org.footwell.vehicle.chain.EngineState;
import org.footwell.vehicle.chain.Operation;
import org.footwell.vehicle.reading.Modelled;
import org.footwell.vehicle.reading.SupplyReader;

/** What the supply does in each situation, and whether its cables and fuses are right. */
final class SupplyReview {

  /** Less clean power lost than this is not worth a word, dB; common practice, no source. */
  private static final double SAG_DB = 1;

  /** About the 18 inches of US NEC 552.10(E)(4) for park trailers, m. */
  private static final double FUSE_DISTANCE_M = 0.45;

  private final Modelled modelled;
  private final PlanIndex index;
  private final VehiclePlan plan;
  private final Run run;

  SupplyReview(Modelled modelled, Run run) {
    this.modelled = modelled;
    this.index = modelled.index();
    this.plan = index.plan();
    this.run = run;
  }

  /** One line per situation the plan knows; none without a supply. */
  List<SupplyLine> situations() {
    List<Phrase> failing = new ArrayList<>();
    for (EngineState situation : modelled.model().sources().keySet()) {
      Operation operation = modelled.operations().get(situation);
      if (operation.works()) {
        starving(situation, operation);
      } else {
        failing.add(Phrase.of(situation));
      }
    }
    if (!failing.isEmpty()) {
      run.find(PlanFinding.SUPPLY_FAILS).at("/supply").with("situations", failing);
    }
    sag();
    heavyLoads();
    return SupplyFigures.of(modelled);
  }

  private void starving(EngineState situation, Operation operation) {
    for (int a = 0; a < plan.amplifiers().size(); a++) {
      Double least = plan.amplifiers().get(a).minimumV();
      double volts = operation.mean().loadV().get(a);
      if (least != null && volts < least) {
        run.find(PlanFinding.AMPLIFIER_STARVES)
            .at("/amplifiers/" + a)
            .value(volts)
            .limit(least)
            .own("name", plan.amplifiers().get(a).id())
            .with("situation", situation);
      }
    }
  }

  /** What a drum beat costs of the clean power, in the situation where it is most. */
  private void sag() {
    double most = SAG_DB;
    EngineState when = null;
    double volts = 0;
    List<String> names = new ArrayList<>();
    List<String> places = new ArrayList<>();
    for (int a = 0; a < plan.amplifiers().size(); a++) {
      double worst = 0;
      for (EngineState situation : modelled.model().sources().keySet()) {
        Operation operation = modelled.operations().get(situation);
        double lost = operation.sine() == null ? 0 : lostDb(a, operation.sine().loadV().get(a));
        worst = Math.max(worst, lost);
        if (lost > most) {
          most = lost;
          when = situation;
          volts = operation.sine().loadV().get(a);
        }
      }
      if (worst > SAG_DB) {
        names.add(plan.amplifiers().get(a).id());
        places.add("/amplifiers/" + a);
      }
    }
    if (when != null) {
      run.find(PlanFinding.SAG_COSTS_POWER)
          .at(places)
          .value(most)
          .own("names", names)
          .with("volts", volts)
          .with("situation", when);
    }
  }

  /** Clean power lost against the ratings at a supply voltage, dB. */
  private double lostDb(int a, double volts) {
    double with = Math.max(SupplyFigures.cleanW(a, volts, modelled), 1e-9);
    return Decibels.ofPower(
        SupplyFigures.cleanW(a, modelled.amplifiers().get(a).ratedV(), modelled) / with);
  }

  private void heavyLoads() {
    VehicleSupply supply = plan.supply();
    if (supply == null || supply.alternator() == null) {
      return;
    }
    for (int i = 0; i < supply.drawingALot().size(); i++) {
      VehicleSupply.HeavyLoad load = supply.drawingALot().get(i);
      double left = supply.alternator().idleA() - supply.consumers().runningA();
      if (load.currentA() > left) {
        run.find(PlanFinding.HEAVY_LOAD_WITH_MUSIC)
            .at("/supply/heavy_loads/" + i)
            .value(load.currentA())
            .limit(Math.max(0, left))
            .own("name", load.name());
      }
    }
  }

  /** One line per amplifier whose draw and feed are given, where the plan has a supply. */
  List<CableLine> cables() {
    List<CableLine> lines = new ArrayList<>();
    Operation cruising = modelled.operations().get(EngineState.CRUISING);
    for (int a = 0; a < plan.amplifiers().size(); a++) {
      PlannedAmplifier amplifier = plan.amplifiers().get(a);
      if (amplifier.feed() == null || amplifier.draw() == null || plan.supply() == null) {
        continue;
      }
      SupplyReader.Laid laid = modelled.supply().laid(a);
      if (laid == null) {
        run.find(PlanFinding.NO_CABLE_FITS)
            .at("/amplifiers/" + a + "/feed")
            .own("name", amplifier.id());
        lines.add(PlanReviewResultCableLineBuilder.builder().id(amplifier.id()).build());
      } else if (cruising.works()) {
        lines.add(line(a, amplifier, laid, cruising));
      }
    }
    return lines;
  }

  private CableLine line(
      int a, PlannedAmplifier amplifier, SupplyReader.Laid laid, Operation cruising) {
    double third = modelled.supply().thirdA(a);
    double programme = cruising.mean().currentA().get(a);
    double mean = Double.isNaN(third) ? programme : Math.max(programme, third);
    boolean sustained = plan.programme().sustainedBass() && cruising.sine() != null;
    Double lasting = sustained ? cruising.sine().currentA().get(a) : null;
    double ampacity = laid.line().ampacityA(laid.areaMm2());
    double least = FeedLine.leastFuseA(mean, lasting);
    OptionalDouble fuse = FeedLine.fuseA(least, ampacity);
    double drop = mean * laid.loopOhm();
    judge(a, amplifier, mean, ampacity, least, fuse, drop);
    return PlanReviewResultCableLineBuilder.builder()
        .id(amplifier.id())
        .areaMm2(laid.areaMm2())
        .found(laid.found())
        .loopOhm(laid.loopOhm())
        .dropV(cruising.mean().currentA().get(a) * laid.loopOhm())
        .ampacityA(ampacity)
        .fuseLeastA(least)
        .fuseLargestA(FeedLine.largestFuseA(ampacity))
        .fuseA(fuse.isPresent() ? (Double) fuse.getAsDouble() : null)
        .ownFuseA(amplifier.fuseA())
        .build();
  }

  private void judge(
      int a,
      PlannedAmplifier amplifier,
      double mean,
      double ampacity,
      double least,
      OptionalDouble fuse,
      double drop) {
    AmplifierFeed feed = amplifier.feed();
    String at = "/amplifiers/" + a + "/feed";
    if (mean > ampacity) {
      run.find(PlanFinding.CABLE_OVERLOADED)
          .at(at)
          .value(mean)
          .limit(ampacity)
          .own("name", amplifier.id());
    } else if (drop > feed.permittedDropV()) {
      run.find(PlanFinding.CABLE_DROPS_TOO_MUCH)
          .at(at)
          .value(drop)
          .limit(feed.permittedDropV())
          .own("name", amplifier.id());
    }
    if (fuse.isEmpty()) {
      run.find(PlanFinding.NO_FUSE_FITS)
          .at(at)
          .value(least)
          .limit(ampacity)
          .own("name", amplifier.id());
    }
    Double fitted = feed.fuseA();
    if (fitted != null && fitted > ampacity) {
      run.find(PlanFinding.FUSE_TOO_LARGE)
          .at(at + "/fuse_a")
          .value(fitted)
          .limit(ampacity)
          .own("name", amplifier.id());
    } else if (fitted != null && fitted < least) {
      run.find(PlanFinding.FUSE_TOO_SMALL)
          .at(at + "/fuse_a")
          .value(fitted)
          .limit(least)
          .own("name", amplifier.id());
    }
    if (feed.fuseDistanceM() != null && feed.fuseDistanceM() > FUSE_DISTANCE_M) {
      run.find(PlanFinding.FUSE_TOO_FAR)
          .at(at + "/fuse_distance_m")
          .value(feed.fuseDistanceM())
          .limit(FUSE_DISTANCE_M)
          .own("name", amplifier.id());
    }
  }
}
