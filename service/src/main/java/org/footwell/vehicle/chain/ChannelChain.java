package org.footwell.vehicle.chain;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;

/**
 * One channel from full scale to the ears, worked out over the grid for a source of 1 V RMS: what its
 * filters leave, what the amplifier gives, what each driver gets and how it moves, and what arrives.
 */
public final class ChannelChain {

  private final ChannelCircuit circuit;
  private final FilterChain filters;
  private final AmplifierOutput output;
  private final List<Integer> drivers;
  private final List<DriverModel> models;
  private final Way[][] ways;
  private final Grid grid;

  private final Phasor[] filter;
  private final Phasor[] terminalOhm;
  private final Phasor[] networkOhm;
  private final double[] terminalW;
  private final double[][] heldW;
  private final double[][] coilW;
  private final double[][] movedMm;
  private final double[][] atOneMetre;
  private final Phasor[][] sound;
  private final double[][] soundPower;
  private final Map<Double, Phasor[]> pressures = new HashMap<>();

  /**
   * Works a channel out.
   *
   * @param drivers indexes of its drivers in the plan
   * @param models of each of them
   * @param ways from each of them to each seat
   */
  public ChannelChain(
      ChannelCircuit circuit,
      FilterChain filters,
      AmplifierOutput output,
      List<Integer> drivers,
      List<DriverModel> models,
      Way[][] ways,
      Grid grid) {
    this.circuit = circuit;
    this.filters = filters;
    this.output = output;
    this.drivers = List.copyOf(drivers);
    this.models = List.copyOf(models);
    this.ways = ways;
    this.grid = grid;
    int size = grid.size();
    int seats = ways[0].length;
    filter = new Phasor[size];
    terminalOhm = new Phasor[size];
    networkOhm = new Phasor[size];
    terminalW = new double[size];
    heldW = new double[drivers.size()][size];
    coilW = new double[drivers.size()][size];
    movedMm = new double[drivers.size()][size];
    atOneMetre = new double[drivers.size()][size];
    sound = new Phasor[seats][size];
    soundPower = new double[seats][size];
    for (int k = 0; k < size; k++) {
      look(k);
    }
  }

  private ChannelChain(ChannelChain other, FilterChain filters) {
    circuit = other.circuit;
    this.filters = filters;
    output = other.output;
    drivers = other.drivers;
    models = other.models;
    ways = other.ways;
    grid = other.grid;
    filter = new Phasor[grid.size()];
    for (int k = 0; k < filter.length; k++) {
      filter[k] = filters.at(grid.hz(k));
    }
    terminalOhm = other.terminalOhm;
    networkOhm = other.networkOhm;
    terminalW = other.terminalW;
    heldW = other.heldW;
    coilW = other.coilW;
    movedMm = other.movedMm;
    atOneMetre = other.atOneMetre;
    sound = other.sound;
    soundPower = other.soundPower;
  }

  /** The same behind other filters; what lies behind them is not worked out again. */
  public ChannelChain refiltered(FilterChain others) {
    return new ChannelChain(this, others);
  }

  private void look(int k) {
    double f = grid.hz(k);
    ChannelCircuit.State state = circuit.at(f);
    filter[k] = filters.at(f);
    terminalOhm[k] = state.terminalOhm();
    networkOhm[k] = state.networkOhm();
    terminalW[k] = state.terminalW();
    for (int d = 0; d < models.size(); d++) {
      DriverModel model = models.get(d);
      Phasor mean = mean(d, state);
      Coils coils = coils(d, state);
      heldW[d][k] = coils.heldW();
      coilW[d][k] = coils.heatW();
      if (model.movementKnown()) {
        movedMm[d][k] =
            coils.volts()
                * model.displacementMm(f, coils.volts() == 0 ? 1 : mean.modulus() / coils.volts());
      }
      if (model.heard()) {
        Phasor pressure = model.pressure(f).times(mean);
        atOneMetre[d][k] = pressure.modulus();
        for (int s = 0; s < sound.length; s++) {
          Phasor here = pressure.times(ways[d][s].at(f));
          sound[s][k] = sound[s][k] == null ? here : sound[s][k].plus(here);
          soundPower[s][k] += here.square();
        }
      }
    }
  }

