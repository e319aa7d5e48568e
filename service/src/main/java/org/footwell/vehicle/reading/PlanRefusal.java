package org.footwell.vehicle.reading;

import org.footwell.calculation.FaultCode;

/** Why a plan that hangs together still cannot be reviewed. */
public enum PlanRefusal implements FaultCode {
  CHANNEL_SILENT,
  GAIN_WITHOUT_SIGNAL,
  EQUALISER_ABOVE_HALF_RATE
}
