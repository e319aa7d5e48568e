package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.List;
import org.footwell.acoustic.crossover.SeriesCapacitor;
import org.footwell.calculation.Run;
import org.footwell.parts.Filter;
import org.footwell.parts.WayRole;
import org.footwell.parts.plan.Branch;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Decibels;
import org.footwell.vehicle.PlanReviewResult.DriverLine;
import org.footwell.vehicle.chain.Borne;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.ChannelState;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.reading.Modelled;

/** What each driver gets and bears with the settings of the sheet, and what guards the tweeters. */
final class DriverReview {

  /** A corner this far below that of the active high-pass is out of its way; common practice. */
  private static final double CAPACITOR_BELOW = 2;

  private static final double WORTH_A_WORD_DB = 0.1;

  /** Test tones and sustained bass begin here, Hz. */
  private static final double FROM_HZ = 20;

  private final Modelled modelled;
  private final PlanIndex index;
  private final VehiclePlan plan;
  private final Run run;
  private final List<String> beyondSine = new ArrayList<>();
  private final List<String> beyondSineAt = new ArrayList<>();
  private double sineFrom = Double.POSITIVE_INFINITY;
  private double sineTo;

  DriverReview(Modelled modelled, Run run) {
    this.modelled = modelled;
    this.index = modelled.index();
    this.plan = index.plan();
    this.run = run;
  }

  /** One line per driver on a channel, in the order of the channels. */
  List<DriverLine> lines() {
    List<DriverLine> lines = new ArrayList<>();
    for (int c = 0; c < plan.channels().size(); c++) {
      PlayedChannel channel = modelled.model().channels().get(c);
      for (int d = 0; d < channel.borne().size(); d++) {
        lines.add(line(c, channel, d));
      }
    }
    if (!beyondSine.isEmpty()) {
      run.find(PlanFinding.SINE_BEYOND_XMAX)
          .at(beyondSineAt)
          .own("names", beyondSine)
          .with("low", sineFrom)
          .with("high", sineTo);
    }
    remarkTweeters();
    return lines;
  }

  private DriverLine line(int c, PlayedChannel channel, int d) {
    Borne borne = channel.borne().get(d);
    ChannelState heard = modelled.heard().get(c);
    double volts = heard.sourceV() * Decibels.toAmplitude(heard.trimDb());
    double power = borne.heldW() * volts * volts;
    double moved = borne.movedMm() * volts;
    String id = plan.drivers().get(borne.driver()).id();
    String at = "/drivers/" + borne.driver();
    Double headroom =
        Double.isNaN(borne.continuousW())
            ? null
            : (Double) Decibels.ofPower(borne.continuousW() / power);
    boolean moves = !Double.isNaN(moved);
    Double left =
        !moves || Double.isNaN(borne.xmaxMm())
            ? null
            : (Double) Decibels.ofAmplitude(borne.xmaxMm() / moved);
    if (headroom != null && headroom < -WORTH_A_WORD_DB) {
      run.find(PlanFinding.HEAT_BEYOND_RATING)
          .at(at)
          .value(power)
          .limit(borne.continuousW())
          .own("name", id);
    }
    if (left != null && left < -WORTH_A_WORD_DB) {
      run.find(PlanFinding.MOVEMENT_BEYOND_XMAX)
          .at(at)
          .value(moved)
          .limit(borne.xmaxMm())
          .own("name", id);
    }
    Sine sine = moves ? sine(channel, d, volts, borne.xmaxMm()) : null;
    if (sine != null && sine.fromHz() != null) {
      beyondSine.add(id);
      beyondSineAt.add(at);
      sineFrom = Math.min(sineFrom, sine.fromHz());
      sineTo = Math.max(sineTo, sine.toHz());
    }
    return PlanReviewResultDriverLineBuilder.builder()
        .id(id)
        .channel(plan.channels().get(c).id())
        .cleanPowerW(modelled.cleanW(c, d))
        .meanPowerW(power)
        .heatW(borne.coilW() * volts * volts)
        .headroomDb(headroom)
        .displacementMm(moves ? (Double) moved : null)
        .movementLeftDb(left)
        .sineDisplacementMm(sine == null ? null : (Double) sine.mm())
        .sineBeyondFromHz(sine == null ? null : sine.fromHz())
        .sineBeyondToHz(sine == null ? null : sine.toHz())
        .protectionUf(
            onlyActive(c, borne.driver()) ? (Double) capacitorUf(c, borne.driver()) : null)
        .build();
  }

