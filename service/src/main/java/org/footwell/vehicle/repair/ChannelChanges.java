package org.footwell.vehicle.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.footwell.acoustic.crossover.CrossoverWindow;
import org.footwell.acoustic.crossover.SeriesCapacitor;
import org.footwell.electrical.load.CoilNetworks;
import org.footwell.parts.Driver;
import org.footwell.parts.Filter;
import org.footwell.parts.LadderElement;
import org.footwell.parts.PreferredSeries;
import org.footwell.parts.WayRole;
import org.footwell.parts.plan.Branch;
import org.footwell.parts.plan.BranchBuilder;
import org.footwell.parts.plan.ChannelSettings;
import org.footwell.parts.plan.PlacedDriver;
import org.footwell.parts.plan.PlacedDriverBuilder;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.PlannedChannelBuilder;
import org.footwell.parts.plan.PlannedPart;
import org.footwell.parts.plan.Plans;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.parts.plan.VehiclePlanBuilder;
import org.footwell.physics.Decibels;

/** Settings, wires and parts of one channel changed. */
final class ChannelChanges {

  /** Gains that were set come down by these, dB. */
  private static final List<Double> STEPS_DB = List.of(-1.0, -2.0, -3.0);

  /** Where nothing is known of a tweeter, Hz; common practice, no source. */
  private static final double USUAL_HZ = 3000;

  private final PlanIndex index;
  private final VehiclePlan plan;
  private final List<Change> into;

  ChannelChanges(PlanIndex index, List<Change> into) {
    this.index = index;
    this.plan = index.plan();
    this.into = into;
  }

  private void add(
      RepairKind kind, String at, String was, String becomes, UnaryOperator<VehiclePlan> made) {
    into.add(new Change(kind, at, List.of(at), was, becomes, null, made));
  }

  /** Each thing that was set goes back to what is advised, and a gain comes down. */
  void settings(int c) {
    ChannelSettings set = index.settingsOf(c);
    if (set == null) {
      return;
    }
    int row = plan.settings().indexOf(set);
    reset(row, "gain_v", set.gainV(), " V", one -> gain(one, null));
    for (double db : set.gainV() == null ? List.<Double>of() : STEPS_DB) {
      double volts = Math.round(set.gainV() * Decibels.toAmplitude(db) * 100) / 100.0;
      add(
          RepairKind.GAIN,
          "/settings/" + row + "/gain_v",
          set.gainV() + " V",
          volts + " V",
          any -> with(any, row, one -> gain(one, volts)));
    }
    reset(
        row,
        "trim_db",
        set.trimDb(),
        " dB",
        one ->
            new ChannelSettings(one.channel(), one.gainV(), null, one.delayMs(), one.polarity()));
    reset(
        row,
        "delay_ms",
        set.delayMs(),
        " ms",
        one -> new ChannelSettings(one.channel(), one.gainV(), one.trimDb(), null, one.polarity()));
    reset(
        row,
        "polarity",
        set.polarity(),
        "",
        one -> new ChannelSettings(one.channel(), one.gainV(), one.trimDb(), one.delayMs(), null));
  }

  private static ChannelSettings gain(ChannelSettings one, Double volts) {
    return new ChannelSettings(one.channel(), volts, one.trimDb(), one.delayMs(), one.polarity());
  }

  private void reset(
      int row, String field, Number is, String unit, UnaryOperator<ChannelSettings> change) {
    if (is != null) {
      String at = "/settings/" + row + "/" + field;
      add(RepairKind.SETTING, at, is + unit, null, any -> with(any, row, change));
    }
  }

  private static VehiclePlan with(VehiclePlan any, int row, UnaryOperator<ChannelSettings> change) {
    return VehiclePlanBuilder.builder(any)
        .settings(Plans.changed(any.settings(), row, change))
        .build();
  }

  void limiter(int c) {
    if (!plan.channels().get(c).rmsLimiter()) {
      add(
          RepairKind.LIMITER,
          "/channels/" + c + "/rms_limiter",
          "false",
          "true",
          any ->
              Plans.channel(
                  any, c, one -> PlannedChannelBuilder.builder(one).rmsLimiter(true).build()));
    }
  }

  void polarity(int c) {
    int turned = -plan.channels().get(c).polarity();
    add(
        RepairKind.POLARITY,
        "/channels/" + c + "/polarity",
        Integer.toString(-turned),
        Integer.toString(turned),
        any ->
            Plans.channel(
                any, c, one -> PlannedChannelBuilder.builder(one).polarity(turned).build()));
  }

