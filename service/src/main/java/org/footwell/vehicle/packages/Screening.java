package org.footwell.vehicle.packages;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.footwell.calculation.Patience;
import org.footwell.calculation.Run;
import org.footwell.electrical.amplifier.SineSource;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.vehicle.reading.PlannedFeed;
import org.footwell.vehicle.reading.PlannedSource;
import org.footwell.vehicle.reading.ScreenedChannel;

/** Works out the figures of every choice by the model of the vehicle, and what all packages have in common. */
final class Screening {

  /** Loads are compared as the review compares them. */
  private static final double SAME_LOAD = 1 - 1e-9;

  private final SlotLayout layout;
  private final Run run;
  private final VehiclePlan plan;
  private final List<OutputKind> kinds;
  private final Set<Double> outputOhms;

  /** Of each unit: by kind of output and clean power what may be in it. */
  private final List<List<Map<Double, List<Choice>>>> choices = new ArrayList<>();

  private final Map<Integer, Double> fixedCleanW = new HashMap<>();
  private final PackageFigures fixed;
  private final Patience patience;
  private final LoudestTogether together = new LoudestTogether();
  private boolean cutShort;

  Screening(
      SlotLayout layout,
      List<Fillings> fillings,
      List<AmplifierChoice> amplifiers,
      Run run,
      Patience patience) {
    this.layout = layout;
    this.run = run;
    this.patience = patience;
    plan = layout.index().plan();
    kinds = OutputKind.of(amplifiers);
    outputOhms = kinds.stream().map(OutputKind::outputOhm).collect(Collectors.toSet());
    fixed = fixed(amplifiers);
    for (SlotLayout.Unit unit : layout.units()) {
      choices.add(screened(unit, fillings));
    }
  }

  /** Choices of a unit by the number of their kind of output and the clean power they take. */
  List<Map<Double, List<Choice>>> choices(int unit) {
    return choices.get(unit);
  }

  /** The kinds of output of an amplifier. */
  List<OutputKind> kinds(AmplifierChoice amplifier) {
    return kinds.stream().filter(kind -> kind.amplifier().number() == amplifier.number()).toList();
  }

  /** Whether time ended before everything was worked out. */
  boolean cutShort() {
    return cutShort;
  }

  /** Clean power of the channels that stay, by the number of their amplifier, at its rated supply voltage, W. */
  Map<Integer, Double> fixedCleanW() {
    return fixedCleanW;
  }

  /** What every package has: drivers and channels that stay, extras, and amplifiers with such channels. */
  PackageFigures fixed() {
    return fixed;
  }

  /** What is added to the level of the quietest channel for an upper bound on all together, dB. */
  double togetherDb() {
    return together.db();
  }

  /** Voltage at the battery with nothing drawing; the rating of an amplifier where no supply is given. */
  private double startV(AmplifierChoice amplifier) {
    return plan.supply() == null
        ? PlannedSource.ratedV(amplifier.planned())
        : PlannedFeed.startV(plan.supply());
  }

  private PackageFigures fixed(List<AmplifierChoice> amplifiers) {
    PackageFigures sum = new BaseCost(layout).figures();
    for (AmplifierChoice amplifier : amplifiers) {
      if (amplifier.always()) {
        sum = sum.and(amplifier.cost());
      }
    }
    List<ScreenedChannel> stay = read(layout.index(), layout.fixedChannels());
    for (int i = 0; i < stay.size(); i++) {
      int c = layout.fixedChannels().get(i);
      AmplifierChoice amplifier = amplifiers.get(layout.index().amplifierOf(c));
      int outputs = layout.index().outputsOf(c);
      boolean bridged = plan.channels().get(c).bridged();
      SineSource source =
          PlannedSource.of(
              amplifier.planned().outputs().get(outputs),
              bridged,
              amplifier.planned().supplyRegulated());
      double level = stay.get(i).levelDb(source, startV(amplifier));
      fixedCleanW.merge(
          amplifier.number(),
          stay.get(i).cleanW(source, PlannedSource.ratedV(amplifier.planned())),
          Double::sum);
      sum = sum.and(PackageFigures.played(stay.get(i).reachHz(), level));
      together.add(stay.get(i).adding(), stay.get(i).apart());
    }
    return sum;
  }

