package org.footwell.vehicle.chain;

import java.util.ArrayList;
import java.util.List;
import org.footwell.physics.ConstantPower;

/**
 * What feeds the amplifiers in one situation: a voltage that is held as long as the current allows,
 * and the battery behind its resistance beyond.
 *
 * @param heldV held by the alternator; NaN where nothing holds it
 * @param leftA current up to which it is held: what the alternator has left for the amplifiers
 * @param openV of the battery with all other loads on it and no amplifier, V
 * @param sourceOhm its internal resistance
 */
public record PowerSource(double heldV, double leftA, double openV, double sourceOhm) {

  private static final int MOST_TURNS = 100;
  private static final double CLOSE_V = 1e-12;

  /** A voltage that stays whatever is drawn. */
  public static PowerSource stiff(double voltage) {
    return new PowerSource(voltage, Double.POSITIVE_INFINITY, voltage, 0);
  }

  /** The battery alone while other loads draw from it. */
  public static PowerSource battery(double restingV, double internalOhm, double othersA) {
    return new PowerSource(Double.NaN, 0, restingV - internalOhm * othersA, internalOhm);
  }

  /** The alternator with the battery at its side. */
  public static PowerSource running(
      double heldV, double alternatorA, double othersA, double restingV, double internalOhm) {
    double left = alternatorA - othersA;
    return new PowerSource(heldV, left, restingV + internalOhm * left, internalOhm);
  }

  /**
   * A load behind its cable: constant power, or a resistance that draws it at a voltage.
   *
   * @param watts drawn
   * @param atV voltage at which a resistance draws them; NaN for constant power
   * @param loopOhm of its cable
   */
  public record Load(double watts, double atV, double loopOhm) {

    /** Current in A from a voltage at the battery; NaN where the power cannot pass. */
    double current(double voltage) {
      if (watts == 0) {
        return 0;
      }
      if (!Double.isNaN(atV)) {
        return voltage / (loopOhm + atV * atV / watts);
      }
      return voltage <= 0 ? Double.NaN : ConstantPower.CURRENT.at(watts, voltage, loopOhm);
    }

    /** What the current rises by with the voltage, S: negative for constant power. */
    double slope(double voltage) {
      double current = current(voltage);
      return !Double.isNaN(atV) || watts == 0
          ? current / voltage
          : -current / (voltage - 2 * loopOhm * current);
    }
  }

  /**
   * Where source and loads meet.
   *
   * @param batteryV at the battery's terminals
   * @param currentA of each load
   * @param loadV at each load
   * @param held whether the alternator holds the voltage
   */
  public record Meeting(double batteryV, List<Double> currentA, List<Double> loadV, boolean held) {

    /** All currents together, A. */
    public double totalA() {
      return currentA.stream().mapToDouble(Double::doubleValue).sum();
    }
  }

  /** The highest voltage at which all loads get what they draw; null where there is none. */
  public Meeting meet(Load[] loads) {
    if (!Double.isNaN(heldV)) {
      double drawn = total(loads, heldV);
      if (drawn <= leftA) {
        return at(heldV, loads, true);
      }
    }
    // What is lacking at a voltage is a convex function of it, so that Newton's steps come down
    // from
    // the open voltage to the highest place where nothing is, or past all of them.
    double voltage = openV;
    for (int turn = 0; turn < MOST_TURNS; turn++) {
      double lacking = voltage + sourceOhm * total(loads, voltage) - openV;
      double slope = 1;
      for (Load load : loads) {
        slope += sourceOhm * load.slope(voltage);
      }
      double next = voltage - lacking / slope;
      if (Double.isNaN(next) || slope <= 0 || next <= 0) {
        return null;
      }
      if (Math.abs(next - voltage) < CLOSE_V * openV) {
        return at(next, loads, false);
      }
      voltage = next;
    }
    return null;
  }

  private static double total(Load[] loads, double voltage) {
    double sum = 0;
    for (Load load : loads) {
      sum += load.current(voltage);
    }
    return sum;
  }

  private static Meeting at(double voltage, Load[] loads, boolean held) {
    List<Double> current = new ArrayList<>();
    List<Double> left = new ArrayList<>();
    for (Load load : loads) {
      double amperes = load.current(voltage);
      current.add(amperes);
      left.add(voltage - amperes * load.loopOhm());
    }
    return new Meeting(voltage, current, left, held);
  }
}