  /** Every other wiring of the same coils, without the resistors there may be among them. */
  void networks(int c) {
    PlannedChannel channel = plan.channels().get(c);
    if (channel.network() != null) {
      networks(c, -1, channel.network(), "/channels/" + c + "/network");
    }
    for (int b = 0; b < channel.branchList().size(); b++) {
      String at = "/channels/" + c + "/branches/" + b + "/network";
      networks(c, b, channel.branchList().get(b).network(), at);
    }
  }

  private void networks(int c, int b, String is, String at) {
    List<PlanIndex.NamedCoil> coils =
        index.coils(c).stream().filter(coil -> coil.branch() == b).toList();
    List<String> words = coils.stream().map(PlanIndex.NamedCoil::word).toList();
    List<String> all =
        CoilNetworks.of(
            words, word -> index.part(coils.get(words.indexOf(word)).driver()).driver().ratedOhm());
    for (String network : all) {
      if (!network.equals(is)) {
        add(RepairKind.WIRING, at, is, network, any -> rewired(any, c, b, network));
      }
    }
  }

  private static VehiclePlan rewired(VehiclePlan any, int c, int b, String network) {
    return b < 0
        ? Plans.channel(any, c, one -> PlannedChannelBuilder.builder(one).network(network).build())
        : Plans.branch(any, c, b, one -> BranchBuilder.builder(one).network(network).build());
  }

  /** A capacitor in series with a tweeter that has no high-pass of its own. */
  void capacitors(int c) {
    PlannedChannel channel = plan.channels().get(c);
    for (int b = 0; b < channel.branchList().size(); b++) {
      Branch branch = channel.branchList().get(b);
      int own = b;
      index.coils(c).stream()
          .filter(coil -> coil.branch() == own)
          .filter(coil -> index.roleOf(coil.driver()) == WayRole.TWEETER)
          .findFirst()
          .ifPresent(coil -> capacitor(c, own, branch, index.part(coil.driver()).driver()));
    }
  }

  /** From where on a tweeter may play, Hz. */
  private static double guardedHz(Driver driver) {
    return driver.lowerLimitHz() != null
        ? driver.lowerLimitHz()
        : driver.fsHz() != null ? CrossoverWindow.TWEETER_MULTIPLE * driver.fsHz() : USUAL_HZ;
  }

  /** From where on a channel of tweeters alone may play, Hz; empty for any other. */
  OptionalDouble guardedFromHz(int c) {
    List<Integer> drivers = index.driversOf(c);
    return drivers.stream().allMatch(d -> index.roleOf(d) == WayRole.TWEETER)
        ? drivers.stream().mapToDouble(d -> guardedHz(index.part(d).driver())).max()
        : OptionalDouble.empty();
  }

  private void capacitor(int c, int b, Branch branch, Driver driver) {
    double hz = guardedHz(driver);
    String at = "/channels/" + c + "/branches/" + b;
    boolean stated = branch.lowPass() != null || branch.padDb() != null;
    if (branch.highPass() != null) {
      return;
    }
    if (stated) {
      Filter filter = Filter.of(Filter.Kind.BUTTERWORTH, 2, Math.rint(hz));
      add(
          RepairKind.CAPACITOR,
          at,
          null,
          "butterworth, 2, " + Math.round(hz) + " Hz",
          any ->
              Plans.branch(any, c, b, one -> BranchBuilder.builder(one).highPass(filter).build()));
      return;
    }
    double uf = PreferredSeries.E12.nearest(SeriesCapacitor.VALUE.at(hz, driver.ratedOhm()));
    List<LadderElement> elements = new ArrayList<>();
    elements.add(LadderElement.capacitor(LadderElement.Place.SERIES, uf));
    elements.addAll(branch.ladder());
    add(
        RepairKind.CAPACITOR,
        at,
        null,
        uf + " µF",
        any ->
            Plans.branch(any, c, b, one -> BranchBuilder.builder(one).elements(elements).build()));
  }

  /** Parts of the plan that are in no place are offered. */
  void parts(int c) {
    Set<String> used = plan.drivers().stream().map(PlacedDriver::part).collect(Collectors.toSet());
    for (int d : index.driversOf(c)) {
      PlannedPart is = index.part(d);
      for (PlannedPart offered : plan.newParts()) {
        if (!used.contains(offered.id())
            && offered.coilCount().equals(is.coilCount())
            && (offered.role() == null || offered.role() == index.roleOf(d))) {
          String at = "/drivers/" + d + "/part";
          into.add(
              new Change(
                  RepairKind.PART,
                  at,
                  List.of(at),
                  is.id(),
                  offered.id(),
                  offered.driver().price(),
                  any ->
                      Plans.driver(
                          any,
                          d,
                          one -> PlacedDriverBuilder.builder(one).part(offered.id()).build())));
        }
      }
    }
  }
}
