package org.footwell.electrical.heat;

import static org.footwell.calculation.Source.DEFINITION;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.footwell.calculation.Built;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Source;

/**
 * An output stage as its load sees it. The current of a bridge passes both halves: the same as one
 * output between rails twice as far apart, each half giving the same current.
 *
 * @param railV largest swing without drop, V peak
 * @param acrossRailsV voltage between the rails, V
 * @param fullSwingV largest clean swing, V peak
 * @param loadOhm modulus of the load
 * @param powerFactor cosine of the load's phase angle, 0 to 1
 * @param quiescentA current of each half without signal, A; 0 for classes B and D
 * @param switching whether it is class D
 * @param idleLossW class D: loss without signal
 * @param onOhm class D: resistance in the way of the output current
 */
@Built
record LossyStage(
    double railV,
    double acrossRailsV,
    double fullSwingV,
    double loadOhm,
    double powerFactor,
    double quiescentA,
    boolean switching,
    double idleLossW,
    double onOhm) {

  static final Source CLASS_B =
      Source.of(
          "R. L. Boylestad, L. Nashelsky, Electronic Devices and Circuit Theory: class B amplifiers"
              + " (power taken, efficiency, largest dissipation)");
  static final Source TRANSLINEAR =
      Source.of(
          "Translinear principle (B. Gilbert): in a class AB pair the product of the currents stays"
              + " at the square of the quiescent current");
  static final Source TWO_PART_LOSS =
      Source.of("Class D losses as a constant and a resistive part; common practice, no source");

  private static final double CLOSE = 1e-10;
  private static final int MOST_TRIES = 500;

  static final Formula.Of2 FULL_SWING =
      Formula.of("full_swing_v", "rail − drop", "V", DEFINITION)
          .with("rail", "drop", (rail, drop) -> rail - drop);
  static final Formula.Of1 POWER_FACTOR =
      Formula.of("power_factor", "cos φ", "", DEFINITION)
          .with("φ", degrees -> Math.abs(degrees) == 90 ? 0 : Math.cos(Math.toRadians(degrees)));

  /** Ohm that makes a class D stage of idle loss L give P watts of sine at an efficiency of η. */
  static final Formula.Of4 ON_OHM =
      Formula.of("on_ohm", "(P/η − P − L)·R/P", "ohm", TWO_PART_LOSS)
          .with("P", "η", "L", "R", (p, eta, idle, r) -> (p / eta - p - idle) * r / p);

  /** Swing over rail at which class B gets hottest; at most that of full swing. */
  static final Formula.Of2 WORST_SWING =
      Formula.of("worst_swing_ratio", "min(kmax, 2/(π·cos φ))", "", CLASS_B)
          .with("kmax", "cos φ", (most, cos) -> Math.min(most, 2 / (Math.PI * cos)));

  /** Heat in class B at a swing of k times the rail U. */
  static final Formula.Of4 CLASS_B_HEAT =
      Formula.of("worst_heat_w", "(U²/|Z|)·(2·k/π − k²·cos φ/2)", "W", CLASS_B)
          .with(
              "U",
              "|Z|",
              "k",
              "cos φ",
              (u, z, k, cos) -> u * u / z * (2 * k / Math.PI - k * k * cos / 2));

  /** Whether it is class B, for which there are closed forms. */
  boolean closedForm() {
    return !switching && quiescentA == 0;
  }

  /** Heat in W with a sine of {@code swingV} volts peak. */
  double heatWithSine(double swingV) {
    double current = swingV / Math.sqrt(2) / loadOhm;
    if (switching) {
      return idleLossW + onOhm * current * current;
    }
    double output = swingV / Math.sqrt(2) * current * powerFactor;
    return railV * MeanCurrent.sine(current, quiescentA) - output;
  }

  /**
   * Swing over rail of the sine that heats the stage most. Between none and full swing the heat of
   * class AB rises to one peak at most: its slope is a concave function of the swing that starts at
   * zero.
   */
  double worstSwingRatio() {
    double full = fullSwingV / railV;
    if (switching) {
      return full;
    }
    if (closedForm()) {
      return WORST_SWING.at(full, powerFactor);
    }
    UnivariateFunction heat = ratio -> heatWithSine(ratio * railV);
    double peak =
        new BrentOptimizer(CLOSE, CLOSE)
            .optimize(
                new MaxEval(MOST_TRIES),
                GoalType.MAXIMIZE,
                new UnivariateObjectiveFunction(heat),
                new SearchInterval(0, full))
            .getPoint();
    double best = heat.value(full) >= heat.value(peak) ? full : peak;
    return heat.value(0) >= heat.value(best) ? 0 : best;
  }

  /** The same stage on a resistance of the same modulus. */
  LossyStage intoResistance() {
    return LossyStageBuilder.builder()
        .railV(railV)
        .acrossRailsV(acrossRailsV)
        .fullSwingV(fullSwingV)
        .loadOhm(loadOhm)
        .powerFactor(1)
        .quiescentA(quiescentA)
        .switching(switching)
        .idleLossW(idleLossW)
        .onOhm(onOhm)
        .build();
  }

  /** Output over rail power with a sine at full swing into a resistance. */
  double fullSwingEfficiency() {
    double output = fullSwingV * peakOutputA() / 2;
    return output / (output + intoResistance().heatWithSine(fullSwingV));
  }

  /** Peak current through the load at full swing, A. */
  double peakOutputA() {
    return fullSwingV / loadOhm;
  }

  /** What the more loaded rail gives when the output current peaks, A. */
  double peakRailA() {
    return (peakOutputA() + Math.hypot(peakOutputA(), 2 * quiescentA)) / 2;
  }

  /**
   * Largest power from the rails at an instant, W. Of class D only what the output and the losses
   * take at that instant; classes B and AB take the whole rail's worth of the current.
   */
  double peakRailPowerW() {
    double peak = peakOutputA();
    return switching
        ? fullSwingV * peak * (1 + powerFactor) / 2 + idleLossW + onOhm * peak * peak
        : railV * Math.hypot(peak, 2 * quiescentA);
  }
}
