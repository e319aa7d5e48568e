package org.footwell.vehicle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.footwell.calculation.Rebase;
import org.footwell.calculation.Run;
import org.footwell.electrical.amplifier.AmplifierFinding;
import org.footwell.electrical.amplifier.RailMatch;
import org.footwell.electrical.amplifier.RailMatchRequest;
import org.footwell.electrical.amplifier.RailMatchRequestBuilder;
import org.footwell.electrical.amplifier.RailMatchResult;
import org.footwell.electrical.load.LoadFinding;
import org.footwell.electrical.load.WiringLoad;
import org.footwell.electrical.load.WiringLoadRequest;
import org.footwell.electrical.load.WiringLoadResult;
import org.footwell.parts.AmplifierBuilder;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.VoiceCoil;

/** One channel of a plan: its load, and what its amplifier delivers into it. */
final class ChannelReview {

  private static final WiringLoad WIRING_LOAD = new WiringLoad();
  private static final RailMatch RAIL_MATCH = new RailMatch();

  private final VehiclePlan plan;
  private final Resolved resolved;
  private final Run run;
  private final int index;
  private final VehiclePlan.Channel channel;
  private final VehiclePlan.Output output;

  ChannelReview(VehiclePlan plan, Resolved resolved, Run run, int index) {
    this.plan = plan;
    this.resolved = resolved;
    this.run = run;
    this.index = index;
    this.channel = plan.channels().get(index);
    this.output = resolved.output(index);
  }

  /**
   * What was found of a channel.
   *
   * @param driverPowerW clean sine power of each driver, W, by its index in the plan
   */
  record Powered(WiringLoadResult load, RailMatchResult power, Map<Integer, Double> driverPowerW) {}

  /** The channel's load and power, or empty if it was refused. */
  Optional<Powered> powered() {
    return run.call(WIRING_LOAD, wiring(), wiringPlaces())
        .flatMap(
            load ->
                run.call(RAIL_MATCH, match(load), matchPlaces())
                    .filter(this::heard)
                    .map(power -> new Powered(load, power, driverPower(load, power))));
  }

  /** Refuses a channel from which nothing comes: there is nothing to be worked out of it. */
  private boolean heard(RailMatchResult power) {
    if (power.cleanPowerW() > 0) {
      return true;
    }
    run.refuse(PlanFault.CHANNEL_SILENT)
        .at("/amplifiers/" + resolved.amplifierOf(index) + "/feed/supply_v")
        .given(supplyV())
        .own("amplifier", channel.amplifier())
        .own("channel", channel.id());
    return false;
  }

  private String at() {
    return "/channels/" + index;
  }

  private String outputAt() {
    return "/amplifiers/" + resolved.amplifierOf(index) + "/outputs/" + resolved.outputOf(index);
  }

  private WiringLoadRequest wiring() {
    List<VoiceCoil> coils = new ArrayList<>();
    for (int driver : resolved.driversOf(index)) {
      VehiclePlan.Part part = resolved.part(driver);
      VehiclePlan.Driver place = plan.drivers().get(driver);
      for (int coil = 1; coil <= part.coilCount(); coil++) {
        String name = part.coilCount() == 1 ? place.id() : place.id() + "." + coil;
        coils.add(
            new VoiceCoil(name, part.ratedOhm(), part.reOhm(), null, place.id(), place.band()));
      }
    }
    return new WiringLoadRequest(
        channel.network(),
        coils,
        amplifier()
            .minimumOhm(output.minimumOhm())
            .minimumBridgedOhm(output.minimumBridgedOhm())
            .build(),
        channel.bridged(),
        channel.cable(),
        null);
  }

  private AmplifierBuilder amplifier() {
    return AmplifierBuilder.builder()
        .rails(output.rails())
        .ratings(output.ratings())
        .outputOhm(output.outputOhm())
        .supplyRegulated(plan.amplifiers().get(resolved.amplifierOf(index)).supplyRegulated());
  }

