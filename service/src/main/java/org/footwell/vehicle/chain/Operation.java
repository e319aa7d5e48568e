package org.footwell.vehicle.chain;

import java.util.List;

/**
 * The system in one situation.
 *
 * @param situation when
 * @param mean with the programme; null where the supply cannot bring it
 * @param sine with a full sine on all channels; null where the supply cannot bring it
 * @param clipV of each channel: source voltage at which its amplifier clips, with the programme
 * @param meanW mean output of each channel
 */
public record Operation(
    EngineState situation,
    PowerSource.Meeting mean,
    PowerSource.Meeting sine,
    List<Double> clipV,
    List<Double> meanW) {

  /** Whether there is a voltage at all. */
  public boolean works() {
    return mean != null;
  }
}