  /**
   * The voice coils of one driver.
   *
   * @param heldW power against rated impedances
   * @param heatW power in their resistance
   * @param volts RMS mean over the driven ones
   */
  private record Coils(double heldW, double heatW, double volts) {}

  private Coils coils(int d, ChannelCircuit.State state) {
    double held = 0;
    double heat = 0;
    double squares = 0;
    int driven = 0;
    for (int i = 0; i < circuit.loads().size(); i++) {
      ChannelCircuit.Load load = circuit.loads().get(i);
      if (load.driver() == drivers.get(d)) {
        double square = state.volts()[i].square();
        held += square / load.ratedOhm();
        heat += square / state.ohm()[i].square() * models.get(d).coilDcOhm();
        squares += square;
        driven++;
      }
    }
    return new Coils(held, heat, Math.sqrt(squares / driven));
  }

  /** Mean voltage over all voice coils of a driver, those left open counted with none. */
  private Phasor mean(int d, ChannelCircuit.State state) {
    Phasor sum = Phasor.ZERO;
    for (int i = 0; i < circuit.loads().size(); i++) {
      if (circuit.loads().get(i).driver() == drivers.get(d)) {
        sum = sum.plus(state.volts()[i]);
      }
    }
    return sum.times(1.0 / models.get(d).part().coilCount());
  }

  /** Pressure in Pa at a seat at any frequency in Hz, filters included, for 1 V from the source. */
  public Phasor soundAt(int seat, double f) {
    Phasor[] pressures = pressuresAt(f);
    Phasor sum = Phasor.ZERO;
    for (int d = 0; d < pressures.length; d++) {
      if (models.get(d).heard()) {
        sum = sum.plus(pressures[d].times(ways[d][seat].at(f)));
      }
    }
    return sum;
  }

  /** Square of the same, Pa²; where it is not coherent its drivers are added as powers. */
  public double squareAt(int seat, double f, boolean coherent) {
    if (coherent) {
      return soundAt(seat, f).square();
    }
    Phasor[] pressures = pressuresAt(f);
    double sum = 0;
    for (int d = 0; d < pressures.length; d++) {
      sum += pressures[d].times(ways[d][seat].at(f)).square();
    }
    return sum;
  }

  /** Of each driver at 1 m, filters included; kept, as several seats and crossings ask for them. */
  private Phasor[] pressuresAt(double f) {
    return pressures.computeIfAbsent(f, this::pressuresOf);
  }

  private Phasor[] pressuresOf(double f) {
    ChannelCircuit.State state = circuit.at(f);
    Phasor filtered = filters.at(f);
    Phasor[] of = new Phasor[models.size()];
    for (int d = 0; d < of.length; d++) {
      of[d] =
          models.get(d).heard()
              ? models.get(d).pressure(f).times(mean(d, state)).times(filtered)
              : Phasor.ZERO;
    }
    return of;
  }

  /** Whether a high-pass is among its filters. */
  public boolean highPassed() {
    return filters.highPassed();
  }

  /**
   * Power a driver takes of 1 V RMS at the loudspeaker's terminals by rated impedances, in its own
   * band: W/V².
   */
  public double ratedWPerSquareVolt(int d) {
    return circuit.ratedWPerSquareVolt(drivers.get(d));
  }

  /** Whether the driven coils of a driver get unlike voltages by their rated impedances. */
  public boolean unlikeCoils(int d) {
    return circuit.unlikeCoils(drivers.get(d));
  }

  /**
   * What a meter reads at the amplifier's end of the cable, ohm; null where a capacitor or an unknown
   * part stands in the way, or a DC resistance is not known.
   */
  public Double meterOhm() {
    Double ohm = circuit.dcOhm();
    return ohm == null || ohm.isInfinite() ? null : ohm;
  }

  /** The same, infinite where capacitors block all of it. */
  public Double dcOhm() {
    return circuit.dcOhm();
  }

  /** Whether the amplifier meets less than a resistance anywhere on the grid, ohm. */
  public boolean shortedBelow(double ohm) {
    return Arrays.stream(terminalOhm).anyMatch(at -> at.square() < ohm * ohm);
  }

  /** Whether the impedance at its terminals is that of known parts. */
  public boolean terminalsKnown() {
    return impedanceKnown() && circuit.partsKnown();
  }

  /** Impedance in ohm of the loudspeaker with or without its cable at any frequency in Hz. */
  public Phasor ohmAt(double f, boolean withCable) {
    ChannelCircuit.State state = circuit.at(f);
    return withCable ? state.terminalOhm() : state.networkOhm();
  }

