package org.footwell.electrical.impedance;

import org.footwell.calculation.Arithmetic;
import org.footwell.parts.Box;
import org.footwell.parts.Driver;
import org.footwell.physics.ThieleSmall;

/**
 * Resonance and Q of a driver as it is mounted.
 *
 * @param hz in free air or in a closed box; null in a vented box, which has two peaks
 * @param ohm modulus there without inductance; null likewise
 * @param qts total Q in free air
 * @param qmc mechanical Q in a closed box, otherwise null; qec and qtc likewise
 */
record Resonance(Double hz, Double ohm, double qts, Double qmc, Double qec, Double qtc) {

  static Resonance of(Driver driver, Box box, Arithmetic arithmetic) {
    double qts = arithmetic.apply(ThieleSmall.TOTAL_Q, driver.qms(), driver.qes());
    if (box != null && box.fbHz() != null) {
      arithmetic.apply(ThieleSmall.COMPLIANCE_RATIO, driver.vasL(), box.volumeL() * box.fill());
      arithmetic.apply(ThieleSmall.MOTIONAL_OHM, driver.reOhm(), driver.qms(), driver.qes());
      return new Resonance(null, null, qts, null, null, null);
    }
    double ohm =
        arithmetic.apply(ThieleSmall.RESONANCE_OHM, driver.reOhm(), driver.qms(), driver.qes());
    if (box == null) {
      return new Resonance(driver.fsHz(), ohm, qts, null, null, null);
    }
    double alpha =
        arithmetic.apply(ThieleSmall.COMPLIANCE_RATIO, driver.vasL(), box.volumeL() * box.fill());
    double fc = arithmetic.apply(ThieleSmall.IN_CLOSED_BOX, driver.fsHz(), alpha);
    double qmc = arithmetic.apply(ThieleSmall.IN_CLOSED_BOX, driver.qms(), alpha);
    double qec = arithmetic.apply(ThieleSmall.IN_CLOSED_BOX, driver.qes(), alpha);
    return new Resonance(fc, ohm, qts, qmc, qec, arithmetic.apply(ThieleSmall.TOTAL_Q, qmc, qec));
  }
}
