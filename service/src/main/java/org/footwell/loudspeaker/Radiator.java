package org.footwell.loudspeaker;

import java.util.List;
import org.footwell.parts.Driver;
import org.footwell.physics.Air;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Decibels;
import org.footwell.physics.Piston;

/**
 * What a driver with air behind it makes of 1 V RMS from a source: it moves and radiates.
 *
 * <pre>
 *   i = U/(Rsource + Ze + Zmot)                current
 *   U = i·Zmot·sd/bl                           volume velocity of the cone
 *   p = j·ω·ρ·U/(2·π) at 1 m in half space     of cone, port and leak together
 * </pre>
 *
 * All that moves in and out of a box compresses its air, so what is heard is what flows into its
 * volume.
 */
public final class Radiator {

  private static final double SQRT_2 = Math.sqrt(2);

  private final DriverCircuit circuit;
  private final double sourceOhm;
  private final double sd;
  private final double rho;
  private final double volumeVelocityPerVolt;
  private final double stiffness;
  private final List<AnalogFilter> filters;

  private Radiator(
      DriverCircuit circuit,
      double sourceOhm,
      double sd,
      double rho,
      double stiffness,
      List<AnalogFilter> filters) {
    this.circuit = circuit;
    this.sourceOhm = sourceOhm;
    this.sd = sd;
    this.rho = rho;
    this.stiffness = stiffness;
    this.filters = filters;
    volumeVelocityPerVolt = circuit.volumeVelocityPerVolt(stiffness);
  }

  /** A circuit whose vas is known, in air of a temperature in °C, for a cone of sd in cm². */
  public static Radiator of(DriverCircuit circuit, double sdCm2, double temperatureC) {
    double rho = Air.DENSITY.at(temperatureC);
    double c = Air.SPEED_OF_SOUND.at(temperatureC);
    return new Radiator(circuit, 0, sdCm2 / 1e4, rho, rho * c * c, List.of());
  }

  /** A driver, whose sd and vas are known, behind a resistance in ohm, in air of a temperature in °C. */
  public static Radiator of(
      Driver driver, double sourceOhm, AirBehind behind, double temperatureC) {
    double rho = Air.DENSITY.at(temperatureC);
    double c = Air.SPEED_OF_SOUND.at(temperatureC);
    return new Radiator(
        DriverCircuit.of(driver).before(behind),
        sourceOhm,
        driver.sdCm2() / 1e4,
        rho,
        rho * c * c,
        List.of());
  }

  /** The same with filters between the 1 V and the driver. */
  public Radiator behind(List<AnalogFilter> channelFilters) {
    return new Radiator(circuit, sourceOhm, sd, rho, stiffness, List.copyOf(channelFilters));
  }

  /** The same without filters and without the coil's inductance, as alignments are stated. */
  public Radiator bare() {
    return new Radiator(circuit.bare(), sourceOhm, sd, rho, stiffness, List.of());
  }

  /**
   * What happens at one frequency for 1 V RMS.
   *
   * @param levelDbSpl at 1 m in half space
   * @param phaseDeg of the sound against the voltage, without the way to the listener
   * @param groupDelayMs the same as a delay
   * @param displacementMm of the cone, peak
   * @param portVelocity mean over the port's area, peak, m/s; 0 without a port
   * @param filterDb what the filters leave of the 1 V
   */
  public record State(
      double levelDbSpl,
      double phaseDeg,
      double groupDelayMs,
      double displacementMm,
      double portVelocity,
      double filterDb) {

    private State behind(AnalogFilter filter, double f) {
      double gain = Math.sqrt(filter.squaredMagnitude(f));
      double gainDb = filter.magnitudeDb(f);
      return new State(
          levelDbSpl + gainDb,
          Math.IEEEremainder(phaseDeg + filter.phaseDeg(f), 360),
          groupDelayMs + filter.groupDelayMs(f),
          displacementMm * gain,
          portVelocity * gain,
          filterDb + gainDb);
    }
  }

  /** The state at a frequency in Hz, above 0. */
  public State at(double f) {
    State state = unfiltered(f);
    for (AnalogFilter filter : filters) {
      state = state.behind(filter, f);
    }
    return state;
  }

  private State unfiltered(double f) {
    DriverCircuit.Solved solved = circuit.solved(f);
    double w = solved.w();
    AirBehind air = circuit.air();
    Slope cone = cone(solved);
    Slope sound = cone.times(air.heard(w)).times(Slope.rising(w, Piston.pressureAtOneMetre(rho)));
    return new State(
        Decibels.ofAmplitude(sound.modulus() / Decibels.SPL_REFERENCE_PA),
        sound.phaseDeg(),
        sound.groupDelayMs(),
        displacementMm(cone, w),
        air.isVented() ? SQRT_2 * portFlow(cone, air, w) / air.portArea() : 0,
        0);
  }

  /** Peak displacement of the cone in mm for 1 V RMS, by its circuit at some frequency. */
  public double displacementMm(DriverCircuit.Solved solved) {
    return displacementMm(cone(solved), solved.w());
  }

  /** Volume velocity of the cone, m³/s. */
  private Slope cone(DriverCircuit.Solved solved) {
    return solved.motionV(sourceOhm).times(volumeVelocityPerVolt);
  }

  private double displacementMm(Slope cone, double w) {
    return 1000 * SQRT_2 * cone.modulus() / (sd * w);
  }

  private static double portFlow(Slope cone, AirBehind air, double w) {
    return cone.times(air.impedance(w)).times(air.intoPorts(w)).modulus();
  }
}
