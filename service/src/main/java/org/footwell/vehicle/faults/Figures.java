package org.footwell.vehicle.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.parts.LevelAt;
import org.footwell.parts.ModulusAt;
import org.footwell.parts.plan.MeasuredChannel;
import org.footwell.parts.plan.MeasuredSupply;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.ThirdOctaves;
import org.footwell.vehicle.reading.Modelled;

/** The figures that were measured of a plan, with their values, and those that still could be. */
final class Figures {

  /** What lies this far below the strongest of a response is noise, dB; common practice, no source. */
  private static final double NOISE_DB = 30;

  /** Impedances that are worth a proposal, Hz: two in each decade and the resonances between. */
  private static final double[] USUAL_HZ = {
    20, 31.5, 50, 80, 125, 200, 500, 1000, 2000, 5000, 10_000
  };

  private final List<VehicleFigure> all = new ArrayList<>();
  private final List<Double> values = new ArrayList<>();

  private Figures() {}

  /** Everything measured that a plan predicts; a channel moved for its phase does not arrive with others. */
  static Figures measured(Modelled base) {
    Figures figures = new Figures();
    PlanIndex index = base.index();
    for (MeasuredChannel one : index.plan().measured()) {
      int c = index.channel(one.channel());
      figures.add(FigureKind.LEVEL, c, 0, one.levelDbSpl());
      figures.add(FigureKind.METER, c, 0, one.meterOhm());
      if (one.polarity() != null) {
        figures.add(FigureKind.POLARITY, c, 0, (double) one.polarity());
      }
      if (!base.movedForPhase(c)) {
        figures.add(FigureKind.ARRIVAL, c, 0, one.arrivalMs());
      }
      if (one.response() != null) {
        figures.response(c, one.response());
      }
      if (one.impedance() != null) {
        for (ModulusAt point : one.impedance()) {
          figures.add(FigureKind.IMPEDANCE, c, point.frequencyHz(), point.modulusOhm());
        }
      }
    }
    List<String> amplifiers = index.plan().amplifiers().stream().map(PlannedAmplifier::id).toList();
    for (MeasuredSupply one : index.plan().measuredSupply()) {
      int a = amplifiers.indexOf(one.amplifier());
      figures.add(FigureKind.SUPPLY_DROP, a, one.atBatteryV(), one.dropV());
    }
    return figures.known(base);
  }

  /** Those that the plan predicts. */
  private Figures known(Modelled base) {
    Predictor predictor = new Predictor(base, all);
    double[] planned = predictor.joined(predictor.planned(), new double[base.amplifiers().size()]);
    Figures known = new Figures();
    for (int i = 0; i < planned.length; i++) {
      if (!Double.isNaN(planned[i])) {
        known.add(all.get(i).kind(), all.get(i).place(), all.get(i).at(), values.get(i));
      }
    }
    return known;
  }

  private void response(int c, List<LevelAt> points) {
    double strongest = points.stream().mapToDouble(LevelAt::levelDb).max().orElseThrow();
    for (LevelAt point : points) {
      if (point.levelDb() >= strongest - NOISE_DB) {
        add(FigureKind.RESPONSE, c, point.frequencyHz(), point.levelDb());
      }
    }
  }

  private void add(FigureKind kind, int place, double at, Double value) {
    if (value != null) {
      all.add(new VehicleFigure(kind, place, at));
      values.add(value);
    }
  }

  /** What can be measured of some channels and of all supplies. */
  static List<VehicleFigure> possible(Modelled base, List<Integer> channels) {
    VehiclePlan plan = base.index().plan();
    List<VehicleFigure> possible = new ArrayList<>();
    for (int c : channels) {
      for (FigureKind kind :
          List.of(FigureKind.METER, FigureKind.POLARITY, FigureKind.LEVEL, FigureKind.ARRIVAL)) {
        possible.add(new VehicleFigure(kind, c, 0));
      }
      for (double hz : USUAL_HZ) {
        possible.add(new VehicleFigure(FigureKind.IMPEDANCE, c, hz));
      }
      for (double hz : ThirdOctaves.between(20, 16_000).toArray()) {
        possible.add(new VehicleFigure(FigureKind.RESPONSE, c, hz));
      }
    }
    if (base.levelled().cruising().works()) {
      double battery = base.levelled().cruising().mean().batteryV();
      IntStream.range(0, plan.amplifiers().size())
          .filter(a -> plan.amplifiers().get(a).draw() != null && !Double.isNaN(battery))
          .forEach(a -> possible.add(new VehicleFigure(FigureKind.SUPPLY_DROP, a, battery)));
    }
    return possible;
  }

  /** Whether something was measured already. */
  boolean has(VehicleFigure one) {
    return all.stream().anyMatch(other -> alike(one, other));
  }

  /** A response is measured as a whole, and so is each impedance near a frequency. */
  private static boolean alike(VehicleFigure one, VehicleFigure other) {
    boolean near =
        one.kind() != FigureKind.IMPEDANCE || Math.abs(Math.log(one.at() / other.at())) < 0.2;
    return one.kind() == other.kind() && one.place() == other.place() && near;
  }

  List<VehicleFigure> all() {
    return all;
  }

  double value(int i) {
    return values.get(i);
  }

  int size() {
    return all.size();
  }
}
