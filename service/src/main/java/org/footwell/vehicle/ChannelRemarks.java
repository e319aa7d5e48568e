package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.footwell.calculation.Run;
import org.footwell.parts.Position;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Decibels;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.ChannelState;
import org.footwell.vehicle.chain.Limit;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.reading.Modelled;

/** What is to be said of channels: loads, gains, settings, polarity, and what hangs together. */
final class ChannelRemarks {

  /** A gain so far below the clip point wastes the amplifier, dB; common practice, no source. */
  private static final double FAR_BELOW_DB = 6;

  /** Less than this is rounding, dB. */
  private static final double WORTH_A_WORD_DB = 0.1;

  /** Drivers of a channel farther apart than this have no common delay, m; common practice. */
  private static final double APART_M = 0.6;

  /** A loss at a crossover that is worth a word, dB; common practice, no source. */
  private static final double BASS_LOST_DB = -3;

  /** IEC 60268-5: the modulus is nowhere in the rated range below 80 % of the rated impedance. */
  private static final double DIP = 0.8;

  private final Modelled modelled;
  private final PlanIndex index;
  private final VehiclePlan plan;
  private final List<Optional<LowestOhm>> lowest;
  private final Run run;

  /**
   * Of all channels.
   *
   * @param lowest of each channel, where its impedance is known
   */
  ChannelRemarks(Modelled modelled, List<Optional<LowestOhm>> lowest, Run run) {
    this.modelled = modelled;
    this.lowest = lowest;
    this.index = modelled.index();
    this.plan = index.plan();
    this.run = run;
  }

  void remark() {
    gains();
    settings();
    loads();
    coils();
    polarities();
    unused();
    apart();
  }

  /** Channels with something alike to be said of them. */
  private static final class Alike {
    final List<String> names = new ArrayList<>();
    final List<String> drivers = new ArrayList<>();
    final List<String> places = new ArrayList<>();
    double most;

    void add(String name, String place, double value) {
      names.add(name);
      places.add(place);
      most = Math.max(most, value);
    }
  }

  private void gains() {
    Map<String, Alike> alike = new LinkedHashMap<>();
    for (int c = 0; c < plan.channels().size(); c++) {
      PlayedChannel.Allowed gain = modelled.levelled().gains().get(c);
      double below = below(c);
      if (gain.by() == Limit.FULL_SCALE || below < WORTH_A_WORD_DB) {
        continue;
      }
      boolean far = below > FAR_BELOW_DB;
      Alike group = alike.computeIfAbsent(gain.by() + " " + far, key -> new Alike());
      group.names.add(plan.channels().get(c).id());
      group.drivers.add(plan.drivers().get(gain.driver()).id());
      group.places.add("/channels/" + c);
      group.most = Math.max(group.most, below);
    }
    alike.forEach(
        (key, group) ->
            run.find(
                    key.endsWith("true")
                        ? PlanFinding.GAIN_FAR_BELOW_CLIP
                        : PlanFinding.GAIN_BELOW_CLIP)
                .at(group.places)
                .value(group.most)
                .own("names", group.names)
                .own("drivers", group.drivers)
                .with("reason", Limit.valueOf(key.substring(0, key.indexOf(' ')))));
  }

  /** How far the gain of a channel stays below the clip point, dB. */
  double below(int c) {
    double clip = modelled.levelled().cruising().clipV().get(c);
    return Decibels.ofAmplitude(clip / modelled.levelled().gains().get(c).volts());
  }

  /** What filters and settings do beyond full scale, and against what is advised. */
  private void settings() {
    Alike set = new Alike();
    Alike turned = new Alike();
    for (int c = 0; c < plan.channels().size(); c++) {
      PlayedChannel channel = modelled.model().channels().get(c);
      ChannelState state = modelled.states().get(c);
      double clip = modelled.levelled().cruising().clipV().get(c);
      double over =
          Decibels.ofAmplitude(
              state.sourceV() * Decibels.toAmplitude(state.trimDb()) * channel.boost() / clip);
      if (over > WORTH_A_WORD_DB && modelled.model().wanted().get(c).setSourceV() != null) {
        set.add(plan.channels().get(c).id(), "/channels/" + c, over);
      } else if (over > WORTH_A_WORD_DB) {
        run.find(PlanFinding.BOOST_CLIPS)
            .at("/channels/" + c)
            .value(over)
            .own("name", plan.channels().get(c).id());
      }
      if (state.polarity() != modelled.advised().get(c).polarity()) {
        turned.add(plan.channels().get(c).id(), "/channels/" + c, 0);
      }
    }
    if (!set.names.isEmpty()) {
      run.find(PlanFinding.SET_BEYOND_CLIP).at(set.places).value(set.most).own("names", set.names);
    }
    if (!turned.names.isEmpty()) {
      run.find(PlanFinding.SET_POLARITY_DIFFERS).at(turned.places).own("names", turned.names);
    }
    double advised = modelled.alignment().lossDb(plan.mainSeat(), modelled.advised());
    double asSet = modelled.alignment().lossDb(plan.mainSeat(), modelled.states());
    if (asSet < BASS_LOST_DB && asSet < advised - 1) {
      run.find(PlanFinding.SET_LOSES_BASS).at("/settings").value(-asSet).limit(-advised);
    }
  }

