package org.footwell.electrical.amplifier;

import org.footwell.calculation.Keeps;
import org.footwell.parts.Amplifier;

/** What requests share that are about an amplifier as it is connected. */
@Keeps(PossibleAmplifier.class)
public interface ConnectedAmplifier {

  Amplifier amplifier();

  /** Whether the load hangs between two channels. */
  Boolean bridged();
}
