package org.footwell.vehicle.reading;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.footwell.calculation.Run;
import org.footwell.electrical.amplifier.SineSource;
import org.footwell.parts.plan.PlanIndex;
import org.footwell.physics.Decibels;
import org.footwell.vehicle.chain.AmplifierOutput;
import org.footwell.vehicle.chain.EngineState;
import org.footwell.vehicle.chain.PlayedChannel;
import org.footwell.vehicle.chain.SoundField;
import org.footwell.vehicle.chain.VehicleModel;

/**
 * One channel of a plan by itself, by the model that reviews it: what it can do on any output of the same
 * output impedance.
 *
 * @param ratedOhm rated load without the cable
 * @param loadOhm rated load with it
 * @param outputOhm output impedance of what drives it, as connected
 * @param baseDb mean level of its band against what is wanted, dB for a source of 1 V; NaN where a
 *     sensitivity is not known
 * @param borneV largest source voltage its drivers bear of the programme, V
 * @param adding what it makes at the main seat where pressures add, Pa² with its band at 0 dB
 * @param apart the same where powers add, Pa²
 * @param reachHz lowest frequency at which it is 3 dB below its loudest, without the cabin
 */
public record ScreenedChannel(
    double ratedOhm,
    double loadOhm,
    double outputOhm,
    double baseDb,
    double borneV,
    double adding,
    double apart,
    double reachHz) {

  /** Channels of a plan as they are, in the order asked for; refuses what cannot be read. */
  public static List<ScreenedChannel> of(PlanIndex index, List<Integer> channels, Run run) {
    ModelReader reader = new ModelReader(index, run);
    return of(index, reader, channels, channels.stream().map(reader::channel).toList());
  }

  /** The same behind each of some output impedances, as connected. */
  public static Map<Double, List<ScreenedChannel>> of(
      PlanIndex index, List<Integer> channels, Set<Double> outputOhms, Run run) {
    ModelReader reader = new ModelReader(index, run);
    Map<Double, List<ScreenedChannel>> behind = new HashMap<>();
    for (double ohm : outputOhms) {
      List<PlayedChannel> played =
          channels.stream().map(channel -> reader.channel(channel, ohm)).toList();
      behind.put(ohm, of(index, reader, channels, played));
    }
    return behind;
  }

  private static List<ScreenedChannel> of(
      PlanIndex index, ModelReader reader, List<Integer> channels, List<PlayedChannel> played) {
    WantedReader wants = new WantedReader(index, reader.grid().bands());
    VehicleModel model =
        new VehicleModel(
            played,
            List.of(),
            new EnumMap<>(EngineState.class),
            IntStream.range(0, played.size())
                .mapToObj(i -> wants.of(channels.get(i), played.get(i).chain()))
                .toList(),
            index.plan().target().curve().curve(),
            Modelled.field(played, reader.grid()),
            index.plan().mainSeat(),
            Modelled.seatWeight(index.plan()));
    return IntStream.range(0, played.size()).mapToObj(i -> screened(i, model)).toList();
  }

  private static ScreenedChannel screened(int i, VehicleModel model) {
    PlayedChannel channel = model.channels().get(i);
    AmplifierOutput output = channel.chain().output();
    boolean heard = channel.chain().heard();
    double base = heard ? model.baseDb(i) : Double.NaN;
    double toZero = Decibels.toPower(-base);
    SoundField.Split split = heard ? model.field().split(model.mainSeat(), i) : null;
    return new ScreenedChannel(
        channel.chain().ratedOhm(),
        output.loadOhm(),
        output.outputOhm(),
        base,
        channel.gain(Double.POSITIVE_INFINITY).volts(),
        heard ? split.adding() * toZero : Double.NaN,
        heard ? split.apart() * toZero : Double.NaN,
        heard ? channel.chain().reachHz() : Double.NaN);
  }

  /** Clean sine power in W that a source gives it at a supply voltage. */
  public double cleanW(SineSource source, double supplyV) {
    return on(source).cleanW(supplyV);
  }

  /** Level of its band with the gain advised, against what is wanted, dB; never falls with the voltage. */
  public double levelDb(SineSource source, double supplyV) {
    return baseDb + Decibels.ofAmplitude(Math.min(borneV, on(source).clipV(supplyV)));
  }

  private AmplifierOutput on(SineSource source) {
    return new AmplifierOutput(source, loadOhm, outputOhm, -1);
  }
}