  private void loads() {
    Map<String, Alike> below = new LinkedHashMap<>();
    Map<String, Alike> dips = new LinkedHashMap<>();
    for (int c = 0; c < plan.channels().size(); c++) {
      ChannelChain chain = modelled.model().channels().get(c).chain();
      Double least = index.outputs(c).allowedOhm(plan.channels().get(c).bridged());
      if (least == null) {
        continue;
      }
      if (chain.ratedOhm() < least * (1 - 1e-9)) {
        add(below, chain.ratedOhm() + " " + least, c, chain.ratedOhm());
      } else if (lowest.get(c).isPresent()) {
        double ohm = lowest.get(c).get().withCable().value();
        if (ohm < DIP * least) {
          add(dips, "" + least, c, ohm);
        }
      }
    }
    below.forEach(
        (key, group) ->
            run.find(PlanFinding.LOAD_BELOW_MINIMUM)
                .at(group.places)
                .value(group.most)
                .limit(Double.parseDouble(key.substring(key.indexOf(' ') + 1)))
                .own("names", group.names));
    dips.forEach(
        (key, group) ->
            run.find(PlanFinding.LOAD_DIPS_BELOW_MINIMUM)
                .at(group.places)
                .value(group.most)
                .limit(Double.parseDouble(key))
                .own("names", group.names));
  }

  private void add(Map<String, Alike> groups, String key, int c, double value) {
    Alike group = groups.computeIfAbsent(key, any -> new Alike());
    group.most = group.names.isEmpty() ? value : Math.min(group.most, value);
    group.names.add(plan.channels().get(c).id());
    group.places.add("/channels/" + c);
  }

  /** A driver is as stated only where all its coils get the same. */
  private void coils() {
    Alike unlike = new Alike();
    for (int c = 0; c < plan.channels().size(); c++) {
      ChannelChain chain = modelled.model().channels().get(c).chain();
      for (int d = 0; d < chain.drivers().size(); d++) {
        if (chain.unlikeCoils(d)) {
          int driver = chain.drivers().get(d);
          unlike.add(plan.drivers().get(driver).id(), "/channels/" + c, 0);
        }
      }
    }
    if (!unlike.names.isEmpty()) {
      run.find(PlanFinding.COILS_UNLIKE).at(unlike.places).own("names", unlike.names);
    }
  }

  /** Left and right that play the same band push the same way. */
  private void polarities() {
    for (int a = 0; a < plan.channels().size(); a++) {
      for (int b = a + 1; b < plan.channels().size(); b++) {
        PlannedChannel one = plan.channels().get(a);
        PlannedChannel other = plan.channels().get(b);
        if (one.role() == other.role()
            && index.isPair(a, b)
            && modelled.states().get(a).polarity() != modelled.states().get(b).polarity()) {
          run.find(PlanFinding.OPPOSITE_POLARITY)
              .at(List.of("/channels/" + a, "/channels/" + b))
              .own("one", one.id())
              .own("other", other.id());
        }
      }
    }
  }

  private void unused() {
    List<String> names = new ArrayList<>();
    List<String> places = new ArrayList<>();
    for (int d = 0; d < plan.drivers().size(); d++) {
      if (index.channelOf(d) < 0) {
        names.add(plan.drivers().get(d).id());
        places.add("/drivers/" + d);
      }
    }
    if (!names.isEmpty()) {
      run.find(PlanFinding.DRIVER_NOT_CONNECTED).at(places).own("names", names);
    }
    List<String> parts = new ArrayList<>();
    List<String> at = new ArrayList<>();
    for (int p = 0; p < plan.newParts().size(); p++) {
      String id = plan.newParts().get(p).id();
      if (plan.drivers().stream().noneMatch(driver -> driver.part().equals(id))) {
        parts.add(id);
        at.add("/new_parts/" + p);
      }
    }
    if (!parts.isEmpty()) {
      run.find(PlanFinding.PART_NOT_USED).at(at).own("names", parts);
    }
  }

  private void apart() {
    List<String> names = new ArrayList<>();
    List<String> places = new ArrayList<>();
    double most = 0;
    for (int c = 0; c < plan.channels().size(); c++) {
      double farthest = 0;
      for (int one : index.driversOf(c)) {
        for (int other : index.driversOf(c)) {
          Position from = plan.drivers().get(one).position();
          farthest = Math.max(farthest, from.distanceTo(plan.drivers().get(other).position()));
        }
      }
      if (farthest > APART_M) {
        names.add(plan.channels().get(c).id());
        places.add("/channels/" + c);
        most = Math.max(most, farthest);
      }
    }
    if (!names.isEmpty()) {
      run.find(PlanFinding.DRIVERS_APART).at(places).value(most).own("names", names);
    }
  }
}
