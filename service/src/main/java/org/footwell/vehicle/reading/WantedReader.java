package org.footwell.vehicle.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.parts.Crossover;
import org.footwell.parts.Filter;
import org.footwell.parts.Terminals;
import org.footwell.parts.plan.ChannelSettings;
import org.footwell.parts.plan.FactorySignal;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.parts.plan.PlannedChannel;
import org.footwell.parts.plan.Signal;
import org.footwell.parts.plan.SoundTarget;
import org.footwell.parts.plan.VehiclePlan;
import org.footwell.physics.Decibels;
import org.footwell.physics.ThirdOctaves;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.Crossing;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.chain.WantedSound;
import org.footwell.vehicle.chain.WantedSoundBuilder;

/** Reads what is wanted and what was set of each channel. */
public final class WantedReader {

  /** Open ends of a band go up to here, Hz. */
  private static final double OPEN_TOP_HZ = 16_000;

  /** RMS voltage in V of a tone so far from full scale, where full scale less overlap gives U volts. */
  private static final Formula.Of3 GAIN_TARGET =
      Formula.of("gain_target_v", "U·10^((tone + overlap)/20)", "V", Source.DEFINITION)
          .with(
              "U",
              "tone",
              "overlap",
              (u, tone, overlap) -> u * Decibels.toAmplitude(tone + overlap));

  private final PlanIndex index;
  private final VehiclePlan plan;
  private final double[] bands;

  WantedReader(PlanIndex index, double[] bands) {
    this.index = index;
    this.plan = index.plan();
    this.bands = bands;
  }

  List<WantedSound> all(List<PlayedChannel> channels) {
    List<WantedSound> all = new ArrayList<>();
    for (int c = 0; c < channels.size(); c++) {
      all.add(of(c, channels.get(c).chain()));
    }
    return all;
  }

  /** What is wanted of one channel. */
  WantedSound of(int c, ChannelChain chain) {
    PlannedChannel channel = plan.channels().get(c);
    SoundTarget.RoleTarget target = plan.target().of(channel.role());
    ChannelSettings set = index.settingsOf(c);
    double[] ends = bandHz(channel, chain);
    int from = nearest(ends[0]);
    int to = Math.max(from, nearest(ends[1]));
    from = bands[from] < ends[0] * (1 - 1e-9) && from < to ? from + 1 : from;
    to = bands[to] > ends[1] * (1 + 1e-9) && to > from ? to - 1 : to;
    return WantedSoundBuilder.builder()
        .fromBand(from)
        .toBand(to)
        .levelDb(target.levelDb())
        .delayMs(target.delayMs())
        .wired(channel.polarity())
        .chainDelayMs(channel.chainDelayMs())
        .setSourceV(
            set == null || set.gainV() == null ? null : sourceV(set.gainV(), plan.signal(), chain))
        .setTrimDb(set == null ? null : set.trimDb())
        .setDelayMs(set == null ? null : set.delayMs())
        .setPolarity(set == null ? null : set.polarity())
        .build();
  }

  /** The third octave nearest to a frequency in Hz, nominal or exact. */
  private int nearest(double hz) {
    int found = 0;
    for (int b = 1; b < bands.length; b++) {
      if (Math.abs(Math.log(bands[b] / hz)) < Math.abs(Math.log(bands[found] / hz))) {
        found = b;
      }
    }
    return found;
  }

  /** The band a trim is found in: as given, else between its corners and the ends of its drivers. */
  private double[] bandHz(PlannedChannel channel, ChannelChain chain) {
    if (channel.bandHz() != null) {
      return new double[] {
        ThirdOctaves.exactHz(channel.bandHz().get(0)), ThirdOctaves.exactHz(channel.bandHz().get(1))
      };
    }
    double lowest = Double.POSITIVE_INFINITY;
    for (int d = 0; d < chain.drivers().size(); d++) {
      lowest = Math.min(lowest, chain.model(d).lowestHz());
    }
    Filter high = highPass(channel);
    Filter low = lowPass(channel);
    return new double[] {
      high == null ? lowest : high.frequencyHz(), low == null ? OPEN_TOP_HZ : low.frequencyHz()
    };
  }

  private Filter highPass(PlannedChannel channel) {
    FactorySignal.Output output = factory(channel);
    return channel.highPass() != null || output == null ? channel.highPass() : output.highPass();
  }

  private Filter lowPass(PlannedChannel channel) {
    FactorySignal.Output output = factory(channel);
    return channel.lowPass() != null || output == null ? channel.lowPass() : output.lowPass();
  }

  private FactorySignal.Output factory(PlannedChannel channel) {
    return plan.factorySignal() == null
        ? null
        : plan.factorySignal().outputs().stream()
            .filter(output -> output.id().equals(channel.factoryOutput()))
            .findFirst()
            .orElse(null);
  }

  /** Source voltage of the programme's peaks from the voltage measured with the test tone. */
  public static double sourceV(double gainV, Signal signal, ChannelChain chain) {
    return gainV
        * Decibels.toAmplitude(-signal.testToneDbfs() - signal.overlapDb())
        * atTerminals(signal, chain);
  }

  /** The other way: what a meter shows with the test tone. */
  public static double gainV(double sourceV, Signal signal, ChannelChain chain, Arithmetic steps) {
    double terminals = sourceV / atTerminals(signal, chain);
    return steps.apply(GAIN_TARGET, terminals, signal.testToneDbfs(), signal.overlapDb());
  }

  private static double atTerminals(Signal signal, ChannelChain chain) {
    return signal.terminals() == Terminals.OPEN ? 1 : chain.output().openOverLoaded();
  }

  /** Where channels meet: each lower one with all its uppers. */
  List<Crossing> crossings() {
    Map<Integer, List<Crossing.Up>> byLower = new LinkedHashMap<>();
    for (int i = 0; i < plan.crossovers().size(); i++) {
      Crossover one = plan.crossovers().get(i);
      byLower
          .computeIfAbsent(index.channel(one.lower()), lower -> new ArrayList<>())
          .add(new Crossing.Up(index.channel(one.upper()), one.frequencyHz(), i));
    }
    return byLower.entrySet().stream()
        .map(entry -> new Crossing(entry.getKey(), entry.getValue()))
        .toList();
  }
}
