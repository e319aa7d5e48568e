package org.footwell.acoustic.driver;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.footwell.calculation.Built;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;
import org.footwell.physics.Decibels;

/**
 * A voice coil that warms its magnet, which warms the air: two bodies in a row, each of one
 * temperature, both as warm as the air to begin with. Valid while the resistances and capacities
 * are constant; air that a moving cone pumps through the gap makes the first one smaller.
 *
 * @param k minus the temperature at which the wire would have no resistance, °C
 * @param reC temperature at which the coil takes powerW from a held voltage, °C
 */
@Built
record HeatedCoil(
    double k,
    double reC,
    double airC,
    double powerW,
    boolean powerHeld,
    double coilMagnetKPerW,
    double magnetAirKPerW,
    double coilS,
    double magnetS) {

  static final Source RESISTANCE_METHOD =
      Source.of(
          "Temperature of a winding by its resistance, IEC 60034-1, 8.6.2, from memory; 234.5 for"
              + " copper is 1/0.00393 − 20 of IEC 60028:1925, 225 for aluminium is from memory");
  static final Source TWO_BODIES =
      Source.of(
          "Heat balance of two bodies in a row; for loudspeakers D. Button, Heat Dissipation and"
              + " Power Compression in Loudspeakers, J. Audio Eng. Soc. 40 (1992), from memory");

  /** Resistance in ohm at T °C, −60 to 300, of a wire with r ohm at T0 °C. */
  static final Formula.Of4 HOT_OHM =
      Formula.of("hot_ohm", "r·(k + T)/(k + T0)", "ohm", RESISTANCE_METHOD)
          .with("r", "k", "T", "T0", (r, k, t, t0) -> r * (k + t) / (k + t0));

  /** Temperature in °C of a wire that has R ohm, and r ohm at T0 °C. */
  static final Formula.Of4 COIL_C =
      Formula.of("coil_c", "R/r·(k + T0) − k", "°C", RESISTANCE_METHOD)
          .with("R", "r", "k", "T0", (hot, r, k, t0) -> hot / r * (k + t0) - k);

  /** Level lost in dB at a held voltage: the current, and with it the force, falls as r/R. */
  static final Formula.Of2 COMPRESSION_DB =
      Formula.of("compression_db", "20·lg(R/r)", "dB", Source.DEFINITION)
          .with("R", "r", (hot, r) -> Decibels.ofAmplitude(hot / r));

  /** Power in W that a voltage gives into R ohm where it gives P into r. */
  static final Formula.Of3 POWER_LEFT =
      Formula.of("power_w", "P·r/R", "W", Source.DEFINITION)
          .with("P", "r", "R", (p, r, hot) -> p * r / hot);

  /** Temperature in °C that P watts end at through a thermal resistance of Rt K/W. */
  static final Formula.Of3 BALANCE_C =
      Formula.of("balance_c", "Ta + P·Rt", "°C", TWO_BODIES)
          .with("Ta", "P", "Rt", (air, p, thermal) -> air + p * thermal);

  /** The same at a held voltage, where dT is the rise without the fall of power, K: the root of a quadratic. */
  static final Formula.Of4 BALANCE_AT_VOLTAGE_C =
      Formula.of(
              "balance_c",
              "(Ta − k)/2 + √(((Ta + k)/2)² + dT·(k + T0))",
              "°C",
              Source.of("(T − Ta)·(k + T) = dT·(k + T0), from the two laws above"))
          .with(
              "Ta",
              "k",
              "dT",
              "T0",
              (air, k, rise, t0) ->
                  (air - k) / 2 + Math.sqrt((air + k) * (air + k) / 4 + rise * (k + t0)));

  private static final Formula.Draft AT_POWER =
      Formula.of(
          "coil_c",
          "Ta + P·Rm·(1 − um) + P·Rc·(1 − uc), um and uc dying with e^(−t/τ)",
          "°C",
          TWO_BODIES);

  private static final Formula.Draft AT_VOLTAGE =
      Formula.of("coil_c", "balance of both bodies, integrated over t", "°C", TWO_BODIES);

  /** Past so many of the slower time constants nothing changes in a double. */
  private static final double ENOUGH = 30;

  /** In seconds; longer than anyone plays without a pause. */
  private static final double DAY_S = 86_400;

  private static final double TOLERANCE = 1e-10;

  /** In seconds; only a guard against an endless integration. */
  private static final double SHORTEST_STEP = 1e-12;

  private static final int MOST_TRIES = 200;

  /** Temperatures of the two at a time. */
  record Temperatures(double coilC, double magnetC) {}

  /** How warm both are after so many seconds; {@code pace} is called at every step. */
  Temperatures after(double seconds, Runnable pace) {
    double atMost = Math.min(seconds, ENOUGH * slowerS());
    return powerHeld ? closed(atMost) : integrated(atMost, pace);
  }

  /** How warm the coil is after t seconds, as a step of the workings. */
  Formula.Of1 coilAfter(Runnable pace) {
    return (powerHeld ? AT_POWER : AT_VOLTAGE).with("t", t -> after(t, pace).coilC());
  }

  /** Seconds until the coil is as warm as this, above the air; NaN if it is not within a day. */
  double untilS(double limitC, Runnable pace) {
    double late = Math.min(DAY_S, ENOUGH * slowerS());
    double[] both = {airC, airC};
    var integrator = integrator(late);
    integrator.addEventHandler(new AsWarmAs(limitC), late, TOLERANCE, MOST_TRIES);
    double stopped = integrator.integrate(new Flow(this, pace), 0, both, late, both);
    return stopped < late ? stopped : Double.NaN;
  }

  /** The slower of the two time constants of the whole, s. */
  private double slowerS() {
    double sum = coilS + magnetS + coilS * magnetAirKPerW / coilMagnetKPerW;
    return (sum + Math.sqrt(sum * sum - 4 * coilS * magnetS)) / 2;
  }

  /** A held power: linear, so that what is left to warm dies away with two time constants. */
  private Temperatures closed(double t) {
    double slow = slowerS();
    double fast = coilS * magnetS / slow;
    double bySlow = Math.exp(-t / slow);
    double byFast = Math.exp(-t / fast);
    double coilLeft = ((slow - magnetS) * bySlow + (magnetS - fast) * byFast) / (slow - fast);
    double magnetLeft = (slow * bySlow - fast * byFast) / (slow - fast);
    double magnet = airC + powerW * magnetAirKPerW * (1 - magnetLeft);
    return new Temperatures(magnet + powerW * coilMagnetKPerW * (1 - coilLeft), magnet);
  }

  /** A held voltage: the power falls as the coil warms, which has no closed form. */
  private Temperatures integrated(double seconds, Runnable pace) {
    double[] both = {airC, airC};
    if (seconds > 0) {
      integrator(seconds).integrate(new Flow(this, pace), 0, both, seconds, both);
    }
    return new Temperatures(both[0], both[1]);
  }

  private static DormandPrince853Integrator integrator(double seconds) {
    return new DormandPrince853Integrator(SHORTEST_STEP, seconds, TOLERANCE, TOLERANCE);
  }

  /** Ends the integration when the coil has a temperature. */
  private record AsWarmAs(double celsius) implements EventHandler {

    @Override
    public void init(double t0, double[] start, double end) {}

    @Override
    public double g(double t, double[] now) {
      return now[0] - celsius;
    }

    @Override
    public Action eventOccurred(double t, double[] now, boolean increasing) {
      return Action.STOP;
    }

    @Override
    public void resetState(double t, double[] now) {}
  }

  /** What comes in and what leaves. */
  private record Flow(HeatedCoil of, Runnable pace) implements FirstOrderDifferentialEquations {

    @Override
    public int getDimension() {
      return 2;
    }

    @Override
    public void computeDerivatives(double t, double[] now, double[] perSecond) {
      pace.run();
      double in = of.powerHeld ? of.powerW : POWER_LEFT.at(of.powerW, of.k + of.reC, of.k + now[0]);
      double across = (now[0] - now[1]) / of.coilMagnetKPerW;
      double out = (now[1] - of.airC) / of.magnetAirKPerW;
      perSecond[0] = (in - across) * of.coilMagnetKPerW / of.coilS;
      perSecond[1] = (across - out) * of.magnetAirKPerW / of.magnetS;
    }
  }
}
