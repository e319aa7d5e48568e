package org.footwell.vehicle.questions;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.Run;
import org.footwell.electrical.amplifier.OutputStage;
import org.footwell.electrical.amplifier.RatedAmplifier;
import org.footwell.electrical.amplifier.SineSource;
import org.footwell.electrical.load.NetworkReader;
import org.footwell.parts.Cable;
import org.footwell.parts.plan.Branch;
import org.footwell.parts.plan.PlanFigures;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.VehicleSupply;
import org.footwell.physics.Electricity;

/**
 * Figures of a plan at rated impedances, as its single questions take them: each band of a passive
 * crossover as if it had all the signal, each amplifier alone on the voltage of the running engine.
 */
final class RatedFigures implements PlanFigures {

  private final PlanIndex index;

  /** Of each channel its network or branches. */
  private final List<List<Shared>> networks = new ArrayList<>();

  /** Refuses networks that cannot be read. */
  RatedFigures(PlanIndex index, Run run) {
    this.index = index;
    for (int c = 0; c < index.plan().channels().size(); c++) {
      networks.add(networks(c, run));
    }
    run.requireNoFaults();
  }

  private List<Shared> networks(int channel, Run run) {
    Map<String, Integer> drivers = new HashMap<>();
    index.coils(channel).forEach(coil -> drivers.put(coil.word(), coil.driver()));
    PlannedChannel planned = index.plan().channels().get(channel);
    String at = "/channels/" + channel;
    if (planned.network() != null) {
      return List.of(shared(planned.network(), at + "/network", drivers, run));
    }
    List<Shared> branches = new ArrayList<>();
    for (Branch branch : planned.branchList()) {
      String there = at + "/branches/" + branches.size() + "/network";
      branches.add(shared(branch.network(), there, drivers, run));
    }
    return branches;
  }

  private Shared shared(String network, String at, Map<String, Integer> drivers, Run run) {
    return Shared.of(
        NetworkReader.words(network, at, run),
        drivers::get,
        driver -> index.part(driver).driver().ratedOhm());
  }

  @Override
  public Double supplyV() {
    VehicleSupply supply = index.plan().supply();
    if (supply == null) {
      return null;
    }
    return supply.batteryV() != null ? supply.batteryV() : supply.alternator().voltageV();
  }

  @Override
  public double networkOhm(int channel) {
    return networks.get(channel).stream().mapToDouble(Shared::ohm).min().orElseThrow();
  }

  @Override
  public double branchOhm(int channel, int branch) {
    return networks.get(channel).get(branch).ohm();
  }

  @Override
  public double loadOhm(int channel) {
    Cable cable = index.plan().channels().get(channel).cable();
    return networkOhm(channel) + (cable == null ? 0 : cable.loopOhm());
  }

  @Override
  public double statedV(int amplifier) {
    PlannedAmplifier.Outputs first = index.plan().amplifiers().get(amplifier).outputs().get(0);
    return first.rails() == null ? first.ratings().supplyV() : first.rails().supplyV();
  }

  @Override
  public Double outputW(int channel) {
    Double supply = supplyV();
    return outputW(channel, supply == null ? statedV(index.amplifierOf(channel)) : supply);
  }

  @Override
  public Double statedW(int channel) {
    return outputW(channel, statedV(index.amplifierOf(channel)));
  }

  /** Null where nothing comes, or nothing that its ratings could tell. */
  private Double outputW(int channel, double supplyV) {
    PlannedAmplifier.Outputs outputs = index.outputs(channel);
    boolean bridged = index.plan().channels().get(channel).bridged();
    boolean regulated = index.plan().amplifiers().get(index.amplifierOf(channel)).supplyRegulated();
    SineSource source =
        outputs.rails() != null
            ? OutputStage.of(outputs.rails(), bridged, regulated)
            : RatedAmplifier.of(outputs.ratings(), bridged, regulated);
    double power = source.into(loadOhm(channel), supplyV).powerW();
    return power > 0 ? power : null;
  }

  @Override
  public Double outputV(int channel) {
    Double power = outputW(channel);
    return power == null ? null : (Double) Electricity.VOLTAGE.at(power, loadOhm(channel));
  }

  /** Power of each driver of a channel for one watt that its amplifier puts out. */
  private Map<Integer, Double> shares(int channel) {
    double behindCable = networkOhm(channel) / loadOhm(channel);
    Map<Integer, Double> shares = new HashMap<>();
    for (Shared network : networks.get(channel)) {
      double ofNetwork = behindCable * networkOhm(channel) / network.ohm();
      network
          .power()
          .forEach((driver, share) -> shares.merge(driver, ofNetwork * share, Double::sum));
    }
    return shares;
  }

  @Override
  public Double driverW(int driver) {
    int channel = index.channelOf(driver);
    Double power = channel < 0 ? null : outputW(channel);
    return power == null ? null : (Double) (power * shares(channel).get(driver));
  }

  @Override
  public Double bearableW(int channel) {
    double bearable = Double.POSITIVE_INFINITY;
    for (Map.Entry<Integer, Double> share : shares(channel).entrySet()) {
      Double own = index.part(share.getKey()).driver().continuousPowerW();
      if (own == null) {
        return null;
      }
      bearable = Math.min(bearable, own / share.getValue());
    }
    return bearable * networkOhm(channel) / loadOhm(channel);
  }
}
