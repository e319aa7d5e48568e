package org.footwell.vehicle.chain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * The whole vehicle: all channels, what feeds their amplifiers, and what is wanted. Everything a plan
 * says is read from its states.
 */
public final class VehicleModel {

  private static final int MOST_TURNS = 200;
  private static final double CLOSE = 1e-11;

  private final List<PlayedChannel> channels;
  private final List<FedAmplifier> amplifiers;
  private final Map<EngineState, PowerSource> sources;
  private final List<WantedSound> wanted;
  private final double[] baseDb;
  private final SoundField field;
  private final int mainSeat;
  private final double[] seatWeight;

  /**
   * @param seatWeight how much each seat counts for delays and trims, 1 together
   * @param amplifiers by their index in the plan; null where nothing is known of what one draws
   * @param sources at least for {@link EngineState#CRUISING}
   * @param targetDb wanted curve over frequency in Hz
   */
  public VehicleModel(
      List<PlayedChannel> channels,
      List<FedAmplifier> amplifiers,
      Map<EngineState, PowerSource> sources,
      List<WantedSound> wanted,
      DoubleUnaryOperator targetDb,
      SoundField field,
      int mainSeat,
      double[] seatWeight) {
    this.channels = List.copyOf(channels);
    this.amplifiers = amplifiers;
    this.sources = new EnumMap<>(sources);
    this.wanted = List.copyOf(wanted);
    this.field = field;
    this.mainSeat = mainSeat;
    this.seatWeight = seatWeight.clone();
    baseDb = new double[channels.size()];
    double[] bands = field.grid().bands();
    for (int c = 0; c < baseDb.length; c++) {
      WantedSound own = wanted.get(c);
      double sum = 0;
      for (int b = own.fromBand(); b <= own.toBand(); b++) {
        sum +=
            channels.get(c).chain().heard()
                ? transferDb(c, b) - targetDb.applyAsDouble(bands[b])
                : Double.NaN;
      }
      baseDb[c] = sum / (own.toBand() - own.fromBand() + 1) - own.levelDb();
    }
  }

  /** Level of a channel in a third octave over the seats that count, dB. */
  private double transferDb(int channel, int band) {
    double sum = 0;
    for (int s = 0; s < seatWeight.length; s++) {
      sum += seatWeight[s] == 0 ? 0 : seatWeight[s] * field.transferDb(s, channel, band);
    }
    return sum;
  }

  /** How much each seat counts for delays and trims; together 1. */
  public double[] seatWeight() {
    return seatWeight.clone();
  }

  public List<PlayedChannel> channels() {
    return channels;
  }

  public SoundField field() {
    return field;
  }

  public List<WantedSound> wanted() {
    return wanted;
  }

  public int mainSeat() {
    return mainSeat;
  }

  /** Mean level of a channel's band against what is wanted of it, dB for a source of 1 V. */
  public double baseDb(int channel) {
    return baseDb[channel];
  }

  /** The supply in each situation that is known. */
  public Map<EngineState, PowerSource> sources() {
    return sources;
  }

  /**
   * Gains, trims and the voltages they hold at: one fixed point.
   *
   * @param gains what may be set, with what ends it
   * @param advisedTrimDb of each channel, whatever was set
   * @param states with gains and trims, without delays
   * @param cruising the system with them; its means are null where no voltage satisfies all amplifiers
   */
  public record Levelled(
      List<PlayedChannel.Allowed> gains,
      List<Double> advisedTrimDb,
      List<ChannelState> states,
      Operation cruising) {}

  /** Sets gains and trims at the voltage that is left while cruising. */
  public Levelled levelled() {
    double[] volts = new double[amplifiers.size()];
    PowerSource source = sources.get(EngineState.CRUISING);
    for (int i = 0; i < volts.length; i++) {
      volts[i] = start(source, i);
    }
    Levelled found = null;
    for (int turn = 0; turn < MOST_TURNS; turn++) {
      List<PlayedChannel.Allowed> gains = new ArrayList<>();
      for (PlayedChannel channel : channels) {
        gains.add(channel.gain(clipV(channel, volts)));
      }
      double[] trims = trims(gains);
      List<ChannelState> states = trimmed(gains, trims);
      Operation operation = operation(EngineState.CRUISING, states, volts);
      found = new Levelled(gains, Arrays.stream(trims).boxed().toList(), states, operation);
      if (!operation.works()) {
        return found;
      }
      double moved = 0;
      for (int i = 0; i < volts.length; i++) {
        double next = operation.mean().loadV().get(i);
        moved = Math.max(moved, Math.abs(next - volts[i]) / next);
        volts[i] = next;
      }
      if (moved < CLOSE) {
        return found;
      }
    }
    return found;
  }

  /** Where nothing draws: the held voltage, or the amplifier's own rating where no supply is given. */
  private double start(PowerSource source, int amplifier) {
    return source == null
        ? amplifiers.get(amplifier).ratedV()
        : Double.isNaN(source.heldV()) ? source.openV() : source.heldV();
  }

  private static double clipV(PlayedChannel channel, double[] volts) {
    AmplifierOutput output = channel.chain().output();
    return output.clipV(volts[output.amplifier()]);
  }

