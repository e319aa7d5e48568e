package org.footwell.vehicle.chain;

import org.footwell.calculation.text.Words;

/** When the amplifiers play. */
public enum EngineState implements Words {
  CRUISING,
  IDLING,
  ENGINE_OFF
}
