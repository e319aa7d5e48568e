package org.footwell.acoustic.enclosure.radiator;

import java.util.List;
import org.footwell.physics.Air;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Decibels;
import org.footwell.physics.ThieleSmall;

/**
 * Driver and box as Small's electro-mechano-acoustic circuit, for 1 V RMS from the source.
 *
 * <pre>
 *   v  = bl/(Ze·(Zm + sd²·Zab) + bl²)        velocity of the cone
 *   Zm = j·ω·mms + rms + 1/(j·ω·cms)
 *   Zab = 1/(1/Zc + leak + 1/Zp),  Zc = rab + 1/(j·ω·cab),  Zp = j·ω·map + rap
 *   p  = j·ω·ρ·U/(2·π) at 1 m in half space, U the sum of cone, port and leak
 * </pre>
 *
 * All that moves in and out of the box compresses it, so U is what flows into the compliance.
 */
public final class BoxCircuit {

  private static final double REFERENCE_PA = 20e-6;
  private static final double SQRT_2 = Math.sqrt(2);

  private final DriverMechanics m;
  private final AirBehind air;
  private final double rho;
  private final double reactanceAt;
  private final double atHz;
  private final double exponent;
  private final double lossShare;
  private final List<AnalogFilter> filters;

  private BoxCircuit(
      DriverMechanics m,
      AirBehind air,
      double rho,
      double reactanceAt,
      double atHz,
      double exponent,
      List<AnalogFilter> filters) {
    this.m = m;
    this.air = air;
    this.rho = rho;
    this.reactanceAt = reactanceAt;
    this.atHz = atHz;
    this.exponent = exponent;
    this.filters = filters;
    lossShare = exponent == 1 ? 0 : 1 / Math.tan(exponent * Math.PI / 2);
  }

  /** The circuit in air of a temperature in °C. */
  public static BoxCircuit of(
      BoxDriver driver, DriverMechanics m, AirBehind air, double temperatureC) {
    double atHz = driver.leExponent() == 1 ? 1000 : driver.leAtHz();
    return new BoxCircuit(
        m,
        air,
        Air.DENSITY.at(temperatureC),
        ThieleSmall.REACTANCE_OHM.at(atHz, driver.leMh()),
        atHz,
        driver.leExponent(),
        List.of());
  }

  /** The same with filters between the 1 V and the driver. */
  public BoxCircuit behind(List<AnalogFilter> channelFilters) {
    return new BoxCircuit(m, air, rho, reactanceAt, atHz, exponent, channelFilters);
  }

  /** The same without filters and with a voice coil that has no inductance, as alignments are stated. */
  public BoxCircuit bare() {
    return new BoxCircuit(m, air, rho, 0, atHz, 1, List.of());
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
    double w = 2 * Math.PI * f;
    Slope box = compliance(w).inverse();
    Slope port = port(w);
    Slope load = box.plus(air.leak()).plus(port).inverse();
    Slope velocity = velocity(f, load);
    Slope pressureInBox = velocity.times(load).times(m.sd());
    Slope heard = pressureInBox.times(air.leakHeard() ? box : box.plus(air.leak()));
    Slope sound = heard.times(Slope.rising(w, rho / (2 * Math.PI)));
    return new State(
        Decibels.ofAmplitude(sound.modulus() / REFERENCE_PA),
        sound.phaseDeg(),
        sound.groupDelayMs(),
        1000 * SQRT_2 * velocity.modulus() / w,
        air.isVented() ? SQRT_2 * pressureInBox.times(port).modulus() / air.portArea() : 0,
        0);
  }

  private Slope velocity(double f, Slope load) {
    double w = 2 * Math.PI * f;
    Slope mechanical =
        Slope.rising(w, m.mms())
            .plus(Slope.rising(w, m.cms()).inverse())
            .plus(m.rms())
            .plus(load.times(m.sd() * m.sd()));
    return electrical(f).times(mechanical).plus(m.bl() * m.bl()).inverse().times(m.bl());
  }

  /** Resistance and coil; the coil's impedance grows with a power of frequency. */
  private Slope electrical(double f) {
    if (reactanceAt == 0) {
      return Slope.real(m.resistance());
    }
    double x = exponent == 1 ? f / atHz : Math.pow(f / atHz, exponent);
    double reactance = reactanceAt * x;
    double slope = exponent * reactance / (2 * Math.PI * f);
    return new Slope(m.resistance() + reactance * lossShare, reactance, slope * lossShare, slope);
  }

  private Slope compliance(double w) {
    return Slope.rising(w, air.compliance()).inverse().plus(air.absorption());
  }

  /** Admittance of the ports. */
  private Slope port(double w) {
    return air.isVented()
        ? Slope.rising(w, air.portMass()).plus(air.portLoss()).inverse()
        : Slope.ZERO;
  }
}
