package org.footwell.factory.sum;

import org.footwell.calculation.Caution;

/** What may be lost when factory outputs are cut. */
enum FactoryCaution implements Caution {
  VEHICLE_SOUNDS,
  FLOATING_OUTPUTS
}
