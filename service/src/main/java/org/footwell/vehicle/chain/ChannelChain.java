package org.footwell.vehicle.chain;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.footwell.physics.Decibels;
import org.footwell.physics.Phasor;
import org.footwell.physics.PhasorSum;

/**
 * One channel from full scale to the ears, worked out over the grid for a source of 1 V RMS: what its
 * filters leave, what the amplifier gives, what each driver gets and how it moves, and what arrives.
 */
public final class ChannelChain {

  private final GridLoudspeaker loudspeaker;
  private final ChannelCircuit circuit;
  private final FilterChain filters;
  private final AmplifierOutput output;
  private final List<Integer> drivers;
  private final Way[][] ways;
  private final Grid grid;

  private final double[] networkV;
  private final double[] terminalW;
  private final Phasor[][] sound;
  private final double[][] soundPower;
  private final Map<Double, Phasor[]> pressures = new HashMap<>();

  /**
   * Works a channel out.
   *
   * @param cableOhm both conductors of its cable
   * @param drivers indexes in the plan of the drivers of its loudspeaker
   * @param ways from each of them to each seat
   */
  public ChannelChain(
      GridLoudspeaker loudspeaker,
      double cableOhm,
      FilterChain filters,
      AmplifierOutput output,
      List<Integer> drivers,
      Way[][] ways) {
    this.loudspeaker = loudspeaker;
    circuit = new ChannelCircuit(loudspeaker.loudspeaker(), cableOhm, output.outputOhm());
    this.filters = filters;
    this.output = output;
    this.drivers = List.copyOf(drivers);
    this.ways = ways;
    grid = loudspeaker.grid();
    networkV = new double[grid.size()];
    terminalW = new double[grid.size()];
    sound = new Phasor[ways[0].length][grid.size()];
    soundPower = new double[ways[0].length][grid.size()];
    for (int k = 0; k < grid.size(); k++) {
      look(k);
    }
  }

  private ChannelChain(ChannelChain other, FilterChain filters) {
    loudspeaker = other.loudspeaker;
    circuit = other.circuit;
    this.filters = filters;
    output = other.output;
    drivers = other.drivers;
    ways = other.ways;
    grid = other.grid;
    networkV = other.networkV;
    terminalW = other.terminalW;
    sound = other.sound;
    soundPower = other.soundPower;
  }

  /** The same behind other filters; what lies behind them is not worked out again. */
  public ChannelChain refiltered(FilterChain others) {
    return new ChannelChain(this, others);
  }

  private void look(int k) {
    Phasor volts = circuit.networkV(loudspeaker.ohm(k));
    networkV[k] = volts.modulus();
    terminalW[k] = circuit.terminalW(loudspeaker.ohm(k));
    for (int s = 0; s < sound.length; s++) {
      PhasorSum sum = new PhasorSum();
      for (int d = 0; d < ways.length; d++) {
        Phasor here = loudspeaker.pressure(d, k).times(ways[d][s].at(grid.hz(k)));
        sum.add(here);
        soundPower[s][k] += here.square() * volts.square();
      }
      sound[s][k] = sum.value().times(volts);
    }
  }

  /** Pressure in Pa at a seat at any frequency in Hz, filters included, for 1 V from the source. */
  public Phasor soundAt(int seat, double f) {
    Phasor[] pressures = pressuresAt(f);
    PhasorSum sum = new PhasorSum();
    for (int d = 0; d < pressures.length; d++) {
      sum.add(pressures[d].times(ways[d][seat].at(f)));
    }
    return sum.value();
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
    SolvedLoudspeaker solved = circuit.loudspeaker().at(f);
    Phasor before = circuit.networkV(solved.ohm()).times(filters.at(f));
    Phasor[] of = new Phasor[drivers.size()];
    for (int d = 0; d < of.length; d++) {
      of[d] = model(d).heard() ? solved.pressure(d).times(before) : Phasor.ZERO;
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
    return circuit.loudspeaker().ratedWPerSquareVolt(d);
  }

  /** Whether the driven coils of a driver get unlike voltages by their rated impedances. */
  public boolean unlikeCoils(int d) {
    return circuit.loudspeaker().unlikeCoils(d);
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
    return IntStream.range(0, grid.size()).anyMatch(k -> terminalOhm(k).square() < ohm * ohm);
  }

  /** Whether the impedance at its terminals is that of known parts. */
  public boolean terminalsKnown() {
    return impedanceKnown() && circuit.loudspeaker().partsKnown();
  }

  /** Impedance in ohm of the loudspeaker with or without its cable at any frequency in Hz. */
  public Phasor ohmAt(double f, boolean withCable) {
    Phasor ohm = circuit.loudspeaker().at(f).ohm();
    return withCable ? circuit.terminalOhm(ohm) : ohm;
  }

  /** Whether the sensitivities of all its drivers are known. */
  public boolean heard() {
    return circuit.loudspeaker().heard();
  }

  /** Whether the impedance of all its drivers is known over frequency. */
  public boolean impedanceKnown() {
    return circuit.loudspeaker().impedanceKnown();
  }

  public AmplifierOutput output() {
    return output;
  }

  /** Rated load without the cable, ohm. */
  public double ratedOhm() {
    return circuit.loudspeaker().ratedOhm();
  }

  /** The same of one of its branches. */
  public double branchOhm(int branch) {
    return circuit.loudspeaker().branchOhm(branch);
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
    return circuit.loudspeaker().drivers().get(d);
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
    for (int d = 0; d < drivers.size(); d++) {
      int own = d;
      double[] pressure = new double[grid.size()];
      Arrays.setAll(
          pressure,
          k -> loudspeaker.pressure(own, k).modulus() * networkV[k] * filters.onGrid(k).modulus());
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
    return filters.boost();
  }

  /** What its filters leave at a frequency of the grid. */
  public Phasor filter(int k) {
    return filters.onGrid(k);
  }

  /** What the amplifier meets there, ohm. */
  public Phasor terminalOhm(int k) {
    return circuit.terminalOhm(loudspeaker.ohm(k));
  }

  /** The loudspeaker alone there, ohm. */
  public Phasor networkOhm(int k) {
    return loudspeaker.ohm(k);
  }

  /** What the amplifier gives there for 1 V of source, W. */
  double terminalW(int k) {
    return terminalW[k];
  }

  /** What a driver gets there, against its rated impedance, W for 1 V of source. */
  double heldW(int d, int k) {
    return loudspeaker.heldW(d, k) * networkV[k] * networkV[k];
  }

  /** What becomes heat in the coils of a driver there, W for 1 V of source. */
  double coilW(int d, int k) {
    return loudspeaker.coilW(d, k) * networkV[k] * networkV[k];
  }

  /** Peak displacement of a driver there, mm for 1 V RMS of source. */
  double movedMm(int d, int k) {
    return loudspeaker.movedMm(d, k) * networkV[k];
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