  /** The largest displacement with a full-scale sine, and the range where it is beyond xmax. */
  private record Sine(double mm, Double fromHz, Double toHz) {}

  private static Sine sine(PlayedChannel channel, int d, double volts, double xmaxMm) {
    ChannelChain chain = channel.chain();
    double most = 0;
    Double from = null;
    Double to = null;
    for (int k = 0; k < chain.grid().size(); k++) {
      double f = chain.grid().hz(k);
      double mm = channel.drive().sineMm(d, k) * volts;
      if (f < FROM_HZ) {
        continue;
      }
      most = Math.max(most, mm);
      boolean first = k == 0 || chain.grid().hz(k - 1) < FROM_HZ;
      if (mm > xmaxMm * 1.005) {
        // The lowest place of the grid stands for the lower end of what is looked at.
        from = from == null ? (Double) (first ? FROM_HZ : f) : from;
        to = f;
      }
    }
    return new Sine(most, from, to);
  }

  private boolean isTweeter(int driver) {
    return index.roleOf(driver) == WayRole.TWEETER;
  }

  private Branch branchOf(int c, int driver) {
    PlannedChannel channel = plan.channels().get(c);
    if (channel.branches() == null) {
      return null;
    }
    String id = plan.drivers().get(driver).id();
    return channel.branches().stream()
        .filter(branch -> branch.network().matches("(?s).*\\b" + id + "\\b.*"))
        .findFirst()
        .orElse(null);
  }

  /** Whether something passive keeps the bass from a driver. */
  private boolean passivelyGuarded(int c, int driver) {
    Branch branch = branchOf(c, driver);
    return branch != null
        && (branch.highPass() != null
            || branch.ladder().stream()
                .anyMatch(
                    one ->
                        !one.shunt()
                            && one.capacitanceUf() != null
                            && !(one.inParallel() && one.inductanceMh() != null)));
  }

  /** A corner below the resonance of a tweeter guards it from nothing. */
  private boolean guards(Filter highPass, int driver) {
    Double resonance = index.part(driver).driver().fsHz();
    return resonance == null || highPass.frequencyHz() >= resonance;
  }

  private boolean onlyActive(int c, int driver) {
    return isTweeter(driver)
        && plan.channels().get(c).highPass() != null
        && guards(plan.channels().get(c).highPass(), driver)
        && !passivelyGuarded(c, driver);
  }

  /** Half the corner of the active high-pass into the rated impedance. */
  private double capacitorUf(int c, int driver) {
    Filter active = plan.channels().get(c).highPass();
    double corner = active.frequencyHz() / CAPACITOR_BELOW;
    return SeriesCapacitor.VALUE.at(corner, index.part(driver).driver().ratedOhm());
  }

  private void remarkTweeters() {
    List<String> bare = new ArrayList<>();
    List<String> bareAt = new ArrayList<>();
    List<String> active = new ArrayList<>();
    List<String> activeAt = new ArrayList<>();
    double capacitor = 0;
    for (int driver = 0; driver < plan.drivers().size(); driver++) {
      int c = index.channelOf(driver);
      if (c < 0 || !isTweeter(driver)) {
        continue;
      }
      if (onlyActive(c, driver)) {
        active.add(plan.drivers().get(driver).id());
        activeAt.add("/drivers/" + driver);
        capacitor = capacitorUf(c, driver);
      } else if (!passivelyGuarded(c, driver)) {
        bare.add(plan.drivers().get(driver).id());
        bareAt.add("/drivers/" + driver);
      }
    }
    if (!bare.isEmpty()) {
      run.find(PlanFinding.TWEETER_UNPROTECTED).at(bareAt).own("names", bare);
    }
    if (!active.isEmpty()) {
      run.find(PlanFinding.TWEETER_ONLY_ACTIVE)
          .at(activeAt)
          .value(capacitor)
          .own("names", active)
          .with("loss", -SeriesCapacitor.LEVEL.at(1, CAPACITOR_BELOW))
          .with("phase", SeriesCapacitor.PHASE.at(1, CAPACITOR_BELOW));
    }
  }
}
