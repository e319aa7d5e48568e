package org.footwell.factory.rolloff;

import org.footwell.calculation.FaultCode;

/** Why a roll-off cannot be judged. */
public enum RolloffFault implements FaultCode {
  TOO_FEW_STEPS,
  BAND_LEVEL_MISSING,
  TOO_FEW_BASS_BANDS,
  NO_REFERENCE_BAND,
  STEP_NOT_MEASURED,
  BAND_NOT_MEASURED,
  BANDS_ABOVE_HALF_RATE,
  CAPTURE_SHORTER_THAN_BAND
}
