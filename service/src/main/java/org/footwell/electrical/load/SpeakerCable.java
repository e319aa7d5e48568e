package org.footwell.electrical.load;

import static org.footwell.calculation.Source.DEFINITION;
import static org.footwell.electrical.load.LoadFinding.CABLE_LOSS_HIGH;
import static org.footwell.electrical.load.LoadFinding.CABLE_SIZE_NOT_STANDARD;
import static org.footwell.electrical.load.LoadFinding.DAMPING_FACTOR_LOW;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.parts.Cable;
import org.footwell.physics.Conductors;
import org.footwell.physics.Decibels;

/** What the resistance between amplifier and network does. */
final class SpeakerCable {

  // Common practice, no source: both limits.
  private static final double LOSS_LIMIT_DB = 0.5;
  private static final double DAMPING_LIMIT = 10;

  /** Resistances are stated at this temperature; a conductor is taken to have it unless known, °C. */
  private static final double STATED_AT_C = 20;

  /** Level lost in dB, 0 or more, when the cable takes its share of a voltage that stays. */
  private static final Formula.Of2 LOSS =
      Formula.of("cable_loss_db", "20·lg((R + Rc)/R)", "dB", Solved.KIRCHHOFF)
          .with("R", "Rc", (r, rc) -> Decibels.ofAmplitude((r + rc) / r));

  /** Load over the resistance of everything that drives it, above 0. */
  private static final Formula.Of3 DAMPING =
      Formula.of("damping_factor", "R/(Ro + Rc)", "", DEFINITION)
          .with("R", "Ro", "Rc", (r, ro, rc) -> r / (ro + rc));

  private SpeakerCable() {}

  /** Resistance of both conductors in ohm. */
  static double loopOhm(Cable cable, Run run) {
    if (!Conductors.isStandard(cable.areaMm2())) {
      run.find(CABLE_SIZE_NOT_STANDARD).at("/cable/area_mm2").value(cable.areaMm2());
    }
    double length = run.apply(Conductors.LOOP_LENGTH, cable.oneWayM());
    double perKm = run.apply(Conductors.CLASS_5_OHM_PER_KM, cable.areaMm2());
    if (cable.conductivity() != null) {
      perKm = run.apply(Conductors.OF_CONDUCTIVITY, perKm, cable.conductivity());
    }
    double temperature =
        cable.conductorTemperatureC() == null ? STATED_AT_C : cable.conductorTemperatureC();
    return run.apply(Conductors.CONDUCTOR_OHM, length, perKm, temperature);
  }

  static double lossDb(double loadOhm, double cableOhm, Run run) {
    double loss = run.apply(LOSS, loadOhm, cableOhm);
    if (loss > LOSS_LIMIT_DB) {
      run.find(CABLE_LOSS_HIGH).at("/cable").value(loss).limit(LOSS_LIMIT_DB);
    }
    return loss;
  }

  /** Null when nothing is known of what drives the load, or it has no resistance. */
  static Double dampingFactor(double loadOhm, Double outputOhm, Double cableOhm, Run run) {
    double output = outputOhm == null ? 0 : outputOhm;
    double cable = cableOhm == null ? 0 : cableOhm;
    if (output + cable == 0) {
      return null;
    }
    double damping = run.apply(DAMPING, loadOhm, output, cable);
    if (damping < DAMPING_LIMIT) {
      run.find(DAMPING_FACTOR_LOW)
          .at(cable > output ? "/cable" : "/amplifier/output_ohm")
          .value(damping)
          .limit(DAMPING_LIMIT);
    }
    return damping;
  }
}