  /** Whether the sensitivities of all its drivers are known. */
  public boolean heard() {
    return models.stream().allMatch(DriverModel::heard);
  }

  /** Whether the impedance of all its drivers is known over frequency. */
  public boolean impedanceKnown() {
    return models.stream().allMatch(DriverModel::impedanceKnown);
  }

  public AmplifierOutput output() {
    return output;
  }

  /** Rated load without the cable, ohm. */
  public double ratedOhm() {
    return circuit.ratedOhm();
  }

  /** The same of one of its branches. */
  public double branchOhm(int branch) {
    return circuit.branchOhm(branch);
  }

  public double cableOhm() {
    return circuit.cableOhm();
  }

  /** Indexes of its drivers in the plan. */
  public List<Integer> drivers() {
    return drivers;
  }

  /** The model of one of its drivers, by its place in {@link #drivers}. */
  public DriverModel model(int d) {
    return models.get(d);
  }

  /** Mean time of flight from its drivers to a seat, ms. */
  public double flightMs(int seat) {
    double sum = 0;
    for (Way[] way : ways) {
      sum += way[seat].delayMs();
    }
    return sum / ways.length;
  }

  /** What is left of the loudest at the end of a band: half of the power. */
  private static final double END_OF_BAND_DB = Decibels.ofPower(0.5);

  /**
   * The lowest frequency in Hz at which one of its drivers is 3 dB below its loudest, its enclosure and all
   * filters included, without the cabin; the lowest place of the grid where it plays lower still. It must
   * be {@link #heard}.
   */
  public double reachHz() {
    double lowest = Double.POSITIVE_INFINITY;
    for (double[] unfiltered : atOneMetre) {
      double[] pressure = new double[unfiltered.length];
      Arrays.setAll(pressure, k -> unfiltered[k] * filter[k].modulus());
      lowest = Math.min(lowest, reachHz(pressure));
    }
    return lowest;
  }

  /** Between two places the level is taken as straight over the logarithm of frequency. */
  private double reachHz(double[] pressure) {
    double end = Arrays.stream(pressure).max().orElseThrow() * Decibels.toAmplitude(END_OF_BAND_DB);
    int k = 0;
    while (pressure[k] < end) {
      k++;
    }
    if (k == 0) {
      return grid.hz(0);
    }
    double share = Math.log(end / pressure[k - 1]) / Math.log(pressure[k] / pressure[k - 1]);
    return grid.hz(k - 1) * Math.pow(grid.hz(k) / grid.hz(k - 1), share);
  }

  public Grid grid() {
    return grid;
  }

  /** Most that its filters lift, as a ratio; below 1 where they only take away. */
  double boost() {
    double most = 0;
    for (Phasor ratio : filter) {
      most = Math.max(most, ratio.square());
    }
    for (double middle : filters.middlesHz()) {
      most = Math.max(most, filters.at(middle).square());
    }
    return Math.sqrt(most);
  }

  /** What its filters leave at a frequency of the grid. */
  public Phasor filter(int k) {
    return filter[k];
  }

  /** What the amplifier meets there, ohm. */
  public Phasor terminalOhm(int k) {
    return terminalOhm[k];
  }

  /** The loudspeaker alone there, ohm. */
  public Phasor networkOhm(int k) {
    return networkOhm[k];
  }

  /** What the amplifier gives there for 1 V of source, W. */
  double terminalW(int k) {
    return terminalW[k];
  }

  /** What a driver gets there, against its rated impedance, W for 1 V of source. */
  double heldW(int d, int k) {
    return heldW[d][k];
  }

  /** What becomes heat in the coils of a driver there, W for 1 V of source. */
  double coilW(int d, int k) {
    return coilW[d][k];
  }

  /** Peak displacement of a driver there, mm for 1 V RMS of source. */
  double movedMm(int d, int k) {
    return movedMm[d][k];
  }

  /** Pressure at a seat there without the filters, Pa for 1 V of source; it must be {@link #heard}. */
  Phasor sound(int seat, int k) {
    return sound[seat][k];
  }

  /** Square of the same with the drivers of the channel added as powers, Pa². */
  double soundPower(int seat, int k) {
    return soundPower[seat][k];
  }
}
