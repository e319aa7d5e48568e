package org.footwell.vehicle;

import org.footwell.calculation.FaultCode;

/** Why a plan cannot be reviewed. */
public enum PlanFault implements FaultCode {
  OUTPUT_USED_TWICE,
  DRIVER_USED_TWICE,
  BRIDGE_OF_ONE,
  BRIDGE_OF_UNLIKE,
  CHANNEL_SILENT,
  BOXED_PART_INCOMPLETE
}
