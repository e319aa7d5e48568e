package org.footwell.amplifier;

import org.footwell.amplifier.Amplifier.Delivery;
import org.footwell.amplifier.RailMatch.Known;
import org.footwell.amplifier.RailMatchResult.LimitedBy;
import org.footwell.calculation.Run;
import org.footwell.physics.Electricity;

/** What the rails of an amplifier say about it. */
final class KnownByRails {

  private KnownByRails() {}

  static Known of(RailMatchRequest q, Run run) {
    Rails rails = q.rails();
    refuseImpossible(q, run);
    OutputStage stage = OutputStage.of(rails, q.bridged(), q.supplyRegulated());
    double openPeak = run.apply(OutputStage.OPEN_PEAK, stage.railV(), stage.dropV());
    double byRail = run.apply(RatingsFit.LOADED, openPeak, q.loadOhm(), stage.sagOhm());
    double railCurrent = run.apply(Electricity.CURRENT, byRail, q.loadOhm());
    boolean currentFirst = railCurrent > stage.currentLimitA();
    double peak = byRail;
    if (currentFirst) {
      peak = run.apply(OutputStage.CURRENT_LIMITED_PEAK, stage.currentLimitA(), q.loadOhm());
      run.find(AmplifierFinding.CURRENT_LIMIT_FIRST)
          .at("/rails/current_limit_a")
          .value(railCurrent)
          .limit(stage.currentLimitA());
    }
    double voltage = run.apply(OutputStage.SINE_RMS, peak);
    double power = run.apply(Electricity.POWER, voltage, q.loadOhm());
    return new Known(
        stage,
        rails.supplyV(),
        Delivery.exactly(power),
        currentFirst ? LimitedBy.CURRENT : LimitedBy.VOLTAGE,
        OutputStage.SINE_RMS.at(openPeak),
        stage.sagOhm(),
        null,
        null,
        null);
  }

  private static void refuseImpossible(RailMatchRequest q, Run run) {
    Rails rails = q.rails();
    if (rails.railV() <= rails.dropV()) {
      run.refuse(AmplifierFault.RAIL_NOT_ABOVE_DROP)
          .at("/rails/drop_v")
          .given(rails.dropV())
          .allowed("below the rail of " + rails.railV() + " V");
    }
    if (q.bridged() && rails.kind() == Rails.Kind.SINGLE_SUPPLY_BRIDGE) {
      run.refuse(AmplifierFault.BRIDGE_OF_BRIDGES).at("/bridged").given(true).allowed("false");
    }
    run.requireNoFaults();
  }
}
