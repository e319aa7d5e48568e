package org.footwell.electrical.gain;

import org.footwell.calculation.Run;
import org.footwell.electrical.gain.GainChainResult.FactorySource;
import org.footwell.parts.FactoryOutput;
import org.footwell.parts.FactoryOutput.TurnOn;
import org.footwell.parts.Stage;
import org.footwell.physics.Electricity;

/** What a factory output really gives, and what has to be known before anything is joined to it. */
final class FactoryCheck {

  private static final String AT = "/factory_output";

  private FactoryCheck() {}

  /** RMS voltage of a full-scale sine, clean, V. */
  static double cleanOutputV(FactoryOutput q, Run run) {
    if (q.cleanOutputV() != null) {
      return q.cleanOutputV();
    }
    double clean = BridgeOutput.cleanV(q.takenAsBridged(), q.supplyV(), q.dropV(), run);
    return q.statedPowerW() == null
        ? clean
        : Math.min(clean, run.apply(Electricity.VOLTAGE, q.statedPowerW(), q.statedLoadOhm()));
  }

  static FactorySource judge(FactoryOutput q, double cleanV, Stage first, Run run) {
    if (q.takenAsBridged()) {
      judgeBridge(q, first, run);
    }
    judgeTurnOn(q, run);
    Double cleanPower = null;
    if (q.statedPowerW() != null) {
      cleanPower = run.apply(Electricity.POWER, cleanV, q.statedLoadOhm());
      if (cleanPower < 0.99 * q.statedPowerW()) {
        run.find(GainFinding.STATED_POWER_NOT_CLEAN)
            .at(AT + "/stated_power_w")
            .value(cleanPower)
            .limit(q.statedPowerW())
            .with("volt", cleanV);
      }
    }
    return new FactorySource(
        Electricity.PEAK_VOLTAGE.at(cleanV), cleanPower, judgeLoad(q, cleanV, run));
  }

  private static void judgeBridge(FactoryOutput q, Stage first, Run run) {
    if (q.bridged() == null) {
      run.find(GainFinding.BRIDGE_ASSUMED).at(AT + "/bridged");
    }
    if (q.measuredDifferentially() == null) {
      run.find(GainFinding.MEASURING_UNKNOWN).at(AT + "/measured_differentially");
    } else if (!q.measuredDifferentially()) {
      run.find(GainFinding.MEASURED_AGAINST_GROUND).at(AT + "/measured_differentially");
    }
    if (first.highLevelInput() == null) {
      run.find(GainFinding.HIGH_LEVEL_INPUT_UNKNOWN)
          .at("/stages/0/high_level_input")
          .own("stage", first.name());
    } else if (!first.highLevelInput()) {
      run.find(GainFinding.LINE_INPUT_ON_BRIDGE)
          .at("/stages/0/high_level_input")
          .own("stage", first.name());
    }
  }

  private static void judgeTurnOn(FactoryOutput q, Run run) {
    if (q.turnOn() == null) {
      run.find(GainFinding.TURN_ON_UNKNOWN).at(AT + "/turn_on");
    } else if (q.turnOn() == TurnOn.SIGNAL) {
      run.find(GainFinding.TURN_ON_BY_SIGNAL).at(AT + "/turn_on");
    } else if (q.turnOn() == TurnOn.DC_OFFSET && !q.takenAsBridged()) {
      run.find(GainFinding.TURN_ON_WITHOUT_OFFSET).at(AT + "/turn_on");
    }
  }

  /** Heat in the load resistor, or null when there is none. */
  private static Double judgeLoad(FactoryOutput q, double cleanV, Run run) {
    if (q.loadDetection() == null) {
      run.find(GainFinding.LOAD_DETECTION_UNKNOWN).at(AT + "/load_detection");
    }
    if (q.loadResistorOhm() == null) {
      if (Boolean.TRUE.equals(q.loadDetection())) {
        run.find(GainFinding.LOAD_RESISTOR_MISSING).at(AT + "/load_resistor_ohm");
      }
      return null;
    }
    double heat = run.apply(Electricity.POWER, cleanV, q.loadResistorOhm());
    if (q.loadResistorRatedW() != null && q.loadResistorRatedW() < heat) {
      run.find(GainFinding.LOAD_RESISTOR_TOO_WEAK)
          .at(AT + "/load_resistor_rated_w")
          .value(q.loadResistorRatedW())
          .limit(heat);
    }
    return heat;
  }
}