  private Rebase wiringPlaces() {
    Rebase places =
        Rebase.to(at(), channel.id())
            .from("", at())
            .from("/amplifier", outputAt())
            .with("/bridged", at() + "/outputs");
    if (resolved.driversOf(index).stream().allMatch(d -> resolved.part(d).impedance() != null)) {
      // The lowest load is computed, so it need not be guessed.
      places.without(LoadFinding.LOWEST_MODULUS);
    }
    // A meter is put to each coil while fitting; the plan asks for the load only.
    places.without(LoadFinding.METER_READING_SPLIT, LoadFinding.METER_READING_UNKNOWN);
    int coil = 0;
    for (int driver : resolved.driversOf(index)) {
      for (int i = 0; i < resolved.part(driver).coilCount(); i++) {
        places.with("/coils/" + coil++, "/drivers/" + driver);
      }
    }
    return places;
  }

  private RailMatchRequest match(WiringLoadResult load) {
    Double bearable = bearableW(load);
    return RailMatchRequestBuilder.builder()
        .loadOhm(load.loadWithCableOhm() == null ? load.loadOhm() : load.loadWithCableOhm())
        .amplifier(amplifier().build())
        .bridged(channel.bridged())
        .driver(
            bearable == null
                ? null
                : DriverBuilder.builder()
                    .continuousPowerW(bearable)
                    .ratedOhm(load.loadOhm())
                    .build())
        .supplyV(supplyV())
        .build();
  }

  /** Voltage of the battery while the amplifier plays, where the plan says it. */
  private Double supplyV() {
    AmplifierSupply.Feed feed = plan.amplifiers().get(resolved.amplifierOf(index)).feed();
    return feed == null ? null : feed.supplyV();
  }

  /** The minimum load is judged by wiring-load, where it is known which coils make the load. */
  private Rebase matchPlaces() {
    return Rebase.to(at(), channel.id())
        .from("", outputAt())
        .from("/amplifier", outputAt())
        .with("/load_ohm", at() + "/network")
        .with("/bridged", at() + "/outputs")
        .with("/supply_v", "/amplifiers/" + resolved.amplifierOf(index) + "/feed/supply_v")
        .without(
            AmplifierFinding.LOAD_BELOW_MINIMUM,
            AmplifierFinding.LOAD_DIPS_BELOW_MINIMUM,
            AmplifierFinding.MINIMUM_NOT_GIVEN,
            AmplifierFinding.LOAD_HARDLY_ANY,
            AmplifierFinding.LOAD_LOW_BUT_ALLOWED);
  }

  /**
   * Power into the network at which the first driver reaches what it bears, W; null when a driver
   * does not state it. Bands of a passive crossover are judged each as if it got all the signal.
   */
  private Double bearableW(WiringLoadResult load) {
    double bearable = Double.MAX_VALUE;
    Map<Integer, Double> atOneWatt = driverShares(load);
    for (Map.Entry<Integer, Double> share : atOneWatt.entrySet()) {
      Double continuous = resolved.part(share.getKey()).continuousPowerW();
      if (continuous == null) {
        run.find(PlanFinding.HEADROOM_NOT_KNOWN).at(at());
        return null;
      }
      bearable = Math.min(bearable, continuous / share.getValue());
    }
    return bearable == Double.MAX_VALUE ? null : Double.valueOf(bearable);
  }

  /** Power of each driver for one watt into the rated load of the network. */
  private Map<Integer, Double> driverShares(WiringLoadResult load) {
    Map<String, Integer> byName = new HashMap<>();
    resolved.driversOf(index).forEach(d -> byName.put(plan.drivers().get(d).id(), d));
    Map<Integer, Double> shares = new HashMap<>();
    for (WiringLoadResult.CoilShare coil : load.coils()) {
      double inBand = coil.powerShare() * load.loadOhm() / bandLoad(load, coil.band());
      shares.merge(byName.get(coil.driver()), inBand, Double::sum);
    }
    return shares;
  }

  private static double bandLoad(WiringLoadResult load, String band) {
    if (band == null) {
      return load.loadOhm();
    }
    return load.bands().stream()
        .filter(each -> each.band().equals(band))
        .findFirst()
        .orElseThrow()
        .loadOhm();
  }

  private Map<Integer, Double> driverPower(WiringLoadResult load, RailMatchResult power) {
    double delivered = power.cleanPowerW() * cableRatio(load);
    Map<Integer, Double> watts = new HashMap<>();
    driverShares(load).forEach((driver, share) -> watts.put(driver, delivered * share));
    return watts;
  }

  /** The part of the amplifier's power that the cable leaves to the network. */
  private static double cableRatio(WiringLoadResult load) {
    return load.loadWithCableOhm() == null ? 1 : load.loadOhm() / load.loadWithCableOhm();
  }
}
