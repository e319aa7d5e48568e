package org.footwell.vehicle.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.footwell.parts.plan.MeasuringErrors;
import org.footwell.physics.ConstantPower;
import org.footwell.vehicle.chain.ChannelChain;
import org.footwell.vehicle.chain.ChannelState;
import org.footwell.vehicle.chain.Drive;
import org.footwell.vehicle.chain.FedAmplifier;
import org.footwell.vehicle.chain.SoundField;
import org.footwell.vehicle.reading.Modelled;

/** What a list of figures would be in a vehicle in which something is wrong, all settings as they are. */
final class Predictor {

  /** So far below what is planned nothing is heard, dB; this and below: common practice, no source. */
  private static final double SILENT_DB = 40;

  /** Into less than this an amplifier switches itself off, ohm. */
  private static final double SHORT_OHM = 0.3;

  private final Modelled base;
  private final List<VehicleFigure> figures;
  private final MeasuringErrors errors;
  private final int seat;
  private final List<List<Integer>> ofChannel = new ArrayList<>();
  private final double[] plannedDb;
  private final List<ChannelPart> planned = new ArrayList<>();

  Predictor(Modelled base, List<VehicleFigure> figures) {
    this.base = base;
    this.figures = figures;
    errors = base.index().plan().measuringErrors();
    seat = base.index().plan().mainSeat();
    int count = base.heard().size();
    plannedDb = new double[count];
    for (int c = 0; c < count; c++) {
      int channel = c;
      ofChannel.add(
          IntStream.range(0, figures.size())
              .filter(i -> figures.get(i).ofChannel() && figures.get(i).place() == channel)
              .boxed()
              .toList());
      ChannelChain chain = base.model().channels().get(c).chain();
      plannedDb[c] = levelDb(chain, base.heard().get(c));
      planned.add(part(c, chain, base.heard().get(c)));
    }
  }

  /** The channels as planned. */
  List<ChannelPart> planned() {
    return planned;
  }

  private double levelDb(ChannelChain chain, ChannelState state) {
    if (!chain.heard()) {
      return Double.NaN;
    }
    Drive drive = new Drive(chain, crestDb());
    SoundField alone =
        new SoundField(List.of(chain), List.of(drive), base.grid(), Modelled.INCOHERENT_ABOVE_HZ);
    return alone.alone(seat, List.of(state), 0).dbSpl();
  }

  private double crestDb() {
    return base.index().plan().programme().crestFactorDb();
  }

  /** One channel as it would be. */
  ChannelPart part(int c, ChannelChain chain, ChannelState state) {
    boolean off = chain.shortedBelow(SHORT_OHM);
    List<Integer> own = ofChannel.get(c);
    boolean sounds = own.stream().anyMatch(i -> figures.get(i).kind() != FigureKind.METER);
    double level = off || !sounds ? Double.NEGATIVE_INFINITY : levelDb(chain, state);
    double least = plannedDb[c] - SILENT_DB;
    boolean silent = sounds && level < least;
    double[] values = new double[own.size()];
    for (int i = 0; i < values.length; i++) {
      VehicleFigure figure = figures.get(own.get(i));
      double value =
          switch (figure.kind()) {
            case LEVEL -> Math.max(level, least);
            case RESPONSE -> chain.heard() ? shapeDb(chain, figure.at()) : Double.NaN;
            case METER -> chain.dcOhm() == null ? Double.NaN : chain.dcOhm();
            case IMPEDANCE ->
                chain.terminalsKnown() ? chain.ohmAt(figure.at(), true).modulus() : Double.NaN;
            case ARRIVAL -> silent ? Double.NaN : chain.flightMs(seat) + state.delayMs();
            case POLARITY -> silent ? Double.NaN : state.polarity();
            case SUPPLY_DROP -> throw new IllegalStateException("not of a channel");
          };
      values[i] = figure.scaled(value, errors);
    }
    return new ChannelPart(chain, state, values, off ? 0 : meanW(chain, state));
  }

  private double shapeDb(ChannelChain chain, double hz) {
    return VehicleFigure.db(chain.squareAt(seat, hz, hz <= Modelled.INCOHERENT_ABOVE_HZ));
  }

  private double meanW(ChannelChain chain, ChannelState state) {
    boolean supply = figures.stream().anyMatch(figure -> !figure.ofChannel());
    if (!supply) {
      return 0;
    }
    double volts = state.sourceV() * Math.pow(10, state.trimDb() / 20);
    return volts * volts * new Drive(chain, crestDb()).terminalW();
  }

  /** A measured value on the scale of the predicted ones. */
  double scaled(VehicleFigure figure, double value) {
    boolean level = figure.kind() == FigureKind.LEVEL;
    double heard = level ? Math.max(value, plannedDb[figure.place()] - SILENT_DB) : value;
    return figure.scaled(heard, errors);
  }

  /** All figures of a vehicle, scaled: its channels, and a resistance more in the supply of each amplifier. */
  double[] joined(List<ChannelPart> parts, double[] jointOhm) {
    double[] all = new double[figures.size()];
    for (int c = 0; c < parts.size(); c++) {
      List<Integer> own = ofChannel.get(c);
      for (int i = 0; i < own.size(); i++) {
        all[own.get(i)] = parts.get(c).values()[i];
      }
    }
    for (int i = 0; i < all.length; i++) {
      if (!figures.get(i).ofChannel()) {
        all[i] = figures.get(i).scaled(dropV(figures.get(i), parts, jointOhm), errors);
      }
    }
    return all;
  }

  /** Constant power behind the resistance of both ways; all of the voltage where it cannot pass. */
  private double dropV(VehicleFigure figure, List<ChannelPart> parts, double[] jointOhm) {
    int a = figure.place();
    FedAmplifier fed = base.amplifiers().get(a);
    double watts =
        fed.meanW(base.index().channelsOf(a).stream().mapToDouble(c -> parts.get(c).meanW()).sum());
    if (base.index().plan().amplifiers().get(a).draw() == null) {
      return Double.NaN;
    }
    double ohm = fed.loopOhm() + jointOhm[a];
    double current = ConstantPower.CURRENT.at(watts, figure.at(), ohm);
    return Double.isNaN(current) ? figure.at() : current * ohm;
  }
}
