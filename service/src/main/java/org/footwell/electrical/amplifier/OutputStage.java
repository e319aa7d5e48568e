package org.footwell.electrical.amplifier;

import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Formula;
import org.footwell.parts.Rails;
import org.footwell.physics.Electricity;

/**
 * An output stage as its load sees it. In a bridge of two channels the load current passes both
 * halves one after the other: swing, drop and sag count twice, the current limit once.
 *
 * @param railV largest swing without drop, V peak
 * @param dropV lost at clipping, V
 * @param sagOhm droop per ampere, ohm
 * @param currentLimitA peak, A; infinite when there is none
 * @param statedSupplyV supply at which {@code railV} holds, V
 * @param regulated whether the rails stay when the supply changes
 */
public record OutputStage(
    double railV,
    double dropV,
    double sagOhm,
    double currentLimitA,
    double statedSupplyV,
    boolean regulated)
    implements SineSource {

  /** Peak voltage in V without a load. */
  static final Formula.Of2 OPEN_PEAK =
      Formula.of("open_circuit_peak_v", "rail − drop", "V", DEFINITION)
          .with("rail", "drop", (rail, drop) -> rail - drop);

  /** Peak voltage in V that a current limit of I amperes peak allows across R ohms. */
  static final Formula.Of2 CURRENT_LIMITED_PEAK =
      Formula.of("current_limited_peak_v", "I·R", "V", RatingsFit.OHM)
          .with("I", "R", (i, r) -> i * r);

  /** RMS voltage in V of a sine of U volts peak. */
  static final Formula.Of1 SINE_RMS =
      Formula.of("voltage_v", "U/√2", "V", DEFINITION).with("U", u -> u / Math.sqrt(2));

  /** The stage behind a load on one channel, or between two when {@code bridged}. */
  public static OutputStage of(Rails rails, boolean bridged, boolean regulated) {
    double halves = bridged ? 2 : 1;
    return new OutputStage(
        halves * rails.railV(),
        halves * rails.dropV(),
        halves * rails.sagOhm(),
        rails.currentLimitA() == null ? Double.POSITIVE_INFINITY : rails.currentLimitA(),
        rails.supplyV(),
        regulated);
  }

  /** Peak voltage the rails allow across a load, V; 0 when the rail has sunk to the drop. */
  double railLimitedPeakV(double loadOhm, double supplyV) {
    return Math.max(
        0, RatingsFit.LOADED.at(OPEN_PEAK.at(railV * followed(supplyV), dropV), loadOhm, sagOhm));
  }

  /** What rails are of their stated voltage when the vehicle supplies another. */
  double followed(double supplyV) {
    return regulated ? 1 : supplyV / statedSupplyV;
  }

  @Override
  public Delivery into(double loadOhm, double supplyV) {
    double byRail = railLimitedPeakV(loadOhm, supplyV);
    double peak = Math.min(byRail, currentLimitA * loadOhm);
    return Delivery.exactly(Electricity.POWER.at(SINE_RMS.at(peak), loadOhm));
  }
}
