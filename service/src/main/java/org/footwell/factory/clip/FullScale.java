package org.footwell.factory.clip;

import static org.footwell.calculation.Source.DEFINITION;

import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.physics.Decibels;

/**
 * The highest step at which a digital full-scale sine is clean, and its voltage.
 *
 * @param outputV RMS, V
 */
record FullScale(int step, double outputV) {

  private static final Formula.Of2 SENSITIVITY =
      Formula.of("input_sensitivity_v", "U·10^(−tone/20)", "V", DEFINITION)
          .with("U", "tone", (u, tone) -> u * Decibels.toAmplitude(-tone));

  /** Above this ratio to the clean voltage it would clip; room for reading a meter. */
  private static final double ROOM = 1.002;

  /** Null when the tone's level, voltages or clean steps are missing. */
  static FullScale of(ClipPointRequest q, CleanRange range, Run run) {
    if (q.toneDbfs() == null || range.none() || range.highest().outputV() == null) {
      return null;
    }
    double clean = range.highest().outputV();
    for (int i = range.last(); i >= range.first(); i--) {
      VolumeStepTone tone = range.tones().get(i);
      if (tone.outputV() != null && SENSITIVITY.at(tone.outputV(), q.toneDbfs()) <= ROOM * clean) {
        if (q.toneDbfs() < 0) {
          run.find(ClipFinding.FULL_SCALE_CALCULATED).at("/tone_dbfs").value(q.toneDbfs());
        }
        return new FullScale(tone.step(), run.apply(SENSITIVITY, tone.outputV(), q.toneDbfs()));
      }
    }
    run.find(ClipFinding.FULL_SCALE_NEVER_CLEAN).at("/tone_dbfs").value(q.toneDbfs());
    return null;
  }
}
