package org.footwell.acoustic.enclosure.lowend;

import org.footwell.calculation.Run;
import org.footwell.physics.Air;
import org.footwell.physics.Electricity;
import org.footwell.physics.ThieleSmall;

/**
 * What drives a driver, and its level far above all resonances.
 *
 * @param voltage RMS, V
 * @param power into the rated impedance, W
 * @param oneVoltLevel reference level for 1 V, dB SPL
 * @param referenceLevel the same for the stated drive
 */
public record BoxDrive(double voltage, double power, double oneVoltLevel, double referenceLevel) {

  /** The drive of a request. */
  public static BoxDrive of(PlayedBox q, Run run) {
    double rated = q.driver().ratedOhm();
    double voltage =
        q.voltageV() == null ? run.apply(Electricity.VOLTAGE, q.powerW(), rated) : q.voltageV();
    double power =
        q.powerW() == null ? run.apply(Electricity.POWER, q.voltageV(), rated) : q.powerW();
    double c = run.apply(Air.SPEED_OF_SOUND, q.temperatureC());
    double rho = run.apply(Air.DENSITY, q.temperatureC());
    double efficiency =
        run.apply(
            ThieleSmall.REFERENCE_EFFICIENCY,
            c,
            q.driver().fsHz(),
            q.driver().vasL(),
            q.driver().qes());
    double oneWatt = run.apply(ThieleSmall.EFFICIENCY_LEVEL, efficiency, rho, c);
    double re = q.driver().reOhm();
    return new BoxDrive(
        voltage,
        power,
        ThieleSmall.REFERENCE_LEVEL.at(oneWatt, 1, re, q.sourceOhm()),
        run.apply(ThieleSmall.REFERENCE_LEVEL, oneWatt, voltage, re, q.sourceOhm()));
  }
}
