package org.footwell.electrical.load;

import static org.footwell.electrical.amplifier.AmplifierFinding.LOAD_BELOW_MINIMUM;
import static org.footwell.electrical.load.LoadFinding.LOWEST_MODULUS;

import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;
import org.footwell.electrical.amplifier.SmallestLoad;
import org.footwell.electrical.amplifier.UnusualLoad;
import org.footwell.parts.Amplifier;

/** Holds the load against what the amplifier allows: a rated load against a rated load. */
final class AmplifierLimit {

  private AmplifierLimit() {}

  /**
   * Judges a rated load.
   *
   * @param amplifier what is known of it; null when nothing is
   */
  static void check(
      Amplifier amplifier, boolean bridged, double loadOhm, double lowestModulusOhm, Run run) {
    UnusualLoad unusual = new UnusualLoad(loadOhm, bridged, NetworkReader.NETWORK);
    if (amplifier == null) {
      unusual.onAnyAmplifier(run);
      return;
    }
    SmallestLoad smallest = SmallestLoad.of(amplifier, bridged, "/amplifier", run);
    if (smallest == null) {
      unusual.withoutMinimum("/amplifier", run);
      return;
    }
    if (smallest.isAbove(loadOhm)) {
      run.find(LOAD_BELOW_MINIMUM).at(smallest.at()).value(loadOhm).limit(smallest.ohm());
      return;
    }
    if (smallest.isAbove(lowestModulusOhm)) {
      run.find(LOWEST_MODULUS)
          .at(smallest.at())
          .value(lowestModulusOhm)
          .limit(loadOhm)
          .with("minimum", smallest.ohm());
    }
    unusual.allowed(
        Phrase.of(NetworkWords.CURRENT_PER_VOLT).with("current", 1 / unusual.ohmPerChannel()), run);
  }
}
