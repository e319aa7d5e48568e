package org.footwell.electrical.impedance;

import org.footwell.calculation.FaultCode;

/** Why an impedance over frequency cannot be given. */
public enum ImpedanceFault implements FaultCode {
  RESONANCE_NOT_FOUND,
  FIT_FAILED,
  MASS_WITHOUT_EFFECT,
  BOX_WITHOUT_EFFECT
}
