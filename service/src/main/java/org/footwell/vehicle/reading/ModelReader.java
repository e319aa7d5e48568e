package org.footwell.vehicle.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.footwell.acoustic.enclosure.radiator.CabinCurve;
import org.footwell.calculation.Run;
import org.footwell.electrical.amplifier.SineSource;
import org.footwell.electrical.load.Network;
import org.footwell.electrical.load.NetworkReader;
import org.footwell.parts.Cable;
import org.footwell.parts.LevelAt;
import org.footwell.parts.Position;
import org.footwell.parts.plan.Branch;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.PlayedProgramme;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Air;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Decibels;
import org.footwell.physics.ProgrammeSpectrum;
import org.footwell.vehicle.chain.AmplifierOutput;
import org.footwell.vehicle.chain.BranchCircuit;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.CoilTree;
import org.footwell.vehicle.chain.DriverModel;
import org.footwell.vehicle.chain.FilterChain;
import org.footwell.vehicle.chain.Grid;
import org.footwell.vehicle.chain.GridLoudspeaker;
import org.footwell.vehicle.chain.Loudspeaker;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.chain.Way;

/** Reads the channels of a plan into the model. */
public final class ModelReader {

  private final PlanIndex index;
  private final VehiclePlan plan;
  private final Run run;
  private final Grid grid;
  private final double speed;
  private final CabinCurve cabin;
  private final Map<List<Object>, DriverModel> models = new HashMap<>();
  private final Map<List<Object>, FilterChain> filters = new HashMap<>();

  /** Drivers alike have one model, so loudspeakers alike are equal. */
  private final Map<Loudspeaker, GridLoudspeaker> grids = new HashMap<>();

  public ModelReader(PlanIndex index, Run run) {
    this.index = index;
    this.plan = index.plan();
    this.run = run;
    grid = Grid.of(spectrum(plan.programme()));
    speed = Air.SPEED_OF_SOUND.at(plan.vehicle().temperatureC());
    cabin = new CabinCurve(plan.vehicle().cabin(), plan.vehicle().temperatureC());
  }

  public static ProgrammeSpectrum spectrum(PlayedProgramme programme) {
    List<LevelAt> given = programme.spectrum();
    return given == null
        ? ProgrammeSpectrum.simulated()
        : ProgrammeSpectrum.ofBands(
            given.stream().mapToDouble(LevelAt::frequencyHz).toArray(),
            given.stream().mapToDouble(LevelAt::levelDb).toArray());
  }

  Grid grid() {
    return grid;
  }

  /** Every channel of the plan; refuses networks that cannot be read. */
  List<PlayedChannel> channels() {
    List<Loudspeaker> loudspeakers = new ArrayList<>();
    for (int c = 0; c < plan.channels().size(); c++) {
      loudspeakers.add(loudspeaker(c));
    }
    run.requireNoFaults();
    List<PlayedChannel> channels = new ArrayList<>();
    for (int c = 0; c < loudspeakers.size(); c++) {
      run.checkDeadline();
      channels.add(played(c, chain(c, loudspeakers.get(c), outputOhm(c))));
    }
    return channels;
  }

  /** The chain of one channel, of a plan that can be read. */
  public ChannelChain chain(int c) {
    return chain(c, loudspeaker(c), outputOhm(c));
  }

  /** One channel, of a plan that can be read. */
  PlayedChannel channel(int c) {
    return played(c, chain(c));
  }

  /** One channel behind another output impedance, as connected. */
  PlayedChannel channel(int c, double outputOhm) {
    return played(c, chain(c, loudspeaker(c), outputOhm));
  }

  private PlayedChannel played(int c, ChannelChain chain) {
    return PlayedChannel.of(
        chain, plan.programme().crestFactorDb(), plan.channels().get(c).rmsLimiter());
  }

  private ChannelChain chain(int c, Loudspeaker loudspeaker, double outputOhm) {
    double cable = cableOhm(plan.channels().get(c).cable());
    double load = loudspeaker.ratedOhm() + cable;
    return new ChannelChain(
        grids.computeIfAbsent(loudspeaker, any -> new GridLoudspeaker(any, grid)),
        cable,
        filters(plan.channels().get(c)),
        new AmplifierOutput(source(c), load, outputOhm, index.amplifierOf(c)),
        index.driversOf(c),
        ways(index.driversOf(c)));
  }

