package org.footwell.electrical.supply;

import org.footwell.parts.plan.PlanReader;
import org.footwell.parts.plan.PlannedAmplifier;
import org.footwell.physics.ConstantPower;
import org.footwell.physics.DriverOutput;

/**
 * What an amplifier of a plan puts out and draws.
 *
 * @param cleanW clean sine power of all its channels while the engine runs, W
 * @param meanW mean power of the programme whose peaks just reach that, W
 * @param fullInputW input power at {@code cleanW}, W, without idling
 * @param meanInputW input power at {@code meanW}, W, without idling
 * @param idleA current without signal, A
 * @param lastingW input power that its cable is sized for, W, idling included
 */
record DrawOfPlan(
    double cleanW,
    double meanW,
    double fullInputW,
    double meanInputW,
    double idleA,
    double lastingW) {

  /** Music at a third of full power on every channel flows for minutes; common practice, no source. */
  private static final double LASTING = 1.0 / 3;

  /** Null where the plan does not have what it takes; the reader then knows what. */
  static DrawOfPlan of(int amplifier, PlanReader plan) {
    String at = PlanReader.amplifierAt(amplifier);
    PlannedAmplifier.Draw draw =
        plan.needs(plan.plan().amplifiers().get(amplifier).draw(), at + "/draw");
    Double engine = plan.figures().engineV();
    double running = engine == null ? plan.figures().statedV(amplifier) : engine;
    double clean = 0;
    double stated = 0;
    for (int channel : plan.index().channelsOf(amplifier)) {
      clean += plan.figures().cleanW(channel, running);
      stated += plan.figures().cleanW(channel, plan.figures().statedV(amplifier));
    }
    if (draw == null || clean == 0) {
      return null;
    }
    double mean = DriverOutput.MEAN_POWER.at(clean, plan.plan().programme().crestFactorDb());
    return new DrawOfPlan(
        clean,
        mean,
        ConstantPower.INPUT.at(clean, draw.fullEfficiency()),
        ConstantPower.INPUT.at(mean, draw.averageEfficiency()),
        draw.idleA(),
        draw.idleA() * plan.figures().statedV(amplifier)
            + ConstantPower.INPUT.at(LASTING * stated, draw.fullEfficiency()));
  }
}