  /** What brings every channel to what is wanted, with the gains advised: 0 for the quietest. */
  private double[] trims(List<PlayedChannel.Allowed> gains) {
    double[] level = new double[channels.size()];
    double least = Double.POSITIVE_INFINITY;
    for (int c = 0; c < level.length; c++) {
      level[c] = baseDb[c] + 20 * Math.log10(gains.get(c).volts());
      if (!Double.isNaN(level[c])) {
        least = Math.min(least, level[c]);
      }
    }
    double[] trims = new double[level.length];
    for (int c = 0; c < level.length; c++) {
      trims[c] = Double.isNaN(level[c]) ? 0 : least - level[c];
    }
    return trims;
  }

  private List<ChannelState> trimmed(List<PlayedChannel.Allowed> gains, double[] trims) {
    List<ChannelState> states = new ArrayList<>();
    for (int c = 0; c < trims.length; c++) {
      WantedSound own = wanted.get(c);
      states.add(
          new ChannelState(
              sourceV(c, gains),
              own.setTrimDb() == null ? trims[c] : own.setTrimDb(),
              own.wired(),
              own.chainDelayMs()));
    }
    return states;
  }

  private double sourceV(int c, List<PlayedChannel.Allowed> gains) {
    Double set = wanted.get(c).setSourceV();
    return set == null ? gains.get(c).volts() : set;
  }

  /** The system with settings in one of the situations known. */
  public Operation operation(EngineState situation, List<ChannelState> states) {
    PowerSource source = sources.get(situation);
    double[] volts = new double[amplifiers.size()];
    for (int i = 0; i < volts.length; i++) {
      volts[i] = start(source, i);
    }
    Operation operation = operation(situation, states, volts);
    for (int turn = 0; turn < MOST_TURNS && operation.works(); turn++) {
      double moved = 0;
      for (int i = 0; i < volts.length; i++) {
        double next = operation.mean().loadV().get(i);
        moved = Math.max(moved, Math.abs(next - volts[i]) / next);
        volts[i] = next;
      }
      if (moved < CLOSE) {
        return operation;
      }
      operation = operation(situation, states, volts);
    }
    return operation;
  }

  private Operation operation(EngineState situation, List<ChannelState> states, double[] volts) {
    List<Double> clip = new ArrayList<>();
    List<Double> mean = new ArrayList<>();
    double[] meanOut = new double[amplifiers.size()];
    double[] sineOut = new double[amplifiers.size()];
    for (int c = 0; c < channels.size(); c++) {
      PlayedChannel channel = channels.get(c);
      ChannelState state = states.get(c);
      AmplifierOutput output = channel.chain().output();
      double clipV = clipV(channel, volts);
      double played = state.trimmedV() * channel.left(state, clipV);
      double watts = channel.meanW() * played * played;
      clip.add(clipV);
      mean.add(watts);
      meanOut[output.amplifier()] += watts;
      FedAmplifier fed = amplifiers.get(output.amplifier());
      sineOut[output.amplifier()] += output.cleanW(fed.ratedV());
    }
    PowerSource source = sources.get(situation);
    if (source == null) {
      return new Operation(situation, unfed(volts), null, clip, mean);
    }
    PowerSource.Load[] means = new PowerSource.Load[volts.length];
    PowerSource.Load[] sines = new PowerSource.Load[volts.length];
    for (int i = 0; i < volts.length; i++) {
      FedAmplifier fed = amplifiers.get(i);
      double loop = fed.loopOhm();
      means[i] = new PowerSource.Load(fed.meanW(meanOut[i]), Double.NaN, loop);
      double at = fed.regulated() ? Double.NaN : fed.ratedV();
      sines[i] = new PowerSource.Load(fed.sineW(sineOut[i]), at, loop);
    }
    return new Operation(situation, source.meet(means), source.meet(sines), clip, mean);
  }

  /** Nothing is known of the supply: every amplifier has what its powers are stated for. */
  private static PowerSource.Meeting unfed(double[] volts) {
    List<Double> nothing = Collections.nCopies(volts.length, 0.0);
    List<Double> rated = Arrays.stream(volts).boxed().toList();
    return new PowerSource.Meeting(Double.NaN, nothing, rated, false);
  }

  /** The settings as they sound while cruising: what clips or is limited is less loud. */
  public List<ChannelState> heard(List<ChannelState> states, Operation operation) {
    List<ChannelState> heard = new ArrayList<>();
    for (int c = 0; c < states.size(); c++) {
      ChannelState state = states.get(c);
      double left = channels.get(c).left(state, operation.clipV().get(c));
      heard.add(
          new ChannelState(
              state.sourceV() * left, state.trimDb(), state.polarity(), state.delayMs()));
    }
    return heard;
  }

  /**
   * The largest clean level.
   *
   * @param driveDb how far below full scale the whole system stays, 0 or less
   * @param by what ends it first
   * @param channel index of the channel where, or −1 at full scale
   * @param driver index of the driver, or −1 where it is none
   */
  public record Largest(double driveDb, Limit by, int channel, int driver) {}

  /** The drive at which the first limit anywhere is met. */
  public Largest largest(List<ChannelState> states, Operation operation) {
    Largest largest = new Largest(0, Limit.FULL_SCALE, -1, -1);
    for (int c = 0; c < states.size(); c++) {
      PlayedChannel.Allowed allowed = channels.get(c).bearable(operation.clipV().get(c));
      double drive = 20 * Math.log10(allowed.volts() / states.get(c).trimmedV());
      if (drive < largest.driveDb() - 1e-9) {
        largest = new Largest(drive, allowed.by(), c, allowed.driver());
      }
    }
    return largest;
  }
}