  private Way[][] ways(List<Integer> drivers) {
    Way[][] ways = new Way[drivers.size()][plan.seats().size()];
    for (int d = 0; d < ways.length; d++) {
      Position from = plan.drivers().get(drivers.get(d)).position();
      for (int s = 0; s < ways[d].length; s++) {
        double distance = from.distanceTo(plan.seats().get(s).head());
        ways[d][s] = new Way(distance, plan.vehicle().cabin(), cabin, speed);
      }
    }
    return ways;
  }

  private FilterChain filters(PlannedChannel channel) {
    List<Object> alike =
        List.of(
            Optional.ofNullable(channel.highPass()),
            Optional.ofNullable(channel.lowPass()),
            channel.equaliser(),
            Optional.ofNullable(channel.factoryOutput()));
    return filters.computeIfAbsent(alike, any -> FilterChain.of(plan, channel, grid));
  }

  private DriverModel model(int channel, int driver) {
    int driven =
        (int) index.coils(channel).stream().filter(coil -> coil.driver() == driver).count();
    List<Object> alike =
        List.of(
            index.partOf(driver),
            driven,
            Optional.ofNullable(plan.drivers().get(driver).enclosure()));
    return models.computeIfAbsent(
        alike,
        any ->
            DriverModel.of(
                index.part(driver),
                plan.drivers().get(driver).enclosure(),
                driven,
                plan.vehicle().temperatureC()));
  }

  private SineSource source(int c) {
    return PlannedSource.of(
        index.outputs(c),
        plan.channels().get(c).bridged(),
        plan.amplifiers().get(index.amplifierOf(c)).supplyRegulated());
  }

  /** Output impedance of a channel's amplifier as connected, ohm; 0 where it is not known. */
  private double outputOhm(int c) {
    Double output = index.outputs(c).outputOhm();
    double halves = plan.channels().get(c).bridged() ? 2 : 1;
    return output == null ? 0 : halves * output;
  }

  private Loudspeaker loudspeaker(int c) {
    PlannedChannel channel = plan.channels().get(c);
    List<Loudspeaker.Load> loads = new ArrayList<>();
    List<BranchCircuit> branches = new ArrayList<>();
    String at = "/channels/" + c;
    if (channel.network() != null) {
      CoilTree tree = tree(c, channel.network(), at + "/network", loads);
      branches.add(new BranchCircuit(List.of(), List.of(), 1, tree));
    } else {
      for (int b = 0; b < channel.branches().size(); b++) {
        Branch branch = channel.branches().get(b);
        CoilTree tree = tree(c, branch.network(), at + "/branches/" + b + "/network", loads);
        double pad = branch.padDb() == null ? 1 : Decibels.toAmplitude(-branch.padDb());
        branches.add(new BranchCircuit(branch.ladder(), stated(branch), pad, tree));
      }
    }
    List<DriverModel> own = index.driversOf(c).stream().map(driver -> model(c, driver)).toList();
    return new Loudspeaker(own, loads, branches);
  }

  private CoilTree tree(int c, String network, String at, List<Loudspeaker.Load> loads) {
    Map<String, PlanIndex.NamedCoil> named = new LinkedHashMap<>();
    index.coils(c).forEach(coil -> named.put(coil.word(), coil));
    List<Integer> drivers = index.driversOf(c);
    Network<String> words = NetworkReader.words(network, at, run);
    return CoilTree.of(
        words.fold(
            word -> {
              PlanIndex.NamedCoil coil = named.get(word);
              loads.add(
                  coil == null
                      ? new Loudspeaker.Load(-1, Double.parseDouble(word))
                      : new Loudspeaker.Load(
                          drivers.indexOf(coil.driver()),
                          index.part(coil.driver()).driver().ratedOhm()));
              return Network.leaf(loads.size() - 1);
            },
            Network::series,
            Network::parallel));
  }

  private static List<AnalogFilter> stated(Branch branch) {
    List<AnalogFilter> stated = new ArrayList<>();
    if (branch.highPass() != null) {
      stated.add(branch.highPass().highPass());
    }
    if (branch.lowPass() != null) {
      stated.add(branch.lowPass().lowPass());
    }
    return stated;
  }

  /** Both conductors of a speaker cable, ohm; 0 without one. */
  static double cableOhm(Cable cable) {
    return cable == null ? 0 : cable.loopOhm();
  }
}
