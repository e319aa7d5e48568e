package org.footwell.electrical.heat;

import java.util.EnumMap;
import java.util.Map;
import org.footwell.calculation.Arithmetic;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Words;

/** A kind of signal a channel may have to play. */
enum Duty implements Words {
  IDLE(false),
  SINE(false),
  NOISE(true),
  MUSIC_EIGHTH(true),
  MUSIC_THIRD(true);

  private static final Map<Duty, DutyFormulas> FORMULAS = new EnumMap<>(Duty.class);

  static {
    for (Duty duty : values()) {
      FORMULAS.put(duty, DutyFormulas.of(Names.of(duty), duty.gaussian));
    }
  }

  private final boolean gaussian;

  Duty(boolean gaussian) {
    this.gaussian = gaussian;
  }

  /**
   * RMS voltage over full swing.
   *
   * @param sineSwing peak of the sine over full swing
   * @param crest crest factor of the noise as a ratio of amplitudes
   */
  double rmsOverFullSwing(double sineSwing, double crest) {
    return switch (this) {
      case IDLE -> 0;
      case SINE -> sineSwing / Math.sqrt(2);
      case NOISE -> 1 / crest;
      case MUSIC_EIGHTH -> Math.sqrt(0.5 / 8);
      case MUSIC_THIRD -> Math.sqrt(0.5 / 3);
    };
  }

  /** What one channel takes with this signal at {@code rmsV} volts RMS. */
  StageDraw draw(LossyStage stage, double rmsV, Arithmetic arithmetic) {
    DutyFormulas f = FORMULAS.get(this);
    double amperes = arithmetic.apply(f.current(), rmsV, stage.loadOhm());
    double out = arithmetic.apply(f.output(), rmsV, amperes, stage.powerFactor());
    double rail;
    if (stage.switching()) {
      rail =
          arithmetic.apply(f.switchingRailPower(), out, stage.idleLossW(), stage.onOhm(), amperes);
    } else {
      double mean =
          stage.quiescentA() == 0
              ? arithmetic.apply(f.meanCurrent(), amperes)
              : arithmetic.apply(f.meanCurrentWithQuiescent(), amperes, stage.quiescentA());
      rail = arithmetic.apply(f.railPower(), stage.railV(), mean);
    }
    return new StageDraw(
        out, rail, rail / stage.acrossRailsV(), arithmetic.apply(f.heat(), rail, out));
  }

  /** Power of one channel, W, and the mean current of each of its rails, A. */
  record StageDraw(double outputW, double railW, double railA, double heatW) {}
}
