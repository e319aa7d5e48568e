package org.footwell.factory.clip;

import org.footwell.calculation.FaultCode;

/** Why a clip point cannot be given. */
public enum ClipFault implements FaultCode {
  TOO_FEW_PERIODS,
  TONE_NOT_FOUND,
  NO_HARMONIC_IN_BAND,
  TONE_ABOVE_HALF_RATE
}
