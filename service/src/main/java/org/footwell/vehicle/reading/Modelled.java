package org.footwell.vehicle.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.Built;
import org.footwell.calculation.Run;
import org.footwell.parts.Processor;
import org.footwell.parts.Seat;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.SoundTarget;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Decibels;
import org.footwell.vehicle.chain.Alignment;
import org.footwell.vehicle.chain.ChannelState;
import org.footwell.vehicle.chain.EngineState;
import org.footwell.vehicle.chain.FedAmplifier;
import org.footwell.vehicle.chain.Grid;
import org.footwell.vehicle.chain.Operation;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.chain.PowerSource;
import org.footwell.vehicle.chain.SoundField;
import org.footwell.vehicle.chain.VehicleModel;
import org.footwell.vehicle.chain.WantedSound;

/**
 * A plan read into the model and set: what everything that is said of it is read from.
 *
 * @param advised the settings a colleague should make
 * @param states those made, where they were, else those advised
 * @param heard the same as they sound while cruising
 */
@Built
public record Modelled(
    PlanIndex index,
    Grid grid,
    VehicleModel model,
    SupplyReader supply,
    List<FedAmplifier> amplifiers,
    VehicleModel.Levelled levelled,
    Alignment alignment,
    List<ChannelState> advised,
    List<ChannelState> states,
    List<ChannelState> heard,
    Map<EngineState, Operation> operations) {

  /** Above this frequency phases in a cabin cannot be predicted, Hz; common practice, no source. */
  public static final double INCOHERENT_ABOVE_HZ = 300;

  /** Reads a plan; refuses what cannot be read. */
  public static Modelled of(PlanIndex index, Run run) {
    VehiclePlan plan = index.plan();
    ModelReader reader = new ModelReader(index, run);
    List<PlayedChannel> channels = reader.channels();
    SupplyReader supply = new SupplyReader(index, channels);
    List<FedAmplifier> amplifiers = supply.amplifiers();
    WantedReader wants = new WantedReader(index, reader.grid().bands());
    List<WantedSound> wanted = wants.all(channels);
    SoundField field = field(channels, reader.grid());
    Map<EngineState, PowerSource> sources = supply.sources();
    refuseSilent(index, channels, run);
    VehicleModel model =
        new VehicleModel(
            channels,
            amplifiers,
            sources,
            wanted,
            plan.target().curve().curve(),
            field,
            plan.mainSeat(),
            seatWeight(plan));
    run.checkDeadline();
    VehicleModel.Levelled levelled = model.levelled();
    Alignment alignment =
        new Alignment(model, wants.crossings(), levelled.states(), INCOHERENT_ABOVE_HZ);
    List<ChannelState> advised = new ArrayList<>();
    List<ChannelState> states = new ArrayList<>();
    for (int c = 0; c < channels.size(); c++) {
      ChannelState level = levelled.states().get(c);
      WantedSound own = wanted.get(c);
      double advisedMs = stepped(alignment.delayMs(c), plan.processor());
      double set = own.setDelayMs() == null ? advisedMs : own.setDelayMs();
      advised.add(
          level.delayed(advisedMs + own.chainDelayMs(), level.polarity() * alignment.turn(c)));
      int turn = own.setPolarity() == null ? alignment.turn(c) : own.setPolarity();
      states.add(level.delayed(set + own.chainDelayMs(), level.polarity() * turn));
    }
    Map<EngineState, Operation> operations = new EnumMap<>(EngineState.class);
    operations.put(EngineState.CRUISING, levelled.cruising());
    for (EngineState situation : sources.keySet()) {
      operations.computeIfAbsent(situation, when -> model.operation(when, states));
    }
    return ModelledBuilder.builder()
        .index(index)
        .grid(reader.grid())
        .model(model)
        .supply(supply)
        .amplifiers(amplifiers)
        .levelled(levelled)
        .alignment(alignment)
        .advised(advised)
        .states(states)
        .heard(model.heard(states, levelled.cruising()))
        .operations(operations)
        .build();
  }

  /** What channels make together. */
  static SoundField field(List<PlayedChannel> channels, Grid grid) {
    return new SoundField(
        channels.stream().map(PlayedChannel::chain).toList(),
        channels.stream().map(PlayedChannel::drive).toList(),
        grid,
        INCOHERENT_ABOVE_HZ);
  }

  /** How much each seat counts: the main one alone, or all by their weights. */
  static double[] seatWeight(VehiclePlan plan) {
    double[] weight = new double[plan.seats().size()];
    if (plan.target().seats() == SoundTarget.Seats.MAIN) {
      weight[plan.mainSeat()] = 1;
      return weight;
    }
    double sum = plan.seats().stream().mapToDouble(Seat::weight).sum();
    Arrays.setAll(weight, s -> plan.seats().get(s).weight() / sum);
    return weight;
  }

  /** Refuses channels from which nothing comes even where nothing else draws. */
  private static void refuseSilent(PlanIndex index, List<PlayedChannel> channels, Run run) {
    VehiclePlan plan = index.plan();
    for (int c = 0; c < channels.size(); c++) {
      int amplifier = index.amplifierOf(c);
      double volts =
          plan.supply() == null
              ? PlannedSource.ratedV(plan.amplifiers().get(amplifier))
              : PlannedFeed.startV(plan.supply());
      if (!(channels.get(c).chain().output().cleanW(volts) > 0)) {
        run.refuse(PlanRefusal.CHANNEL_SILENT)
            .at("/amplifiers/" + amplifier)
            .given(volts)
            .own("amplifier", plan.channels().get(c).amplifier())
            .own("channel", plan.channels().get(c).id());
      }
    }
    run.requireNoFaults();
  }

  /** Trim advised for a channel, dB: with the gains advised, whatever was set. */
  public double advisedTrimDb(int channel) {
    return levelled.advisedTrimDb().get(channel);
  }

  /** Voltage at an amplifier with the programme while cruising, V; its rated one where none holds. */
  public double cruisingV(int amplifier) {
    Operation cruising = levelled.cruising();
    return cruising.works()
        ? cruising.mean().loadV().get(amplifier)
        : amplifiers.get(amplifier).ratedV();
  }

  /** Level at the main seat of a sine with the peaks the programme has in a channel, dB SPL. */
  public double sineDbSpl(int channel) {
    VehiclePlan plan = index.plan();
    double level = model.field().alone(plan.mainSeat(), heard, channel).dbSpl();
    return level + plan.programme().crestFactorDb() - Decibels.SINE_CREST;
  }

  /** Most of a clean sine that a driver of a channel gets while cruising, against its rating, W. */
  public double cleanW(int channel, int d) {
    double clip = levelled.cruising().clipV().get(channel);
    return model.channels().get(channel).drive().mostHeldW(d) * clip * clip;
  }

  /** A channel moved for its phase does not arrive with the others. */
  public boolean movedForPhase(int c) {
    return alignment().matched().stream().anyMatch(one -> one.crossing().lower() == c);
  }

  /** A delay on the steps of the processor, ms; without one nothing can be delayed. */
  public static double stepped(double ms, Processor processor) {
    if (processor == null) {
      return 0;
    }
    double step = 1000 * processor.stepSamples() / processor.rateHz();
    return Math.round(ms / step) * step;
  }
}
