package org.footwell.electrical.amplifier;

import org.footwell.calculation.Run;
import org.footwell.electrical.amplifier.SineSource.Delivery;
import org.footwell.parts.Rails;
import org.footwell.physics.Electricity;

/**
 * An amplifier described by its rails, as connected.
 *
 * @param at JSON Pointer to the rails
 */
record StatedRails(Rails rails, OutputStage stage, String at, Run run) implements StatedAmplifier {

  /**
   * The clean sine at the stated supply.
   *
   * @param currentFirst whether the current limit, not the rails, ends it
   */
  record Clean(double powerW, boolean currentFirst) {}

  static StatedRails of(Rails rails, boolean bridged, boolean regulated, String at, Run run) {
    return new StatedRails(rails, OutputStage.of(rails, bridged, regulated), at, run);
  }

  @Override
  public Delivery into(double loadOhm) {
    return stage.into(loadOhm, rails.supplyV());
  }

  @Override
  public void explain(double loadOhm, String atLoad) {
    clean(loadOhm);
  }

  /** Says so when rails sunk with a lower supply do not reach above what the output stage loses. */
  void judge(double supplyV) {
    double rail = rails.railV() * stage.followed(supplyV);
    if (rail <= rails.dropV()) {
      run.find(AmplifierFinding.RAILS_BELOW_DROP)
          .at("/supply_v")
          .value(rail)
          .limit(rails.dropV())
          .with("supply", supplyV);
    }
  }

  double openCircuitV() {
    return OutputStage.SINE_RMS.at(OutputStage.OPEN_PEAK.at(stage.railV(), stage.dropV()));
  }

  /** The clean sine into a load, step by step; warns when the current limit acts first. */
  Clean clean(double loadOhm) {
    double openPeak = run.apply(OutputStage.OPEN_PEAK, stage.railV(), stage.dropV());
    double byRail = run.apply(RatingsFit.LOADED, openPeak, loadOhm, stage.sagOhm());
    double railCurrent = run.apply(Electricity.CURRENT, byRail, loadOhm);
    boolean currentFirst = railCurrent > stage.currentLimitA();
    double peak = byRail;
    if (currentFirst) {
      peak = run.apply(OutputStage.CURRENT_LIMITED_PEAK, stage.currentLimitA(), loadOhm);
      run.find(AmplifierFinding.CURRENT_LIMIT_FIRST)
          .at(at + "/current_limit_a")
          .value(railCurrent)
          .limit(stage.currentLimitA());
    }
    double voltage = run.apply(OutputStage.SINE_RMS, peak);
    return new Clean(run.apply(Electricity.POWER, voltage, loadOhm), currentFirst);
  }
}