  private List<ScreenedChannel> read(PlanIndex index, List<Integer> channels) {
    return channels.isEmpty() ? List.of() : ScreenedChannel.of(index, channels, run);
  }

  /** Reads each filling behind every output impedance there is, and sets it on every kind. */
  private List<Map<Double, List<Choice>>> screened(SlotLayout.Unit unit, List<Fillings> fillings) {
    List<Map<Double, List<Choice>>> byKind = new ArrayList<>();
    kinds.forEach(kind -> byKind.add(new TreeMap<>()));
    double[] most = new double[2 * unit.channels().size()];
    for (List<Filling> filled : products(unit, fillings)) {
      if (!patience.lasts()) {
        cutShort = true;
        break;
      }
      Map<Double, List<ScreenedChannel>> read = read(unit, filled);
      PackageFigures cost =
          filled.stream().map(Filling::cost).reduce(PackageFigures.NONE, PackageFigures::and);
      for (OutputKind kind : kinds) {
        List<ScreenedChannel> channels = read.get(kind.outputOhm());
        Choice choice = choice(filled, kind, cost, channels);
        if (choice == null) {
          continue;
        }
        byKind
            .get(kind.number())
            .computeIfAbsent(choice.cleanW(), any -> new ArrayList<>())
            .add(choice);
        for (int i = 0; i < channels.size(); i++) {
          most[2 * i] = Math.max(most[2 * i], channels.get(i).adding());
          most[2 * i + 1] = Math.max(most[2 * i + 1], channels.get(i).apart());
        }
      }
    }
    for (int i = 0; i < unit.channels().size(); i++) {
      together.add(most[2 * i], most[2 * i + 1]);
    }
    return byKind;
  }

  private Map<Double, List<ScreenedChannel>> read(SlotLayout.Unit unit, List<Filling> filled) {
    VehiclePlan read = PackagePlans.toRead(layout, filled);
    return run.apart(
            VehiclePlan.class,
            PackageOptions.inPlan(),
            own -> ScreenedChannel.of(PlanIndex.of(read, own), unit.channels(), outputOhms, own))
        .value();
  }

  /** Null where an output does not bear a load, or gives nothing. */
  private Choice choice(
      List<Filling> filled, OutputKind kind, PackageFigures cost, List<ScreenedChannel> channels) {
    PackageFigures figures = cost;
    double clean = 0;
    double volts = startV(kind.amplifier());
    double rated = PlannedSource.ratedV(kind.amplifier().planned());
    for (ScreenedChannel channel : channels) {
      if (channel.ratedOhm() < kind.leastOhm() * SAME_LOAD
          || !(channel.cleanW(kind.source(), volts) > 0)) {
        return null;
      }
      clean += channel.cleanW(kind.source(), rated);
      figures =
          figures.and(
              PackageFigures.played(channel.reachHz(), channel.levelDb(kind.source(), volts)));
    }
    return new Choice(filled, kind, figures, clean);
  }

  /** Every choice of a filling for each slot of a unit. */
  private static List<List<Filling>> products(SlotLayout.Unit unit, List<Fillings> fillings) {
    List<List<Filling>> products = List.of(List.of());
    for (SlotLayout.Slot slot : unit.slots()) {
      List<List<Filling>> longer = new ArrayList<>();
      for (List<Filling> soFar : products) {
        for (Filling next : fillings.get(slot.index()).all()) {
          List<Filling> with = new ArrayList<>(soFar);
          with.add(next);
          longer.add(List.copyOf(with));
        }
      }
      products = longer;
    }
    return products;
  }
}
