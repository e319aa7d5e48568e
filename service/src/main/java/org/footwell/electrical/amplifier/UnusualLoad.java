package org.footwell.electrical.amplifier;

import static org.footwell.electrical.amplifier.AmplifierFinding.LOAD_HARDLY_ANY;
import static org.footwell.electrical.amplifier.AmplifierFinding.LOAD_LOW_BUT_ALLOWED;
import static org.footwell.electrical.amplifier.AmplifierFinding.MINIMUM_NOT_GIVEN;

import org.footwell.calculation.Run;
import org.footwell.calculation.text.Phrase;

/**
 * What is said of a rated load that no minimum forbids.
 *
 * @param ohm the whole load of a bridge
 * @param at JSON Pointer to it
 */
public record UnusualLoad(double ohm, boolean bridged, String at) {

  /** Hardly any amplifier is made for less on one channel: common practice, no source. */
  private static final double HARDLY_ANY_OHM = 1;

  /**
   * Judges it where the maker's minimum is known and met.
   *
   * @param current what flows, to follow "which its maker allows:"
   */
  public void allowed(Phrase current, Run run) {
    if (isLow()) {
      run.find(LOAD_LOW_BUT_ALLOWED)
          .at(at)
          .value(ohmPerChannel())
          .limit(HARDLY_ANY_OHM)
          .with("current", current);
    }
  }

  /** Judges it where nothing is known of the amplifier. */
  public void onAnyAmplifier(Run run) {
    if (isLow()) {
      run.find(LOAD_HARDLY_ANY).at(at).value(ohmPerChannel()).limit(HARDLY_ANY_OHM);
    }
  }

  /**
   * Judges it where the amplifier is known but not its minimum.
   *
   * @param atMinimum JSON Pointer to where the minimum would stand
   */
  public void withoutMinimum(String atMinimum, Run run) {
    onAnyAmplifier(run);
    run.find(MINIMUM_NOT_GIVEN)
        .at(atMinimum + (bridged ? "/minimum_bridged_ohm" : "/minimum_ohm"))
        .value(ohm);
  }

  private boolean isLow() {
    return new SmallestLoad(HARDLY_ANY_OHM, at).isAbove(ohmPerChannel());
  }

  /** What each half of a bridge, or the one channel, sees. */
  public double ohmPerChannel() {
    return bridged ? ohm / 2 : ohm;
  }
}
